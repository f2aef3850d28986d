import { type ReactNode, useState } from 'react'
import { centsBetween } from '#shared/pitch/cents.ts'
import { signedCents } from '#shared/quantity/figures.ts'
import { setOpenDetuning } from '#shared/workbook/commands/lengthCommands.ts'
import { Choice } from '../fields/Choice.tsx'
import { NumberField } from '../fields/NumberField.tsx'
import { tryRun } from '../fields/refusal.ts'
import type { DerivedDesign } from '../state/derived.ts'
import { choose, useLengths } from '../state/lengthsStore.ts'
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
          open note
          <small>by the main slide</small>
        </th>
        <td className="wide">
          <Choice
            label="What the open note may be"
            labelHidden
            value={openFree ? 'free' : 'held'}
            options={[
              { value: 'free', text: 'free' },
              { value: 'held', text: 'held' },
            ]}
            take={(value) => choose({ openFree: value === 'free' })}
          />
          {openFree ? (
            <button
              type="button"
              className="quiet"
              aria-expanded={showBounds}
              aria-label="Bounds of the open note"
              disabled={bounded}
              onClick={() => setOpened(!opened)}
            >
              bounds
            </button>
          ) : null}
        </td>
        <td className="openNow">
          <NumberField
            label="Open note stands at"
            labelHidden
            value={design.openDetuningCents ?? 0}
            digits={1}
            by={0.5}
            width={5}
            units={['cents']}
            unit="cents"
            help="How far the open note is set off its pitch on purpose; sharp is positive."
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
                {signedCents(centsBetween(inTuneOpenMm + proposedMm, inTuneOpenMm))} <i>cents</i>
              </>
            )
          }
        />
      </tr>
      {showBounds ? (
        <tr className="freedomMore">
          <td colSpan={6}>
            <BoundsFields
              name="change of tube"
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
