import { createContext, type ReactNode, useContext, useRef } from 'react'
import { createPortal } from 'react-dom'
import { cautions, dryFitTick } from '#shared/bench/cautions.ts'
import { sheetWords } from '../../words/benchSheet.ts'
import { Fact } from './Fact.tsx'
import { sheetWidthMm, useOnPaper } from './paper.ts'
import { today } from './today.ts'
import { useOnePage } from './useOnePage.ts'

interface SheetProps {
  /** What kind of job it is. */
  readonly kind: string
  readonly name: string
  readonly workbook: string
  readonly design: string
  readonly notes: string | undefined
  readonly children: ReactNode
}

/** Whether sheets are pages of a report, in place of lying ready beside the window. */
export const InReport = createContext(false)

/** One page for a job: what it is and for which design, its figures, the box to tick, the cautions. */
export function Sheet({ kind, name, workbook, design, notes, children }: SheetProps): ReactNode {
  const sheet = useRef<HTMLElement>(null)
  const inReport = useContext(InReport)
  const otherOnPaper = useOnPaper((state) => state.instead !== null)
  useOnePage(sheet)
  if (otherOnPaper && !inReport) return null
  const page = (
    <article className="benchSheet" ref={sheet} style={{ width: `${sheetWidthMm}mm` }}>
      <header>
        <h1>{sheetWords.headOf(kind, name)}</h1>
        <dl className="sheetFacts">
          <Fact name={sheetWords.design}>{design}</Fact>
          <Fact name={sheetWords.workbook}>{workbook}</Fact>
          <Fact name={sheetWords.date}>{today()}</Fact>
          {notes === undefined ? null : <Fact name={sheetWords.note}>{notes}</Fact>}
        </dl>
      </header>
      {children}
      <p className="tick">
        <span className="box" /> {dryFitTick}
        <span className="signed">{sheetWords.signedBy}</span>
        <span className="signed">{sheetWords.signedOn}</span>
      </p>
      <footer>
        <h2>{sheetWords.cautions}</h2>
        <ul>
          {cautions.map(({ id, text }) => (
            <li key={id}>{text}</li>
          ))}
        </ul>
      </footer>
    </article>
  )
  return inReport ? page : createPortal(<div className="onPaper">{page}</div>, document.body)
}
