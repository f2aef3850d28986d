import { type ClipboardEvent, type ReactNode, useRef, useState } from 'react'
import type { ReadingContext } from '#shared/bench/readings/placeReading.ts'
import { addReadings } from '#shared/workbook/commands/readingCommands.ts'
import { tryRun } from '../../fields/refusal.ts'
import { readingsTableWords } from '../../words/benchReadingsTable.ts'
import { readPaste, readRow } from './typedReading.ts'

type Cells = readonly [string, string, string]
const emptyCells: Cells = ['', '', '']
const widths = [7, 4, 6] as const

interface NewReadingProps {
  readonly id: string
  readonly context: ReadingContext
}

/** The empty row at the end of the table: Enter in any of its cells takes it, and rows of a spreadsheet may be pasted there. */
export function NewReading({ id, context }: NewReadingProps): ReactNode {
  const [cells, setCells] = useState(emptyCells)
  const [message, setMessage] = useState<string | null>(null)
  const first = useRef<HTMLInputElement>(null)
  const add = (): void => {
    const typed = readRow(cells, context)
    const refused = 'message' in typed ? typed.message : tryRun(addReadings(id, [typed.reading]))
    setMessage(refused)
    if (refused !== null) return
    setCells(emptyCells)
    first.current?.focus()
  }
  const paste = (event: ClipboardEvent): void => {
    const text = event.clipboardData.getData('text/plain')
    // A word goes into the cell; what has rows or columns is a table.
    if (!/[\t\n;]/.test(text.trim())) return
    event.preventDefault()
    const pasted = readPaste(text, context)
    setMessage('message' in pasted ? pasted.message : tryRun(addReadings(id, pasted.readings)))
  }
  const cell = (at: 0 | 1 | 2): ReactNode => (
    <input
      ref={at === 0 ? first : undefined}
      type="text"
      className="newCell"
      aria-label={readingsTableWords.newCell(readingsTableWords.newCells[at])}
      placeholder={readingsTableWords.newExamples[at]}
      autoComplete="off"
      spellCheck={false}
      style={{ width: `${widths[at]}ch` }}
      value={cells[at]}
      onChange={(event) => setCells(cells.with(at, event.target.value) as unknown as Cells)}
      onPaste={paste}
      onKeyDown={(event) => {
        if (event.key === 'Enter') add()
      }}
    />
  )
  return (
    <tfoot>
      <tr>
        <td>{cell(0)}</td>
        <td>{cell(1)}</td>
        <td />
        <td>{cell(2)}</td>
        <td colSpan={3}>
          <button type="button" className="add" onClick={add}>
            {readingsTableWords.add}
          </button>
        </td>
      </tr>
      {message === null ? null : (
        <tr className="slipRow">
          <td colSpan={7}>
            <p className="slip" role="alert">
              {message}
            </p>
          </td>
        </tr>
      )}
    </tfoot>
  )
}
