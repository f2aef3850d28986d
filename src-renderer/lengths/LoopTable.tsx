import type { ReactNode } from 'react'
import type { DerivedDesign } from '../state/derived.ts'
import { useSettings } from '../state/settings.ts'
import { proposedLoopsTable } from '../tables/lengthsTables.ts'
import { TableOut } from '../tables/TableOut.tsx'
import { loopTableWords } from '../words/lengthsLoops.ts'
import { titles } from '../words/tableHeadings.ts'
import { FreedomRow } from './FreedomRow.tsx'
import { OpenRow } from './OpenRow.tsx'
import type { Proposal } from './useProposal.ts'

interface LoopTableProps {
  readonly derived: DerivedDesign
  readonly proposal: Proposal | null
}

/** Every loop and the open note: what may become of it, and what is proposed. */
export function LoopTable({ derived, proposal }: LoopTableProps): ReactNode {
  const unit = useSettings((settings) => settings.unit)
  const { design } = derived
  return (
    <div className="tableFrame">
      <TableOut
        name={titles.lengths(design.name)}
        table={() => proposedLoopsTable(derived, proposal, unit)}
      />
      <table className="figures loopTable">
        <caption className="unseen">{loopTableWords.caption(design.name)}</caption>
        <thead>
          <tr>
            <th scope="col">{loopTableWords.columns.loop}</th>
            <th scope="col" className="wide">
              {loopTableWords.columns.mayBe}
            </th>
            <th scope="col">
              {loopTableWords.columns.now}, <i>{unit}</i>
            </th>
            <th scope="col">
              {loopTableWords.columns.proposed}, <i>{unit}</i>
            </th>
            <th scope="col">
              {loopTableWords.columns.change}, <i>{unit}</i>
            </th>
            <th scope="col" title={loopTableWords.slideOutHelp}>
              {loopTableWords.columns.slideOut}, <i>{unit}</i>
            </th>
          </tr>
        </thead>
        <tbody>
          {design.loops.map((loop) => (
            <FreedomRow
              key={loop.id}
              design={design}
              loop={loop}
              proposedMm={proposal?.lengths.lengthsMm[loop.id] ?? null}
              holding={proposal?.solution?.heldByBounds.filter((bound) => bound.loop === loop.id) ?? []}
            />
          ))}
          <OpenRow derived={derived} proposal={proposal} />
        </tbody>
      </table>
    </div>
  )
}
