import { memo, type ReactNode, useMemo } from 'react'
import { signedCents } from '#shared/quantity/figures.ts'
import { NumberField } from '../fields/NumberField.tsx'
import type { DerivedDesign } from '../state/derived.ts'
import { useLengths, weigh } from '../state/lengthsStore.ts'
import { useSettings } from '../state/settings.ts'
import { select } from '../state/viewStore.ts'
import { weighedTable } from '../tables/lengthsTables.ts'
import { TableOut } from '../tables/TableOut.tsx'
import { weightWords } from '../words/lengths.ts'
import { titles } from '../words/tableHeadings.ts'
import { weightFigure } from './CountedFingerings.tsx'
import { fingeringWords, shownFingerings } from './shownFingerings.ts'
import type { Proposal } from './useProposal.ts'

interface FingeringTableProps {
  readonly derived: DerivedDesign
  /** Errors as it stands, by fingering. */
  readonly present: ReadonlyMap<string, number>
  readonly proposal: Proposal | null
}

/** The chart's data as a table, with the weight of each fingering and which of them hold the proposal. */
export function FingeringTable({ derived, present, proposal }: FingeringTableProps): ReactNode {
  const weights = useLengths((state) => state.weights)
  const openFree = useLengths((state) => state.openFree)
  const band = useSettings((settings) => settings.bandCents)
  const proposed = useMemo(() => new Map(proposal?.lengths.rows.map((row) => [row.name, row])), [proposal])
  return (
    <div className="tableFrame">
      <TableOut
        name={titles.fingerings(derived.design.name)}
        table={() => weighedTable(derived, weights, present, proposal)}
      />
      <table className="figures fingeringTable">
        <caption className="unseen">{weightWords.caption(derived.design.name)}</caption>
        <thead>
          <tr>
            <th scope="col">{weightWords.columns.fingering}</th>
            <th scope="col">{weightWords.columns.weight}</th>
            <th scope="col">
              {weightWords.columns.now} <i>{weightWords.cents}</i>
            </th>
            <th scope="col">
              {weightWords.columns.proposed} <i>{weightWords.cents}</i>
            </th>
            <th scope="col" className="wide">
              {weightWords.columns.part}
            </th>
          </tr>
        </thead>
        <tbody>
          {shownFingerings(derived).map(({ name }) => {
            const row = proposed.get(name)
            return (
              <WeightRow
                key={name}
                designId={derived.design.id}
                name={name}
                weight={name === '0' && !openFree ? null : (weights.get(name) ?? 1)}
                nowCents={present.get(name) ?? null}
                proposedCents={row?.leftCents ?? null}
                holds={row?.holdsLargest ?? false}
                band={band}
              />
            )
          })}
        </tbody>
      </table>
    </div>
  )
}

interface WeightRowProps {
  readonly designId: string
  readonly name: string
  /** `null` for the open note while it is held, which then cannot count. */
  readonly weight: number | null
  readonly nowCents: number | null
  readonly proposedCents: number | null
  readonly holds: boolean
  readonly band: number
}

const WeightRow = memo(function WeightRow(props: WeightRowProps): ReactNode {
  const { designId, name, weight, nowCents, proposedCents, holds, band } = props
  const cents = (value: number | null): ReactNode => {
    if (value === null) return <td className="none">·</td>
    return (
      <td className={weight !== 0 && Math.abs(value) > band ? 'hot' : undefined}>{signedCents(value)}</td>
    )
  }
  return (
    <tr className={weight === 0 ? 'leftOut' : undefined}>
      <th scope="row">
        <button
          type="button"
          className="cell"
          onClick={() => select({ kind: 'fingering', designId, fingering: name })}
        >
          {fingeringWords(name)}
        </button>
      </th>
      <td>
        {weight === null ? (
          <span className="soft">{weightWords.held}</span>
        ) : (
          <NumberField
            label={weightWords.weightOf(fingeringWords(name))}
            labelHidden
            value={weight}
            digits={Number.isInteger(weight) ? 0 : 2}
            atLeast={0}
            atMost={1000}
            by={1}
            width={5}
            take={(value) => {
              if (value < 0 || value > 1000) return weightWords.refused(weightFigure(value))
              weigh(name, value)
              return null
            }}
          />
        )}
      </td>
      {cents(nowCents)}
      {cents(proposedCents)}
      <td className="wide">
        {weight === 0 ? <span className="soft">{weightWords.leftOut}</span> : holds ? weightWords.holds : ''}
      </td>
    </tr>
  )
})
