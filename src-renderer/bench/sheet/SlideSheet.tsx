import { type ReactNode, useMemo } from 'react'
import { fittedDrawing } from '#shared/bench/drawing/fitted.ts'
import type { SizedSlide } from '#shared/bench/slide/sizeSlide.ts'
import { slideDrawing } from '#shared/bench/slide/slideDrawing.ts'
import { lengthText, plainFigure } from '#shared/quantity/figures.ts'
import { gateWords } from '#shared/valves/gate.ts'
import type { Loop } from '#shared/valves/loop.ts'
import type { BenchSlide } from '#shared/workbook/bench.ts'
import type { Design, Workbook } from '#shared/workbook/workbook.ts'
import { useSettings } from '../../state/settings.ts'
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
      text: `${lengthText(job[key], unit, unit === 'mm' ? digits : undefined)}${kind === undefined ? '' : ` of ${kind}`}`,
    }))
  return (
    <Sheet
      kind="Slide"
      name={slide.id}
      workbook={workbook.name}
      design={`${design.name}, ${loop.name ?? loop.id} loop (${gateWords(loop)})`}
      notes={slide.notes}
    >
      {sized.problems.length === 0 ? null : (
        <section className="sheetProblems">
          <h2>Not ready to cut</h2>
          <ul>
            {sized.problems.map(({ message }) => (
              <li key={message}>{message}</li>
            ))}
          </ul>
        </section>
      )}
      <div className="sheetColumns">
        <section>
          <h2>Measured</h2>
          <Figures rows={rows(measuredFields)} />
        </section>
        <section>
          <h2>Decided</h2>
          <Figures
            rows={[
              {
                name: 'loop wanted',
                text: `${lengthText(sized.targetMm, unit)} ± ${plainFigure(unit === 'mm' ? job.toleranceMm : job.toleranceMm / 25.4, unit === 'mm' ? 2 : 3)} of tube`,
              },
              ...rows(decidedFields.filter(({ key }) => key !== 'toleranceMm')),
            ]}
          />
        </section>
      </div>
      <figure>
        <DrawingSvg drawing={drawing} label={`Side view of ${slide.id}`} unitsPerMm={scale} unit="mm" />
        <figcaption>
          Side view at pitch, drawn {scale >= 1 ? `${scale.toFixed(2)} : 1` : `1 : ${(1 / scale).toFixed(2)}`}
        </figcaption>
      </figure>
      <div className="sheetColumns">
        <section>
          <h2>Follows</h2>
          <Figures rows={figures} />
        </section>
        <section>
          <CutList cuts={sized.cuts} />
        </section>
      </div>
    </Sheet>
  )
}
