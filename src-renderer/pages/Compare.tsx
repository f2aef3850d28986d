import type { ReactNode } from 'react'
import { noteName } from '#shared/pitch/noteName.ts'
import { plainFigure, signedCents } from '#shared/quantity/figures.ts'
import type { Summary } from '#shared/tuning/summary.ts'
import { useDialog } from '../dialogs/dialogStore.ts'
import { lengthFigure } from '../fields/LengthField.tsx'
import { Mark } from '../help/Mark.tsx'
import { SeriesMark } from '../look/SeriesMark.tsx'
import { type DerivedDesign, useDerived } from '../state/derived.ts'
import { useSettings } from '../state/settings.ts'
import { selectDesign, useView } from '../state/viewStore.ts'
import { comparisonTable, loopsInRoutesTable } from '../tables/comparisonTables.ts'
import { TableOut } from '../tables/TableOut.tsx'
import { reportWords } from '../words/report.ts'
import { titles } from '../words/tableHeadings.ts'

interface Row {
  readonly heading: string
  readonly help: string
  readonly unit: string
  readonly text: (derived: DerivedDesign) => string
  /** The figure by which the least is marked; none for a row that has no better. */
  readonly least?: (summary: Summary) => number
}

/** Every design, shown or hidden, side by side in figures. */
export function Compare(): ReactNode {
  const all = useDerived()
  const { unit, spelling } = useSettings()
  const hidden = useView((state) => state.hidden)
  const groups = rowGroups(unit, (midi) => (midi === null ? '–' : noteName(midi, spelling)))
  return (
    <section className="sheet" aria-label="Compare">
      <div className="caption">
        <h1>Comparison</h1>
        <Mark id="rms" />
        <span className="soft captionOf">the least of each row is underlined</span>
        <button type="button" className="reportButton" onClick={() => useDialog.setState({ open: 'report' })}>
          {reportWords.open}
        </button>
      </div>
      <div className="tableFrame">
        <TableOut name={titles.comparison} table={() => comparisonTable(all, unit, spelling)} />
        <table className="figures compare" style={{ maxWidth: 230 + 250 * all.length }}>
          <caption className="unseen">Comparison of the designs</caption>
          <thead>
            <tr>
              <th scope="col">figure</th>
              {all.map(({ design, series }) => (
                <th scope="col" key={design.id}>
                  <SeriesMark series={series} />
                  <button type="button" className="columnName quiet" onClick={() => selectDesign(design.id)}>
                    {design.name}
                  </button>
                  {hidden.has(design.id) ? <small>hidden</small> : null}
                </th>
              ))}
            </tr>
          </thead>
          {groups.map(({ title, rows }) => (
            <tbody key={title}>
              <tr className="group">
                <th scope="rowgroup" colSpan={all.length + 1}>
                  {title}
                </th>
              </tr>
              {rows.map((row) => (
                <CompareRow key={row.heading} row={row} all={all} />
              ))}
            </tbody>
          ))}
        </table>
      </div>
      <LoopsInRoutes all={all} />
    </section>
  )
}

function CompareRow({ row, all }: { readonly row: Row; readonly all: readonly DerivedDesign[] }): ReactNode {
  const { least } = row
  const figures = least === undefined ? [] : all.map(({ tables }) => least(tables.summary))
  const best =
    all.length > 1 && figures.some((figure) => figure > figures[0]! + 1e-9 || figure < figures[0]! - 1e-9)
      ? Math.min(...figures)
      : null
  return (
    <tr>
      <th scope="row" title={row.help}>
        {row.heading} {row.unit === '' ? null : <i>{row.unit}</i>}
      </th>
      {all.map((derived, i) => (
        <td
          key={derived.design.id}
          className={best !== null && figures[i]! <= best + 1e-9 ? 'least' : undefined}
        >
          {row.text(derived)}
        </td>
      ))}
    </tr>
  )
}

