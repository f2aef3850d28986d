import { type ReactNode, useEffect, useState } from 'react'
import { csvText } from '#shared/table/csv.ts'
import type { Table } from '#shared/table/table.ts'
import { keepExport } from '../bridge/keepExport.ts'
import '../look/out.css'
import { tableWords as words } from '../words/table.ts'
import { copyTable } from './copyTable.ts'

interface TableOutProps {
  /** Name of the file, without its ending, and what the buttons say of the table. */
  readonly name: string
  /** What stands before the buttons; `Table` when absent. */
  readonly label?: string
  /** Makes the table when it is asked for. */
  readonly table: () => Table
}

/** How long it is said that a table was copied, ms. */
const saidForMs = 2500

/** Lets a person take a table along: copied for a spreadsheet, or as a CSV file. */
export function TableOut({ name, label, table }: TableOutProps): ReactNode {
  const [said, setSaid] = useState('')
  useEffect(() => {
    if (said !== words.copied) return
    const timer = setTimeout(() => setSaid(''), saidForMs)
    return () => clearTimeout(timer)
  }, [said])
  const keep = (): void => {
    void keepExport({ name: `${name}.csv`, mediaType: 'text/csv;charset=utf-8', content: csvText(table()) })
  }
  return (
    // biome-ignore lint/a11y/useSemanticElements: two buttons are no fieldset
    <div className="outButtons" role="group" aria-label={words.group(name)}>
      <span className="outSaid" role="status">
        {said}
      </span>
      <span aria-hidden="true">{label ?? words.table}</span>
      <button
        type="button"
        className="quiet"
        aria-label={words.copyName(name)}
        onClick={() => setSaid(copyTable(table()) ? words.copied : words.notCopied)}
      >
        {words.copy}
      </button>
      <button type="button" className="quiet" aria-label={words.csvName(name)} onClick={keep}>
        {words.csv}
      </button>
    </div>
  )
}
