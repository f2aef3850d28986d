import type { ReactNode } from 'react'
import { Segments } from '../fields/Choice.tsx'
import { BandField } from '../pages/Curves.tsx'
import { choose, useLengths } from '../state/lengthsStore.ts'

/** What is to be made least, and whether the open note may move. */
export function Choices(): ReactNode {
  const objective = useLengths((state) => state.objective)
  const openFree = useLengths((state) => state.openFree)
  const reachCounts = useLengths((state) => state.reachCounts)
  return (
    <div className="choices">
      <Segments
        label="Make least the"
        value={objective}
        options={[
          { value: 'rms', text: 'rms' },
          { value: 'largest', text: 'largest' },
        ]}
        take={(value) => choose({ objective: value })}
      />
      <Segments
        label="Open note"
        value={openFree ? 'free' : 'held'}
        options={[
          { value: 'held', text: 'held' },
          { value: 'free', text: 'free' },
        ]}
        take={(value) => choose({ openFree: value === 'free' })}
      />
      {reachCounts ? (
        <span className="soft">
          what moved slides reach counts as reached
          <button type="button" className="quiet" onClick={() => choose({ reachCounts: false })}>
            do not
          </button>
        </span>
      ) : null}
      <BandField />
    </div>
  )
}
