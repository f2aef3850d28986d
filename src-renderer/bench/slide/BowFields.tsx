import type { ReactNode } from 'react'
import type { FurtherPair } from '#shared/bench/slide/slide.ts'
import type { BenchSlide } from '#shared/workbook/bench.ts'
import { setJob } from '#shared/workbook/commands/benchCommands.ts'
import { Segments } from '../../fields/Choice.tsx'
import { LengthField } from '../../fields/LengthField.tsx'
import { tryRun } from '../../fields/refusal.ts'
import { run } from '../../state/workbookStore.ts'
import { bowWords } from '../../words/benchSlide.ts'

/** The bow: half a circle or two quarters, bends counted or corrected, a bow at hand, and further pairs of legs. */
export function BowFields({ slide }: { readonly slide: BenchSlide }): ReactNode {
  const { id, quarterRadiiMm, bendCorrection, bowAtHandRadiusMm } = slide
  const half = slide.legSpacingMm / 2
  const setRadii = (radii: readonly [number, number] | undefined): string | null =>
    tryRun(setJob('slides', id, 'quarterRadiiMm', radii, bowWords.bowStep))
  return (
    <details className="more">
      <summary>{bowWords.title}</summary>
      <Segments
        label={bowWords.bow}
        mark="bow"
        value={quarterRadiiMm === undefined ? 'half' : 'quarters'}
        options={[
          { value: 'half', text: bowWords.half },
          { value: 'quarters', text: bowWords.quarters },
        ]}
        take={(value) => setRadii(value === 'half' ? undefined : [half, half])}
      />
      {quarterRadiiMm === undefined ? null : <QuarterFields radii={quarterRadiiMm} take={setRadii} />}
      <Segments
        label={bowWords.bendsCount}
        value={bendCorrection === true ? 'corrected' : 'plain'}
        options={[
          { value: 'plain', text: bowWords.bendsPlain },
          { value: 'corrected', text: bowWords.bendsCorrected },
        ]}
        take={(value) =>
          run(setJob('slides', id, 'bendCorrection', value === 'corrected', bowWords.bendsStep))
        }
      />
      <LengthField
        label={bowWords.atHand}
        help={bowWords.atHandHelp}
        lengthMm={bowAtHandRadiusMm ?? null}
        stepMm={0.5}
        clear={() => run(setJob('slides', id, 'bowAtHandRadiusMm', undefined, bowWords.atHandStep))}
        take={(mm) => tryRun(setJob('slides', id, 'bowAtHandRadiusMm', mm, bowWords.atHandStep))}
      />
      <FurtherPairs slide={slide} />
    </details>
  )
}

interface QuarterFieldsProps {
  readonly radii: readonly [number, number]
  readonly take: (radii: readonly [number, number]) => string | null
}

function QuarterFields({ radii: [first, second], take }: QuarterFieldsProps): ReactNode {
  return (
    <>
      <LengthField
        label={bowWords.firstQuarter}
        lengthMm={first}
        stepMm={0.5}
        take={(mm) => take([mm, second])}
      />
      <LengthField
        label={bowWords.secondQuarter}
        lengthMm={second}
        stepMm={0.5}
        take={(mm) => take([first, mm])}
      />
    </>
  )
}

/** More pairs of legs that move together with the first, for a slide that doubles back. */
function FurtherPairs({ slide }: { readonly slide: BenchSlide }): ReactNode {
  const pairs = slide.furtherPairs ?? []
  const set = (next: readonly FurtherPair[]): string | null =>
    tryRun(
      setJob('slides', slide.id, 'furtherPairs', next.length === 0 ? undefined : next, bowWords.furtherStep),
    )
  const change = (at: number, values: Partial<FurtherPair>): string | null =>
    set(pairs.map((pair, i) => (i === at ? { ...pair, ...values } : pair)))
  return (
    <>
      {pairs.map((pair, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: pairs are known by their place in the air
        <fieldset key={i} className="furtherPair">
          <legend>{bowWords.pair(i + 2)}</legend>
          <LengthField
            label={bowWords.returnBow}
            help={bowWords.returnBowHelp}
            lengthMm={pair.returnSpacingMm}
            stepMm={0.5}
            take={(mm) => change(i, { returnSpacingMm: mm })}
          />
          <LengthField
            label={bowWords.legSpacing}
            lengthMm={pair.legSpacingMm}
            stepMm={0.5}
            take={(mm) => change(i, { legSpacingMm: mm })}
          />
          <button type="button" className="quiet" onClick={() => set(pairs.filter((_, at) => at !== i))}>
            {bowWords.deletePair(i + 2)}
          </button>
        </fieldset>
      ))}
      <button
        type="button"
        className="add"
        disabled={pairs.length >= 5}
        onClick={() =>
          set([...pairs, { returnSpacingMm: slide.legSpacingMm, legSpacingMm: slide.legSpacingMm }])
        }
      >
        {bowWords.addPair}
      </button>
    </>
  )
}
