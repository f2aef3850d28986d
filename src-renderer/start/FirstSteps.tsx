import type { ReactNode } from 'react'
import { startWords } from '../words/start.ts'
import { FirstStepList } from './FirstStepList.tsx'
import { useFirstRun } from './firstStepStore.ts'

/** The start page of a first run: tasks that lead to a result, until they are put away. */
export function FirstSteps(): ReactNode {
  const putAway = useFirstRun((state) => state.putAway)
  if (putAway) return null
  return (
    <section className="firstRun" aria-labelledby="firstRun">
      <div className="firstRunHead">
        <h2 id="firstRun">{startWords.firstSteps}</h2>
        <button type="button" className="quiet" onClick={() => useFirstRun.setState({ putAway: true })}>
          {startWords.putAway}
        </button>
      </div>
      <FirstStepList />
    </section>
  )
}
