import type { ReactNode } from 'react'
import { Segments } from '../fields/Choice.tsx'
import { BandField } from '../pages/Curves.tsx'
import type { DerivedDesign } from '../state/derived.ts'
import { choose, useLengths } from '../state/lengthsStore.ts'
import { choiceWords } from '../words/lengths.ts'
import { aimWords } from '../words/lengthsAim.ts'

/** What is to be made least, and whether the open note may move. Only a design with a bore has resonances. */
export function Choices({ derived }: { readonly derived: DerivedDesign }): ReactNode {
  const aim = useLengths((state) => state.aim)
  const objective = useLengths((state) => state.objective)
  const openFree = useLengths((state) => state.openFree)
  const reachCounts = useLengths((state) => state.reachCounts)
  return (
    <div className="choices">
      {derived.design.bore === undefined ? null : (
        <Segments
          label={aimWords.aimAt}
          value={aim}
          options={[
            { value: 'lengths', text: aimWords.lengths },
            { value: 'resonances', text: aimWords.resonances },
          ]}
          take={(value) => choose({ aim: value })}
        />
      )}
      <Segments
        label={choiceWords.makeLeast}
        value={objective}
        options={[
          { value: 'rms', text: choiceWords.objectives.rms },
          { value: 'largest', text: choiceWords.objectives.largest },
        ]}
        take={(value) => choose({ objective: value })}
      />
      <Segments
        label={choiceWords.openNote}
        value={openFree ? 'free' : 'held'}
        options={[
          { value: 'held', text: choiceWords.openNoteMay.held },
          { value: 'free', text: choiceWords.openNoteMay.free },
        ]}
        take={(value) => choose({ openFree: value === 'free' })}
      />
      {reachCounts ? (
        <span className="soft">
          {choiceWords.reachCounts}
          <button type="button" className="quiet" onClick={() => choose({ reachCounts: false })}>
            {choiceWords.reachCountsNot}
          </button>
        </span>
      ) : null}
      <BandField />
    </div>
  )
}