function rowGroups(
  unit: 'mm' | 'in',
  note: (midi: number | null) => string,
): readonly { title: string; rows: readonly Row[] }[] {
  const length = (mm: number): string => lengthFigure(mm, unit, unit === 'mm' ? 0 : -1)
  return [
    {
      title: 'By fingering, the usual one for each step',
      rows: [
        {
          heading: 'rms',
          help: 'Root mean square of the combination errors',
          unit: 'cents',
          text: ({ tables }) => plainFigure(tables.summary.byFingering.rmsCents, 1),
          least: ({ byFingering }) => byFingering.rmsCents,
        },
        {
          heading: 'largest',
          help: 'The error farthest from zero, and its fingering',
          unit: 'cents',
          text: ({ tables: { summary } }) =>
            `${signedCents(summary.byFingering.largestCents)} at ${summary.byFingering.largestAt ?? '–'}`,
          least: ({ byFingering }) => Math.abs(byFingering.largestCents),
        },
        {
          heading: 'steps',
          help: 'Different nominal drops that the fingerings give',
          unit: '',
          text: ({ tables }) => String(tables.summary.byFingering.count),
        },
      ],
    },
    {
      title: 'By note, as chosen or usual',
      rows: [
        {
          heading: 'rms',
          help: 'Root mean square of the note errors',
          unit: 'cents',
          text: ({ tables }) => plainFigure(tables.summary.byNote.rmsCents, 1),
          least: ({ byNote }) => byNote.rmsCents,
        },
        {
          heading: 'largest',
          help: 'The error farthest from zero, and its sounding note',
          unit: 'cents',
          text: ({ tables: { summary } }) =>
            `${signedCents(summary.byNote.largestCents)} at ${note(summary.byNote.largestAt)}`,
          least: ({ byNote }) => Math.abs(byNote.largestCents),
        },
        {
          heading: 'notes',
          help: 'Notes of the compass that some fingering reaches',
          unit: '',
          text: ({ tables }) => String(tables.summary.byNote.count),
        },
      ],
    },
    {
      title: 'Tube and loops',
      rows: [
        {
          heading: 'body',
          help: 'Tube that no valve switches',
          unit,
          text: ({ tables }) => length(tables.summary.bodyMm),
        },
        {
          heading: 'loops together',
          help: 'Tube of all loops',
          unit,
          text: ({ tables }) => length(tables.summary.loopsMm),
          least: ({ loopsMm }) => loopsMm,
        },
        {
          heading: 'all tube',
          help: 'Body and loops',
          unit,
          text: ({ tables }) => length(tables.summary.tubeMm),
          least: ({ tubeMm }) => tubeMm,
        },
        {
          heading: 'loops',
          help: 'Number of loops',
          unit: '',
          text: ({ tables }) => String(tables.summary.loops),
          least: ({ loops }) => loops,
        },
        {
          heading: 'most loops in a route',
          help: 'Loops the air runs through at once, at the most',
          unit: '',
          text: ({ tables }) => String(tables.summary.mostLoopsInRoute),
          least: ({ mostLoopsInRoute }) => mostLoopsInRoute,
        },
      ],
    },
  ]
}

/** How many loops lie in the route of each usual fingering, a line a design. */
function LoopsInRoutes({ all }: { readonly all: readonly DerivedDesign[] }): ReactNode {
  return (
    <>
      <h2>Loops in each route</h2>
      <TableOut name={titles.loopsInRoutes} table={() => loopsInRoutesTable(all)} />
      <dl className="routes">
        {all.map(({ design, tables, series }) => (
          <div key={design.id}>
            <dt>
              <SeriesMark series={series} /> {design.name}
            </dt>
            <dd>
              {Object.entries(tables.summary.loopsInRoute).map(([fingering, count]) => (
                <span key={fingering}>
                  <b>{fingering}</b> {count}
                </span>
              ))}
            </dd>
          </div>
        ))}
      </dl>
    </>
  )
}
