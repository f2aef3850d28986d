import { type ReactNode, useCallback } from 'react'
import type { SizedSlide } from '#shared/bench/slide/sizeSlide.ts'
import { slideDrawing } from '#shared/bench/slide/slideDrawing.ts'
import type { BenchSlide } from '#shared/workbook/bench.ts'
import type { Workbook } from '#shared/workbook/workbook.ts'
import { useWorkbook } from '../../state/workbookStore.ts'
import { benchWords } from '../../words/bench.ts'
import { slideWords } from '../../words/benchSlide.ts'
import { pictureWords } from '../../words/picture.ts'
import { keyOfJob, useJob } from '../benchStore.ts'
import { DrawingView } from '../DrawingView.tsx'
import { Findings } from '../Findings.tsx'
import { JobHead } from '../JobHead.tsx'
import { NothingYet } from '../NothingYet.tsx'
import { SlideSheet } from '../sheet/SlideSheet.tsx'
import { SlideButtons } from './SlideButtons.tsx'
import { SlideFields } from './SlideFields.tsx'
import { SlideResults } from './SlideResults.tsx'
import { slideFieldLabel } from './slideFieldTable.ts'
import { useSlide } from './useSlide.ts'

/** Sizes a slide for a loop: parts on the left, the drawing and what follows on the right. */
export function SlidePage(): ReactNode {
  const workbook = useWorkbook((state) => state.workbook)
  const slide = useJob('slides')
  if (workbook === null || slide === null) return <NothingYet list="slides" />
  return <SlideJobPage key={keyOfJob('slides', slide.id)} workbook={workbook} slide={slide} />
}

interface SlideJobPageProps {
  readonly workbook: Workbook
  readonly slide: BenchSlide
}

function SlideJobPage({ workbook, slide }: SlideJobPageProps): ReactNode {
  const work = useSlide(workbook, slide)
  const { placed, sized } = work
  const title = placed.kind === 'placed' ? slideWords.titleOf(slide.id, placed.design.name) : slide.id
  return (
    <>
      <JobHead list="slides" name={slide.id} notes={slide.notes} />
      <div className="jobColumns">
        <SlideFields workbook={workbook} slide={slide} placed={placed} />
        <div className="jobResult">
          {placed.kind === 'unplaced' ? (
            <Findings title={slideWords.cannot} messages={[benchWords.gone[placed.field]]} />
          ) : null}
          {sized?.kind === 'refused' ? (
            <Findings
              title={slideWords.cannot}
              messages={sized.findings.map(({ field, found, expected }) => refusal(field, found, expected))}
            />
          ) : null}
          {sized?.kind === 'sized' ? <Sized sized={sized} title={title} slide={slide} /> : null}
        </div>
      </div>
      {placed.kind === 'placed' && sized?.kind === 'sized' ? (
        <SlideSheet
          workbook={workbook}
          slide={slide}
          design={placed.design}
          loop={placed.loop}
          sized={sized}
        />
      ) : null}
    </>
  )
}

function refusal(field: string, found: string, expected: string): string {
  const label = field === 'targetMm' ? slideWords.loopWanted : slideFieldLabel(field)
  return slideWords.refused(label, found, expected)
}

interface SizedProps {
  readonly sized: SizedSlide
  readonly title: string
  readonly slide: BenchSlide
}

function Sized({ sized, title, slide }: SizedProps): ReactNode {
  const draw = useCallback((heightMm: number) => slideDrawing(sized, title, heightMm), [sized, title])
  return (
    <>
      <Findings title={slideWords.inTheWay} messages={sized.problems.map(({ message }) => message)} />
      <DrawingView
        draw={draw}
        name={pictureWords.sideView(slide.id)}
        label={slideWords.drawingLabel(title)}
      />
      <SlideButtons name={slide.id} title={title} sized={sized} />
      <SlideResults sized={sized} name={slide.id} />
    </>
  )
}
