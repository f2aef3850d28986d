import type { ReactNode } from 'react'
import type { ReadingsFit } from '#shared/bench/readings/readingsFit.ts'
import type { Design } from '#shared/workbook/workbook.ts'
import { useSettings } from '../../state/settings.ts'
import { readingsWords as words } from '../../words/benchReadings.ts'
import { type AnswerRow, answerRows, answerSentences } from './answerRows.ts'

interface AnswersProps {
  readonly fit: ReadingsFit
  readonly design: Design
  /** Sentences said after the others. */
  readonly more?: readonly string[]
}

/** What the readings say: a row for each loop, and a sentence for what is no row. For page and sheet. */
export function Answers({ fit, design, more = [] }: AnswersProps): ReactNode {
  const unit = useSettings((settings) => settings.unit)
  const rows = answerRows(fit, design, unit)
  return (
    <section className="answers" aria-label={words.answers}>
      <h2>{words.answers}</h2>
      {rows.length === 0 ? null : <AnswerTable rows={rows} unit={unit} />}
      <ul>
        {[...answerSentences(fit, design, unit), ...more].map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
    </section>
  )
}

interface AnswerTableProps {
  readonly rows: readonly AnswerRow[]
  readonly unit: 'mm' | 'in'
}

function AnswerTable({ rows, unit }: AnswerTableProps): ReactNode {
  const { columns } = words
  return (
    <table className="figures answerTable">
      <caption>{words.answerUnits(unit)}</caption>
      <thead>
        <tr>
          <th scope="col">{columns.loop}</th>
          <th scope="col">{columns.off}</th>
          <th scope="col">{columns.slide}</th>
          <th scope="col">{columns.newLoop}</th>
          <th scope="col">{columns.firstCut}</th>
        </tr>
      </thead>
      <tbody>
        {rows.map(({ loop, off, doubt, kind, slide, newLoop, firstCut }, i) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: two loops may have one name
          <tr key={i}>
            <th scope="row">{loop}</th>
            <td>
              {off}
              <i>{words.doubt(doubt, kind === 'doubtful')}</i>
            </td>
            <td>{slide ?? words.none}</td>
            <td>{newLoop ?? words.none}</td>
            <td>{firstCut === null ? words.none : <b>{firstCut}</b>}</td>
          </tr>
        ))}
      </tbody>
    </table>
  )
}
