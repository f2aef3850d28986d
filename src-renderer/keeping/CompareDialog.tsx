import type { ReactNode } from 'react'
import type { Difference } from '#shared/workbook/differences/difference.ts'
import { Dialog } from '../dialogs/Dialog.tsx'
import { compareWords } from '../words/keeping.ts'
import { type Comparison, closeComparison, useComparison } from './comparison.ts'
import './keeping.css'

/** More than these are counted, not listed. */
const mostListed = 200

/** Two versions side by side: what differs, and what to do about it. */
export function CompareDialog(): ReactNode {
  const shown = useComparison((state) => state.shown)
  if (shown === null) return null
  return (
    <Dialog title={shown.title} onClose={closeComparison} wide>
      <p className="soft">{shown.lead}</p>
      <Outcome comparison={shown} />
      <div className="buttons">
        {shown.choices.map(({ label, act }, i) => (
          <button
            key={label}
            type="button"
            className={i === 0 ? 'main' : undefined}
            onClick={() => {
              closeComparison()
              act()
            }}
          >
            {label}
          </button>
        ))}
        <button type="button" onClick={closeComparison}>
          {compareWords.close}
        </button>
      </div>
    </Dialog>
  )
}

function Outcome({
  comparison: { differences, trouble, mine },
}: {
  readonly comparison: Comparison
}): ReactNode {
  if (differences === null) return <p className="trouble">{compareWords.fileNotRead(trouble ?? '')}</p>
  if (differences.length === 0) return <p>{compareWords.same}</p>
  const shown = differences.slice(0, mostListed)
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reached by the keyboard
    <section className="tableFrame differences" aria-label={countWords(differences.length)} tabIndex={0}>
      <table className="figures">
        <caption>{countWords(differences.length)}</caption>
        <thead>
          <tr>
            <th scope="col">{compareWords.place}</th>
            <th scope="col">{compareWords.file}</th>
            <th scope="col">{mine}</th>
          </tr>
        </thead>
        <tbody>
          {shown.map((difference) => (
            <Row key={`${difference.path} ${difference.place}`} difference={difference} />
          ))}
        </tbody>
      </table>
    </section>
  )
}

function countWords(count: number): string {
  return count === 1 ? compareWords.oneDifference : compareWords.count(count, Math.min(count, mostListed))
}

function Row({ difference: { place, before, after } }: { readonly difference: Difference }): ReactNode {
  return (
    <tr>
      <th scope="row">{place}</th>
      <td>{before ?? compareWords.nothing}</td>
      <td>{after ?? compareWords.nothing}</td>
    </tr>
  )
}
