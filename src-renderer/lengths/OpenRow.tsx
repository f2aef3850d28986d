import { type ReactNode, useState } from 'react'
import { centsBetween } from '#shared/pitch/cents.ts'
import { signedCents } from '#shared/quantity/figures.ts'
import { setOpenDetuning } from '#shared/workbook/commands/lengthCommands.ts'
import { Choice } from '../fields/Choice.tsx'
import { NumberField } from '../fields/NumberField.tsx'
import { tryRun } from '../fields/refusal.ts'
import type { DerivedDesign } from '../state/derived.ts'
import { choose, useLengths } from '../state/lengthsStore.ts'
import { loopTableWords } from '../words/lengthsLoops.ts'
import { BoundsFields } from './BoundsFields.tsx'
import { ChangeCells } from './ChangeCells.tsx'
import type { Proposal } from './useProposal.ts'

interface OpenRowProps {
  readonly derived: DerivedDesign
  readonly proposal: Proposal | null
}

/** The open note: held where it is set, or free to stand off its pitch, by the main slide. */
export function OpenRow({ derived, proposal }: OpenRowProps): ReactNode {
  const { design, tables } = derived
  const openFree = useLengths((state) => state.openFree)
  const ends = useLengths((state) => state.openEnds)
  const [opened, setOpened] = useState(false)
  const { inTuneOpenMm, openMm } = tables.mainSlide
  const changeMm = openMm - inTuneOpenMm
  const proposedMm = proposal === null ? null : proposal.lengths.openChangeMm
  const bounded = (ends.lowestMm ?? ends.highestMm) !== undefined
  const showBounds = openFree && (opened || bounded)
  const held = proposal?.solution?.heldByBounds.some(({ loop }) => loop === null) ?? false
  return (
    <>
      <tr>
        <th scope="row">
          {loopTableWords.openNote}
          <small>{loopTableWords.byMainSlide}</small>
        </th>
        <td className="wide">
          <Choice
            label={loopTableWords.whatOpenMayBe}
            labelHidden
            value={openFree ? 'free' : 'held'}
            options={[
              { value: 'free', text: loopTableWords.mayBe.free },
              { value: 'held', text: loopTableWords.mayBe.held },
            ]}
            take={(value) => choose({ openFree: value === 'free' })}
          />
          {openFree ? (
            <button
              type="button"
              className="quiet"
              aria-expanded={showBounds}
              aria-label={loopTableWords.boundsOfOpen}
              disabled={bounded}
              onClick={() => setOpened(!opened)}
            >
              {loopTableWords.bounds}
            </button>
          ) : null}
        </td>
        <td className="openNow">
          <NumberField
            label={loopTableWords.openStandsAt}
            labelHidden
            value={design.openDetuningCents ?? 0}
            digits={1}
            by={0.5}
            width={5}
            units={['cents']}
            unit="cents"
            help={loopTableWords.openStandsAtHelp}
            take={(cents) => tryRun(setOpenDetuning(design.id, cents))}
          />
        </td>
        <ChangeCells
          nowMm={changeMm}
          proposedMm={proposedMm}
          held={held}
          proposed={
            proposedMm === null ? null : (
              <>
                {signedCents(centsBetween(inTuneOpenMm + proposedMm, inTuneOpenMm))}{' '}
                <i>{loopTableWords.cents}</i>
              </>
            )
          }
        />
      </tr>
      {showBounds ? (
        <tr className="freedomMore">
          <td colSpan={6}>
            <BoundsFields
              name={loopTableWords.changeOfTube}
              presentMm={0}
              ends={ends}
              atLeast={-1000}
              take={(openEnds) => choose({ openEnds })}
            />
          </td>
        </tr>
      ) : null}
    </>
  )
}
