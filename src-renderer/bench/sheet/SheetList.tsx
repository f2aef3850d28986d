import type { ReactNode } from 'react'
import { sheetWords } from '../../words/benchSheet.ts'
import type { ResultFigure } from '../slide/SlideResults.tsx'

/** Most lines of a list on the sheet; beyond them it would be too small to read. */
const mostLines = 90

interface SheetListProps {
  readonly rows: readonly ResultFigure[]
  /** What the rows are called, for those that are left out. */
  readonly rest: string
}

/** A long list in three columns. */
export function SheetList({ rows, rest }: SheetListProps): ReactNode {
  const left = rows.length - mostLines
  return (
    <>
      <dl className="resultFigures sheetList">
        {rows.slice(0, mostLines).map(({ name, text }) => (
          <div key={name}>
            <dt>{name}</dt>
            <dd>{text}</dd>
          </div>
        ))}
      </dl>
      {left > 0 ? <p>{sheetWords.leftOut(left, rest)}</p> : null}
    </>
  )
}
