import type { ReactNode } from 'react'
import type { ReadingContext } from '#shared/bench/readings/placeReading.ts'
import type { ReadingsFit } from '#shared/bench/readings/readingsFit.ts'
import { meantHz } from '#shared/bench/readings/target.ts'
import { readingSlip } from '#shared/bench/slips/pitchSlips.ts'
import { noteName } from '#shared/pitch/noteName.ts'
import { plainFigure, signedCents } from '#shared/quantity/figures.ts'
import { fingeringName } from '#shared/valves/fingering.ts'
import type { BenchReading, BenchReadings } from '#shared/workbook/bench.ts'
import { leaveOutReading, removeReading, setReading } from '#shared/workbook/commands/readingCommands.ts'
import type { Design, Workbook } from '#shared/workbook/workbook.ts'
import { Segments } from '../../fields/Choice.tsx'
import { tryRun } from '../../fields/refusal.ts'
import { useSettings } from '../../state/settings.ts'
import { run } from '../../state/workbookStore.ts'
import { readingsTable } from '../../tables/benchTables.ts'
import { TableOut } from '../../tables/TableOut.tsx'
import { readingsTableWords } from '../../words/benchReadingsTable.ts'
import { titles } from '../../words/tableHeadings.ts'
import { useBench } from '../benchStore.ts'
import { CellField } from './CellField.tsx'
import { NewReading } from './NewReading.tsx'
import { contextOf, noteOf, readCents, readRow, readValves } from './typedReading.ts'

interface ReadingsTableProps {
  readonly workbook: Workbook
  readonly readings: BenchReadings
  readonly design: Design
  readonly fit: ReadingsFit | null
}

/** The readings as typed, with what the fit makes of each. */
export function ReadingsTable({ workbook, readings, design, fit }: ReadingsTableProps): ReactNode {
  const notes = useBench((state) => state.notes)
  const spelling = useSettings((settings) => settings.spelling)
  const context = contextOf(workbook, design, readings, notes)
  const suspects = new Set(
    (fit?.remarks ?? []).flatMap(({ kind, rows }) => (kind === 'farOff' || kind === 'disagree' ? rows : [])),
  )
  return (
    <>
      {(design.instrument.transposition ?? 0) === 0 ? null : (
        <Segments
          label={readingsTableWords.notesAre}
          value={notes}
          options={[
            { value: 'sounding', text: readingsTableWords.notes.sounding },
            { value: 'written', text: readingsTableWords.notes.written },
          ]}
          take={(value) => useBench.setState({ notes: value })}
        />
      )}
      {readings.rows.length === 0 ? null : (
        <TableOut
          name={titles.readings(readings.id)}
          table={() => readingsTable(readings, context, fit, spelling)}
        />
      )}
      <table className="figures readingsTable">
        <caption className="unseen">{readingsTableWords.caption}</caption>
        <thead>
          <tr>
            <th scope="col">{readingsTableWords.columns.fingering}</th>
            <th scope="col">{readingsTableWords.columns.harmonic}</th>
            <th scope="col">{readingsTableWords.columns.note}</th>
            <th scope="col">{readingsTableWords.columns.cents}</th>
            <th scope="col" title={readingsTableWords.leftOverHelp}>
              {readingsTableWords.columns.leftOver}
            </th>
            <th scope="col">{readingsTableWords.columns.inFit}</th>
            <th scope="col">
              <span className="unseen">{readingsTableWords.columns.delete}</span>
            </th>
          </tr>
        </thead>
        <tbody>
          {readings.rows.map((reading, row) => (
            <ReadingRow
              // biome-ignore lint/suspicious/noArrayIndexKey: a reading is known by its row
              key={row}
              id={readings.id}
              row={row}
              reading={reading}
              context={context}
              leftCents={fit?.residualsCents[row] ?? null}
              suspect={suspects.has(row)}
            />
          ))}
        </tbody>
        <NewReading id={readings.id} context={context} />
      </table>
    </>
  )
}

interface ReadingRowProps {
  readonly id: string
  readonly row: number
  readonly reading: BenchReading
  readonly context: ReadingContext
  readonly leftCents: number | null
  readonly suspect: boolean
}

function ReadingRow(props: ReadingRowProps): ReactNode {
  const { id, row, reading, context, leftCents, suspect } = props
  const spelling = useSettings((settings) => settings.spelling)
  const name = fingeringName(reading.pressed)
  const number = readingsTableWords.reading(row + 1)
  const out = reading.leaveOut === true
  const change = (values: Partial<BenchReading>): string | null => tryRun(setReading(id, row, values))
  const slip = likelySlip(reading, context, number)
  return (
    <>
      <tr className={`${out ? 'leftOut' : ''}${suspect ? ' suspect' : ''}`}>
        <th scope="row">
          <CellField
            label={readingsTableWords.fingeringOf(number)}
            shown={name}
            width={7}
            take={(text) => {
              const pressed = readValves(text, context)
              return 'message' in pressed ? pressed.message : change({ pressed })
            }}
          />
        </th>
        <td>
          <CellField
            label={readingsTableWords.harmonicOf(number)}
            shown={String(reading.harmonic)}
            width={4}
            take={(text) => {
              const typed = readRow([name, text, '0'], context)
              return 'message' in typed ? typed.message : change({ harmonic: typed.reading.harmonic })
            }}
          />
        </td>
        <td className="soft">{noteName(noteOf(reading, context), spelling)}</td>
        <td>
          <CellField
            label={readingsTableWords.centsOf(number)}
            shown={centsAsTyped(reading.cents)}
            width={6}
            take={(text) => {
              const cents = readCents(text)
              return typeof cents === 'number' ? change({ cents }) : cents.message
            }}
          />
        </td>
        <td className={suspect ? 'hot' : undefined}>{leftCents === null ? '' : signedCents(leftCents)}</td>
        <td>
          <input
            type="checkbox"
            aria-label={readingsTableWords.inFit(number)}
            checked={!out}
            onChange={(event) => run(leaveOutReading(id, row, !event.target.checked))}
          />
        </td>
        <td>
          <button
            type="button"
            className="quiet"
            aria-label={readingsTableWords.delete(number)}
            onClick={() => run(removeReading(id, row))}
          >
            ×
          </button>
        </td>
      </tr>
      {slip === null ? null : (
        <tr className="slipRow">
          <td colSpan={7}>
            <p className="likely" role="status">
              {slip}
            </p>
          </td>
        </tr>
      )}
    </>
  )
}

function likelySlip(reading: BenchReading, context: ReadingContext, field: string): string | null {
  const { pressed, harmonic, cents } = reading
  const drop = context.valves.reduce(
    (sum, { id, semitones }) => sum + (pressed.includes(id) ? semitones : 0),
    0,
  )
  return readingSlip(field, cents, meantHz(context.open, drop, harmonic, context.tunerA4Hz))?.message ?? null
}

/** Cents as a person types them: no more decimals than there are, with a sign. */
function centsAsTyped(cents: number): string {
  const digits = Number.isInteger(cents) ? 0 : Number.isInteger(cents * 10) ? 1 : 2
  return cents > 0 ? `+${plainFigure(cents, digits)}` : plainFigure(cents, digits)
}
