import { type ReactNode, useId, useState } from 'react'
import type { BenchReading, BenchReadings } from '#shared/workbook/bench.ts'
import type { Command } from '#shared/workbook/commands/command.ts'
import { addReadings, replaceReadings } from '#shared/workbook/commands/readingCommands.ts'
import type { Design, Workbook } from '#shared/workbook/workbook.ts'
import { tryRun } from '../../fields/refusal.ts'
import { readingsTableWords } from '../../words/benchReadingsTable.ts'
import { useBench } from '../benchStore.ts'
import { contextOf, readPaste } from './typedReading.ts'

interface PasteRowsProps {
  readonly workbook: Workbook
  readonly readings: BenchReadings
  readonly design: Design
}

/** A place to paste rows from a spreadsheet. All are taken or none, and the first bad cell is named. */
export function PasteRows({ workbook, readings, design }: PasteRowsProps): ReactNode {
  const notes = useBench((state) => state.notes)
  const [text, setText] = useState('')
  const [message, setMessage] = useState<string | null>(null)
  const id = useId()
  const take = (command: (rows: readonly BenchReading[]) => Command): void => {
    const pasted = readPaste(text, contextOf(workbook, design, readings, notes))
    const refused = 'message' in pasted ? pasted.message : tryRun(command(pasted.readings))
    setMessage(refused)
    if (refused === null) setText('')
  }
  return (
    <details className="more">
      <summary>{readingsTableWords.paste}</summary>
      <label htmlFor={id} className="soft">
        {readingsTableWords.pasteHint}
      </label>
      <textarea
        id={id}
        rows={6}
        spellCheck={false}
        value={text}
        aria-invalid={message !== null}
        onChange={(event) => setText(event.target.value)}
      />
      {message === null ? null : (
        <p className="slip" role="alert">
          {message}
        </p>
      )}
      <div className="jobButtons">
        <button type="button" onClick={() => take((rows) => addReadings(readings.id, rows))}>
          {readingsTableWords.addToTable}
        </button>
        <button type="button" onClick={() => take((rows) => replaceReadings(readings.id, rows))}>
          {readingsTableWords.replaceTable}
        </button>
      </div>
    </details>
  )
}
