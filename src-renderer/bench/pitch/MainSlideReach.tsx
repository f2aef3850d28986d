import type { ReactNode } from 'react'
import { mainSlideReach } from '#shared/bench/mainSlideReach.ts'
import { lengthText, plainFigure } from '#shared/quantity/figures.ts'
import type { BenchPitchChange } from '#shared/workbook/bench.ts'
import { setMainSlidePosition } from '#shared/workbook/commands/designCommands.ts'
import type { Design } from '#shared/workbook/workbook.ts'
import { LengthField } from '../../fields/LengthField.tsx'
import { tryRun } from '../../fields/refusal.ts'
import { useSettings } from '../../state/settings.ts'

interface MainSlideReachProps {
  readonly design: Design
  readonly openMm: number
  readonly change: BenchPitchChange
}

/** What the main slide can still do for the change. */
export function MainSlideReach({ design, openMm, change }: MainSlideReachProps): ReactNode {
  const { mainSlide } = design
  const slide = mainSlide ?? { outMm: 0, travelMm: 0 }
  return (
    <section className="reach fields" aria-label="What the main slide can do">
      <h2>What the main slide can do</h2>
      <LengthField
        label="Out now, movement"
        help="Of the design’s main slide; changed here, it changes there. Movement, not tube."
        lengthMm={mainSlide?.outMm ?? null}
        stepMm={0.5}
        clear={() => tryRun(setMainSlidePosition(design.id, undefined))}
        take={(outMm) =>
          tryRun(setMainSlidePosition(design.id, { outMm, travelMm: Math.max(slide.travelMm, outMm) }))
        }
      />
      <LengthField
        label="Travel, movement"
        help="Farthest movement out, from fully in."
        lengthMm={mainSlide?.travelMm ?? null}
        stepMm={0.5}
        take={(travelMm) => tryRun(setMainSlidePosition(design.id, { ...slide, travelMm }))}
      />
      {mainSlide === undefined ? (
        <p className="soft">Type how far it stands out and can travel to see what it can do.</p>
      ) : (
        <ReachWords openMm={openMm} slide={mainSlide} change={change} />
      )}
    </section>
  )
}

interface ReachWordsProps {
  readonly openMm: number
  readonly slide: { readonly outMm: number; readonly travelMm: number }
  readonly change: BenchPitchChange
}

function ReachWords({ openMm, slide, change }: ReachWordsProps): ReactNode {
  const unit = useSettings((settings) => settings.unit)
  return (
    <ul className="reachWords">
      {reachSentences(openMm, slide, change, unit).map((sentence) => (
        <li key={sentence}>{sentence}</li>
      ))}
    </ul>
  )
}

/** What a main slide can do, in sentences, for page and sheet. */
export function reachSentences(
  openMm: number,
  slide: ReachWordsProps['slide'],
  { fromA4Hz, toA4Hz }: BenchPitchChange,
  unit: 'mm' | 'in',
): readonly string[] {
  if (slide.travelMm < slide.outMm)
    return ['The main slide stands farther out than it can travel: one of the two is mistyped.']
  const reach = mainSlideReach(openMm, slide, fromA4Hz, toA4Hz)
  const length = (mm: number): string => lengthText(Math.abs(mm), unit)
  const way = reach.movementMm < 0 ? 'in' : 'out'
  const need =
    reach.movementMm === 0
      ? 'The change needs no movement of the main slide.'
      : `The change needs ${length(reach.movementMm)} of movement ${way}, ${length(2 * reach.movementMm)} of tube.`
  const range = `Fully out it plays at A4 = ${plainFigure(reach.lowestHz, 1)} Hz, fully in at ${plainFigure(reach.highestHz, 1)} Hz.`
  const rest = reach.leftTubeMm > 0 ? 'to add' : 'to take off'
  const verdict = reach.reaches
    ? 'The main slide can do it, for the body; the loops stay as they are.'
    : `The main slide cannot do it: ${length(reach.leftTubeMm)} of tube stay ${rest} on the body.`
  return [need, range, verdict]
}
