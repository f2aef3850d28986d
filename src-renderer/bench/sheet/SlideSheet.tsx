import { type ReactNode, useMemo } from 'react'
import { wordsHeightMm } from '#shared/bench/drawing/dimension.ts'
import type { Drawing } from '#shared/bench/drawing/drawing.ts'
import { type FittedDrawing, fittedDrawing } from '#shared/bench/drawing/fitted.ts'
import { standardScale } from '#shared/bench/drawing/standardScale.ts'
import { isBuildable, type SizedSlide } from '#shared/bench/slide/sizeSlide.ts'
import { slideDrawing } from '#shared/bench/slide/slideDrawing.ts'
import { lengthText, plainFigure } from '#shared/quantity/figures.ts'
import { unitMm } from '#shared/quantity/units.ts'
import { gateWords } from '#shared/valves/gate.ts'
import type { Loop } from '#shared/valves/loop.ts'
import type { BenchSlide } from '#shared/workbook/bench.ts'
import type { Design, Workbook } from '#shared/workbook/workbook.ts'
import { lengthFigure } from '../../fields/LengthField.tsx'
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

/** The side view at a customary scale that leaves room for it, its words no smaller for that. */
function drawnToScale(sized: SizedSlide, name: string): FittedDrawing {
  const draw = (heightMm: number): Drawing => slideDrawing(sized, name, heightMm)
  const fitted = fittedDrawing(draw, sheetWidthMm, drawingHeightMm, wordsMm)
  const scale = standardScale(fitted.scale)
  const heightMm = Math.max(wordsHeightMm, wordsMm / scale)
  return scale === fitted.scale ? fitted : { drawing: draw(heightMm), scale }
}

/** The sheet of a slide. */
export function SlideSheet({ workbook, slide, design, loop, sized }: SlideSheetProps): ReactNode {
  const unit = useSettings((settings) => settings.unit)
  const figures = useSlideFigures(sized)
  const { drawing, scale } = useMemo(() => drawnToScale(sized, slide.id), [sized, slide.id])
  const { job } = sized
  const rows = (fields: readonly SlideField[]): readonly ResultFigure[] =>
    fields.map(({ key, label, kind, digits }) => ({
      name: label.toLowerCase(),
      text: kindOf(`${lengthFigure(job[key], unit, digits)} ${unit}`, kind),
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
              ? slideSheetWords.enlarged(plainScale(scale))
              : slideSheetWords.reduced(plainScale(1 / scale)),
          )}
        </figcaption>
      </figure>
      <div className="sheetColumns">
        <section>
          <h2>{slideSheetWords.follows}</h2>
          <Figures rows={figures} />
        </section>
        <section>{isBuildable(sized) ? <CutList cuts={sized.cuts} /> : null}</section>
      </div>
    </Sheet>
  )
}

/** A scale's number, without decimals that say nothing. */
function plainScale(times: number): string {
  return String(Number(times.toFixed(2)))
}
