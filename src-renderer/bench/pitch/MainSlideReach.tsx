import type { ReactNode } from 'react'
import { mainSlideReach } from '#shared/bench/mainSlideReach.ts'
import { lengthText, plainFigure } from '#shared/quantity/figures.ts'
import type { BenchPitchChange } from '#shared/workbook/bench.ts'
import { moveMainSlide, setMainSlidePosition } from '#shared/workbook/commands/designCommands.ts'
import type { Design } from '#shared/workbook/workbook.ts'
import { LengthField } from '../../fields/LengthField.tsx'
import { tryRun } from '../../fields/refusal.ts'
import { useSettings } from '../../state/settings.ts'
import { reachWords } from '../../words/benchPitch.ts'

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
    <section className="reach fields" aria-label={reachWords.title}>
      <h2>{reachWords.title}</h2>
      <LengthField
        label={reachWords.out}
        help={reachWords.outHelp}
        lengthMm={mainSlide?.outMm ?? null}
        stepMm={0.5}
        clear={() => tryRun(setMainSlidePosition(design.id, undefined))}
        take={(outMm) => tryRun(moveMainSlide(design.id, outMm))}
      />
      <LengthField
        label={reachWords.travel}
        help={reachWords.travelHelp}
        lengthMm={mainSlide?.travelMm ?? null}
        stepMm={0.5}
        take={(travelMm) => tryRun(setMainSlidePosition(design.id, { ...slide, travelMm }))}
      />
      {mainSlide === undefined ? (
        <p className="soft">{reachWords.unknown}</p>
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
  if (slide.travelMm < slide.outMm) return [reachWords.mistyped]
  const reach = mainSlideReach(openMm, slide, fromA4Hz, toA4Hz)
  const length = (mm: number): string => lengthText(Math.abs(mm), unit)
  const need =
    reach.movementMm === 0
      ? reachWords.noNeed
      : reachWords.need(length(reach.movementMm), reach.movementMm < 0, length(2 * reach.movementMm))
  const range = reachWords.range(plainFigure(reach.lowestHz, 1), plainFigure(reach.highestHz, 1))
  const verdict = reach.reaches
    ? reachWords.reaches
    : reachWords.reachesNot(length(reach.leftTubeMm), reach.leftTubeMm > 0)
  return [need, range, verdict]
}
