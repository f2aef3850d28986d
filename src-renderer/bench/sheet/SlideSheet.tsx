import { type ReactNode, useMemo } from 'react'
import { fittedDrawing } from '#shared/bench/drawing/fitted.ts'
import type { SizedSlide } from '#shared/bench/slide/sizeSlide.ts'
import { slideDrawing } from '#shared/bench/slide/slideDrawing.ts'
import { lengthText, plainFigure } from '#shared/quantity/figures.ts'
import { unitMm } from '#shared/quantity/units.ts'
import { gateWords } from '#shared/valves/gate.ts'
import type { Loop } from '#shared/valves/loop.ts'
import type { BenchSlide } from '#shared/workbook/bench.ts'
import type { Design, Workbook } from '#shared/workbook/workbook.ts'
import { useSettings } from '../../state/settings.ts'
import { benchWords } from '../../words/bench.ts'
import { slideWords } from '../../words/benchSlide.ts'
import { lengthKinds } from '../../words/benchSlideFields.ts'
import { slideSheetWords } from '../../words/benchSlideResults.ts'
import { DrawingSvg } from '../DrawingView.tsx'
import { CutList, Figures, type ResultFigure, useSlideFigures } from '../slide/SlideResults.tsx'
import { decidedFields, measuredFields, type SlideField } from '../slide/slideFieldTable.ts'
import { sheetWidthMm } from './paper.ts'
import { Sheet } from './Sheet.tsx'

/** Most height of a drawing on the sheet, and least height of its words, mm of paper. */
const drawingHeightMm = 76
const wordsMm = 2.5

interface SlideSheetProps {
  readonly workbook: Workbook
  readonly slide: BenchSlide
  readonly design: Design
  readonly loop: Loop
  readonly sized: SizedSlide
}

function kindOf(length: string, kind: SlideField['kind']): string {
  return kind === undefined ? length : slideSheetWords.ofKind(length, lengthKinds[kind])
}

/** The sheet of a slide. */
export function SlideSheet({ workbook, slide, design, loop, sized }: SlideSheetProps): ReactNode {
  const unit = useSettings((settings) => settings.unit)
  const figures = useSlideFigures(sized)
  const { drawing, scale } = useMemo(
    () =>
      fittedDrawing(
        (heightMm) => slideDrawing(sized, slide.id, heightMm),
        sheetWidthMm,
        drawingHeightMm,
        wordsMm,
      ),
    [sized, slide.id],
  )
  const { job } = sized
  const rows = (fields: readonly SlideField[]): readonly ResultFigure[] =>
    fields.map(({ key, label, kind, digits }) => ({
      name: label.toLowerCase(),
      text: kindOf(lengthText(job[key], unit, unit === 'mm' ? digits : undefined), kind),
    }))
  return (
    <Sheet
      kind={benchWords.lists.slides.title}
      name={slide.id}
      workbook={workbook.name}
      design={slideSheetWords.designOf(design.name, loop.name ?? loop.id, gateWords(loop))}
      notes={slide.notes}
    >
      {sized.problems.length === 0 ? null : (
        <section className="sheetProblems">
          <h2>{slideSheetWords.notReady}</h2>
          <ul>
            {sized.problems.map(({ message }) => (
              <li key={message}>{message}</li>
            ))}
          </ul>
        </section>
      )}
      <div className="sheetColumns">
        <section>
          <h2>{slideWords.measured}</h2>
          <Figures rows={rows(measuredFields)} />
        </section>
        <section>
          <h2>{slideWords.decided}</h2>
          <Figures
            rows={[
              {
                name: slideSheetWords.loopWanted,
                text: slideSheetWords.loopWantedOf(
                  lengthText(sized.targetMm, unit),
                  plainFigure(job.toleranceMm / unitMm(unit), unit === 'mm' ? 2 : 3),
                ),
              },
              ...rows(decidedFields.filter(({ key }) => key !== 'toleranceMm')),
            ]}
          />
        </section>
      </div>
      <figure>
        <DrawingSvg
          drawing={drawing}
          label={slideSheetWords.drawingLabel(slide.id)}
          unitsPerMm={scale}
          unit="mm"
        />
        <figcaption>
          {slideSheetWords.drawn(
            scale >= 1
              ? slideSheetWords.enlarged(scale.toFixed(2))
              : slideSheetWords.reduced((1 / scale).toFixed(2)),
          )}
        </figcaption>
      </figure>
      <div className="sheetColumns">
        <section>
          <h2>{slideSheetWords.follows}</h2>
          <Figures rows={figures} />
        </section>
        <section>
          <CutList cuts={sized.cuts} />
        </section>
      </div>
    </Sheet>
  )
}
