import { type ReactNode, useMemo } from 'react'
import { noteName } from '#shared/pitch/noteName.ts'
import { plainFigure, signedCents } from '#shared/quantity/figures.ts'
import { playedCandidate } from '#shared/tuning/notes.ts'
import { spreadOfNotes } from '#shared/tuning/summary.ts'
import { useDialog } from '../dialogs/dialogStore.ts'
import { lengthFigure } from '../fields/LengthField.tsx'
import { Mark } from '../help/Mark.tsx'
import { SeriesMark } from '../look/SeriesMark.tsx'
import { type DerivedDesign, useDerived } from '../state/derived.ts'
import { useSettings } from '../state/settings.ts'
import { selectDesign, useView } from '../state/viewStore.ts'
import { comparisonTable, loopsInRoutesTable } from '../tables/comparisonTables.ts'
import { TableOut } from '../tables/TableOut.tsx'
import {
  comparisonGroups,
  comparisonRows,
  sharedRowWords,
  comparisonWords as words,
} from '../words/comparison.ts'
import { pageNames } from '../words/pages.ts'
import { reportWords } from '../words/report.ts'
import { titles } from '../words/tableHeadings.ts'

interface Row {
  readonly heading: string
  readonly help: string
  readonly unit: string
  readonly text: (derived: DerivedDesign) => string
  /** The figure by which the least is marked; none for a row that has no better. */
  readonly least?: (derived: DerivedDesign) => number
}

