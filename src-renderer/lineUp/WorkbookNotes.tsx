import { type ReactNode, useState } from 'react'
import { setNotes } from '#shared/workbook/commands/workbookCommands.ts'
import { run, useWorkbook } from '../state/workbookStore.ts'
import { lineUpWords as words } from '../words/lineUp.ts'

/** What is written down about the whole workbook; open where something is. A burst of typing is one step. */
export function WorkbookNotes(): ReactNode {
  const notes = useWorkbook(({ workbook }) => workbook?.notes ?? '')
  const [open, setOpen] = useState(notes !== '')
  return (
    <details
      className="more notes"
      open={open || notes !== ''}
      onToggle={(event) => setOpen(event.currentTarget.open)}
    >
      <summary>{words.notes}</summary>
      <textarea
        aria-label={words.notes}
        placeholder={words.notesHint}
        rows={5}
        value={notes}
        onChange={({ target }) => run(setNotes(target.value))}
      />
    </details>
  )
}
