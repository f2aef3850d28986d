import { memo, type ReactNode } from 'react'
import { signedCents } from '#shared/quantity/figures.ts'
import { SeriesMark } from '../look/SeriesMark.tsx'
import { curvesWords as words } from '../words/curves.ts'
import type { ChartPoint } from './chartModel.ts'
import type { CurvesModel } from './curveModels.ts'

/** More designs than this may be wider than the page. */
const fewDesigns = 4

interface CurvesTableProps {
  readonly model: CurvesModel
  readonly selected: ChartPoint | null
  readonly onPick: (point: ChartPoint) => void
}

/** The chart's data as a table: a row a category, a column a design; every cell opens its account. */
export const CurvesTable = memo(function CurvesTable(props: CurvesTableProps): ReactNode {
  const { model, selected, onPick } = props
  return (
    <table
      className={model.series.length > fewDesigns ? 'figures many' : 'figures'}
      style={{ maxWidth: 150 + 230 * model.series.length, minWidth: 92 + 104 * model.series.length }}
    >
      <caption className="unseen">{words.tableCaption(model.title)}</caption>
      <thead>
        <tr>
          <th scope="col">{model.heading}</th>
          {model.series.map(({ id, name, series }) => (
            <th scope="col" key={id}>
              <SeriesMark series={series} />
              <span className="columnName" title={name}>
                {name}
              </span>
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {model.categories.map(({ key, label }, category) => (
          <tr key={key}>
            <th scope="row">{label}</th>
            {model.series.map(({ id, values, notes }, series) => (
              <Figure
                key={id}
                cents={values[category] ?? null}
                note={notes[category] === label ? null : (notes[category] ?? null)}
                band={model.bandCents}
                on={selected?.series === series && selected.category === category}
                series={series}
                category={category}
                onPick={onPick}
              />
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  )
})

interface FigureProps {
  readonly cents: number | null
  readonly note: string | null
  readonly band: number
  readonly on: boolean
  readonly series: number
  readonly category: number
  readonly onPick: (point: ChartPoint) => void
}

const Figure = memo(function Figure({
  cents,
  note,
  band,
  on,
  series,
  category,
  onPick,
}: FigureProps): ReactNode {
  if (cents === null) return <td className="none">·</td>
  return (
    <td className={Math.abs(cents) > band ? 'hot' : undefined}>
      <button type="button" className="cell" aria-pressed={on} onClick={() => onPick({ series, category })}>
        {note === null ? signedCents(cents) : <HowPlayed note={note} cents={signedCents(cents)} />}
      </button>
    </td>
  )
})

/** Cents behind a fingering, its harmonic raised where it has one, as in the fingering chart: there is no room for more. */
function HowPlayed({ note, cents }: { readonly note: string; readonly cents: string }): ReactNode {
  const [fingering, harmonic] = words.partsOfPlayed(note)
  return (
    <>
      <span className="unseen">{note} </span>
      <i aria-hidden="true">
        {fingering}
        {harmonic === undefined ? null : <sup>{harmonic}</sup>}
      </i>
      <span className="cents">{cents}</span>
    </>
  )
}
