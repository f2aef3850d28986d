import { type ReactNode, useCallback, useMemo } from 'react'
import type { ToleranceBand } from '#shared/solve/toleranceBands.ts'
import type { ChartModel, ChartPoint } from '../curves/chartModel.ts'
import { ErrorChartView } from '../curves/ErrorChartView.tsx'
import { SeriesMark } from '../look/SeriesMark.tsx'
import type { DerivedDesign } from '../state/derived.ts'
import { useLengths } from '../state/lengthsStore.ts'
import { useSettings } from '../state/settings.ts'
import { select, useView } from '../state/viewStore.ts'
import { proposalWords } from '../words/lengths.ts'
import { aimWords } from '../words/lengthsAim.ts'
import { proposedCents } from './present.ts'
import { shownFingerings } from './shownFingerings.ts'
import type { Proposal } from './useProposal.ts'
import type { Question } from './useQuestion.ts'

/** Steps on in the series' looks: the same colour under another dash and marker. */
export const proposedLook = 6

interface ProposalChartProps {
  readonly derived: DerivedDesign
  readonly question: Question | null
  /** Errors as it stands, by fingering. */
  readonly present: ReadonlyMap<string, number>
  readonly proposal: Proposal | null
  readonly bands: readonly ToleranceBand[] | null
}

/** The design's errors as it stands, and over them those of the proposal. */
export function ProposalChart(props: ProposalChartProps): ReactNode {
  const { derived, question, present, proposal, bands } = props
  const bandCents = useSettings((settings) => settings.bandCents)
  const weights = useLengths((state) => state.weights)
  const shownBand = useLengths((state) => state.doubt.shown)
  const selection = useView((state) => state.selection)
  const model = useMemo(
    () => withDoubt(chartOf({ derived, question, present, proposal }, weights, bandCents), bands, shownBand),
    [derived, question, present, proposal, weights, bandCents, bands, shownBand],
  )
  const designId = derived.design.id
  const { categories } = model
  const pick = useCallback(
    ({ category }: ChartPoint) => {
      const fingering = categories[category]?.key
      if (fingering !== undefined) select({ kind: 'fingering', designId, fingering })
    },
    [categories, designId],
  )
  const at =
    selection?.kind === 'fingering' && selection.designId === designId
      ? categories.findIndex(({ key }) => key === selection.fingering)
      : -1
  return (
    <>
      <ErrorChartView model={model} selected={at < 0 ? null : { series: 0, category: at }} onPick={pick} />
      <p className="chartKey">
        <span>
          <SeriesMark series={derived.series} /> {proposalWords.asItStands}
        </span>
        {proposal === null ? null : (
          <span>
            <SeriesMark series={derived.series + proposedLook} /> {proposalWords.proposed}
          </span>
        )}
        {shownBand === 'none' ? null : (
          <span className="soft">{proposalWords.shadedBy(proposalWords.shaded[shownBand])}</span>
        )}
      </p>
    </>
  )
}

function chartOf(
  { derived, question, present, proposal }: Omit<ProposalChartProps, 'bands'>,
  weights: ReadonlyMap<string, number>,
  bandCents: number,
): ChartModel {
  const shown = shownFingerings(derived)
  const counted = question?.counted ?? []
  const proposed = proposal === null ? null : proposedCents(proposal)
  const line = (name: string, series: number, cents: ReadonlyMap<string, number>) => ({
    id: name,
    name,
    series,
    values: shown.map((each) => (weights.get(each.name) === 0 ? null : (cents.get(each.name) ?? null))),
    notes: shown.map(() => null),
  })
  return {
    title: titleOf(question, counted.length > 0),
    categories: shown.map(({ name }) => ({ key: name, label: name })),
    bandCents,
    series: [
      line(proposalWords.asItStands, derived.series, present),
      ...(proposed === null ? [] : [line(proposalWords.proposed, derived.series + proposedLook, proposed)]),
    ],
  }
}

function titleOf(question: Question | null, slidesCount: boolean): string {
  if (question !== null && question.bore !== null) return aimWords.chartTitle
  return slidesCount ? proposalWords.titleWithSlides : proposalWords.title
}

function withDoubt(
  model: ChartModel,
  bands: readonly ToleranceBand[] | null,
  shown: 'none' | 'worstCase' | 'rootSumSquare',
): ChartModel {
  const last = model.series.at(-1)
  if (bands === null || shown === 'none' || last === undefined) return model
  const byName = new Map(bands.map((band) => [band.name, band[shown]]))
  const ends = model.categories.map(({ key }, i) =>
    last.values[i] === null ? null : (byName.get(key) ?? null),
  )
  return {
    ...model,
    doubt: {
      series: last.series,
      lowest: ends.map((end) => end?.lowestCents ?? null),
      highest: ends.map((end) => end?.highestCents ?? null),
    },
  }
}