/** Every design, shown or hidden, side by side in figures. */
export function Compare(): ReactNode {
  const all = useDerived()
  const { unit, spelling } = useSettings()
  const hidden = useView((state) => state.hidden)
  const shared = useMemo(() => sharedNotes(all), [all])
  const groups = rowGroups(unit, (midi) => (midi === null ? '—' : noteName(midi, spelling)), shared)
  return (
    <section className="sheet" aria-label={pageNames.compare}>
      <div className="caption">
        <h1>{words.title}</h1>
        <Mark id="rms" />
        <span className="soft captionOf">{words.leastMarked}</span>
        <button type="button" className="reportButton" onClick={() => useDialog.setState({ open: 'report' })}>
          {reportWords.open}
        </button>
      </div>
      <div className="tableFrame">
        <div className="tablesOut">
          <TableOut name={titles.comparison} table={() => comparisonTable(all, unit, spelling)} />
          <TableOut
            name={titles.loopsInRoutes}
            label={words.loopsInRoutes}
            table={() => loopsInRoutesTable(all)}
          />
        </div>
        <table className="figures compare" style={{ maxWidth: 230 + 250 * all.length }}>
          <caption className="unseen">{words.ofDesigns}</caption>
          <thead>
            <tr>
              <th scope="col">{words.figure}</th>
              {all.map(({ design, series }) => (
                <th scope="col" key={design.id}>
                  <SeriesMark series={series} />
                  <button
                    type="button"
                    className="columnName quiet"
                    title={design.name}
                    onClick={() => selectDesign(design.id)}
                  >
                    {design.name}
                  </button>
                  {hidden.has(design.id) ? <small>{words.hidden}</small> : null}
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
          <LoopsInRoutes all={all} />
        </table>
      </div>
    </section>
  )
}

function CompareRow({ row, all }: { readonly row: Row; readonly all: readonly DerivedDesign[] }): ReactNode {
  const { least } = row
  const figures = least === undefined ? [] : all.map(least)
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

/** A largest error and where it stands; nothing is out anywhere where it shows as none. */
function largest(cents: number, place: string): string {
  return Math.abs(cents) < 0.05 ? signedCents(cents) : words.at(signedCents(cents), place)
}

function rowGroups(
  unit: 'mm' | 'in',
  note: (midi: number | null) => string,
  shared: ReadonlySet<number> | null,
): readonly { title: string; rows: readonly Row[] }[] {
  const length = (mm: number): string => lengthFigure(mm, unit, unit === 'mm' ? 0 : -1)
  return [
    {
      title: comparisonGroups.byFingering,
      rows: [
        {
          ...comparisonRows.rms,
          unit: 'cents',
          text: ({ tables }) => plainFigure(tables.summary.byFingering.rmsCents, 1),
          least: ({ tables }) => tables.summary.byFingering.rmsCents,
        },
        {
          ...comparisonRows.largest,
          unit: 'cents',
          text: ({ tables: { summary } }) =>
            largest(summary.byFingering.largestCents, summary.byFingering.largestAt ?? '—'),
          least: ({ tables }) => Math.abs(tables.summary.byFingering.largestCents),
        },
        {
          ...comparisonRows.steps,
          unit: '',
          text: ({ tables }) => String(tables.summary.byFingering.count),
        },
      ],
    },
    {
      title: comparisonGroups.byNote,
      rows: [
        {
          ...comparisonRows.noteRms,
          unit: 'cents',
          text: ({ tables }) => plainFigure(tables.summary.byNote.rmsCents, 1),
          // Over other notes a smaller figure is no better one.
          ...(shared === null
            ? { least: ({ tables }: DerivedDesign) => tables.summary.byNote.rmsCents }
            : {}),
        },
        {
          ...comparisonRows.noteLargest,
          unit: 'cents',
          text: ({ tables: { summary } }) =>
            largest(summary.byNote.largestCents, note(summary.byNote.largestAt)),
          ...(shared === null
            ? { least: ({ tables }: DerivedDesign) => Math.abs(tables.summary.byNote.largestCents) }
            : {}),
        },
        {
          ...comparisonRows.notes,
          unit: '',
          text: ({ tables }) => String(tables.summary.byNote.count),
        },
        ...(shared === null ? [] : sharedRows(shared, note)),
      ],
    },
    {
      title: comparisonGroups.tube,
      rows: [
        {
          ...comparisonRows.body,
          unit,
          text: ({ tables }) => length(tables.summary.bodyMm),
        },
        {
          ...comparisonRows.loopsTogether,
          unit,
          text: ({ tables }) => length(tables.summary.loopsMm),
          least: ({ tables }) => tables.summary.loopsMm,
        },
        {
          ...comparisonRows.allTube,
          unit,
          text: ({ tables }) => length(tables.summary.tubeMm),
          least: ({ tables }) => tables.summary.tubeMm,
        },
        {
          ...comparisonRows.loops,
          unit: '',
          text: ({ tables }) => String(tables.summary.loops),
          least: ({ tables }) => tables.summary.loops,
        },
        {
          ...comparisonRows.mostLoops,
          unit: '',
          text: ({ tables }) => String(tables.summary.mostLoopsInRoute),
          least: ({ tables }) => tables.summary.mostLoopsInRoute,
        },
      ],
    },
  ]
}

/** The notes that every design plays, midi; `null` where each plays the same, so that there is nothing to set apart. */
function sharedNotes(all: readonly DerivedDesign[]): ReadonlySet<number> | null {
  const played = all.map(
    ({ tables }) =>
      new Set(tables.notes.flatMap((note) => (playedCandidate(note) === null ? [] : [note.midi]))),
  )
  const [first, ...others] = played
  if (first === undefined) return null
  const shared = new Set([...first].filter((midi) => others.every((each) => each.has(midi))))
  return played.every(({ size }) => size === shared.size) ? null : shared
}

/** The same figures over the notes that all designs play: over others no design is better than another. */
function sharedRows(shared: ReadonlySet<number>, note: (midi: number | null) => string): readonly Row[] {
  const spread = ({ tables }: DerivedDesign) =>
    spreadOfNotes(tables.notes.filter(({ midi }) => shared.has(midi)))
  return [
    {
      ...sharedRowWords.rms(shared.size),
      unit: 'cents',
      text: (derived) => plainFigure(spread(derived).rmsCents, 1),
      least: (derived) => spread(derived).rmsCents,
    },
    {
      ...sharedRowWords.largest(shared.size),
      unit: 'cents',
      text: (derived) => largest(spread(derived).largestCents, note(spread(derived).largestAt)),
      least: (derived) => Math.abs(spread(derived).largestCents),
    },
  ]
}

/** How many loops lie in the route of each usual fingering, a row a fingering. */
function LoopsInRoutes({ all }: { readonly all: readonly DerivedDesign[] }): ReactNode {
  return (
    <tbody>
      <tr className="group">
        <th scope="rowgroup" colSpan={all.length + 1}>
          {words.loopsInRoutes}
        </th>
      </tr>
      {fingeringsOf(all).map((fingering) => (
        <tr key={fingering}>
          <th scope="row">{fingering}</th>
          {all.map(({ design, tables }) => {
            const count = tables.summary.loopsInRoute[fingering]
            return count === undefined ? (
              <td key={design.id} className="none">
                ·
              </td>
            ) : (
              <td key={design.id}>{count}</td>
            )
          })}
        </tr>
      ))}
    </tbody>
  )
}

/** Every fingering that any of the designs uses, from the shortest route on. */
function fingeringsOf(all: readonly DerivedDesign[]): readonly string[] {
  const semitones = new Map(
    all.flatMap(({ tables }) => tables.usual.map((each) => [each.name, each.semitones])),
  )
  return [...semitones].sort(([, a], [, b]) => a - b).map(([name]) => name)
}
