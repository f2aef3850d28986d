import { memo, type ReactNode, useState } from 'react'
import type { HoldingBound } from '#shared/solve/lengthAnswer.ts'
import type { LoopFreedom } from '#shared/solve/lengthProblem.ts'
import { gateWords } from '#shared/valves/gate.ts'
import type { Loop } from '#shared/valves/loop.ts'
import type { Design } from '#shared/workbook/workbook.ts'
import { Choice } from '../fields/Choice.tsx'
import { lengthFigure } from '../fields/LengthField.tsx'
import { setFreedom, useLengths } from '../state/lengthsStore.ts'
import { useSettings } from '../state/settings.ts'
import { loopTableWords } from '../words/lengthsLoops.ts'
import { BoundsFields } from './BoundsFields.tsx'
import { ChangeCells } from './ChangeCells.tsx'
import { suggestedTie } from './suggestedTie.ts'
import { TieFields } from './TieFields.tsx'

interface FreedomRowProps {
  readonly design: Design
  readonly loop: Loop
  readonly proposedMm: number | null
  readonly holding: readonly HoldingBound[]
}

const kinds = [
  { value: 'free', text: loopTableWords.mayBe.free },
  { value: 'held', text: loopTableWords.mayBe.held },
  { value: 'tied', text: loopTableWords.mayBe.tied },
] as const

/** One loop: free within bounds, held as it is, or tied to another; and what is proposed for it. */
export const FreedomRow = memo(function FreedomRow(props: FreedomRowProps): ReactNode {
  const { design, loop, proposedMm, holding } = props
  const freedom: LoopFreedom = useLengths((state) => state.freedoms.get(design.id)?.get(loop.id)) ?? {
    kind: 'free',
  }
  const unit = useSettings((settings) => settings.unit)
  const [opened, setOpened] = useState(false)
  const name = loop.name ?? loop.id
  const take = (next: LoopFreedom): void => setFreedom(design.id, loop.id, next)
  const bounded = freedom.kind !== 'held' && (freedom.lowestMm ?? freedom.highestMm) !== undefined
  const showBounds = freedom.kind !== 'held' && (opened || bounded)
  const canTie = design.loops.length > 1
  return (
    <>
      <tr>
        <th scope="row">
          {name}
          <small>{gateWords(loop)}</small>
        </th>
        <td className="wide">
          <Choice
            label={loopTableWords.whatMayBe(name)}
            labelHidden
            value={freedom.kind}
            options={canTie ? kinds : kinds.slice(0, 2)}
            take={(kind) => take(kind === 'tied' ? suggestedTie(design, loop) : { kind })}
          />
          {freedom.kind === 'held' ? null : (
            <button
              type="button"
              className="quiet"
              aria-expanded={showBounds}
              aria-label={loopTableWords.boundsOf(name)}
              disabled={bounded}
              onClick={() => setOpened(!opened)}
            >
              {loopTableWords.bounds}
            </button>
          )}
        </td>
        <td>{lengthFigure(loop.lengthMm, unit)}</td>
        <ChangeCells nowMm={loop.lengthMm} proposedMm={proposedMm} held={holding.length > 0} />
      </tr>
      {showBounds || freedom.kind === 'tied' ? (
        <tr className="freedomMore">
          <td colSpan={6}>
            {freedom.kind === 'tied' ? (
              <TieFields design={design} loop={loop} freedom={freedom} take={take} />
            ) : null}
            {showBounds ? (
              <BoundsFields
                name={name}
                presentMm={loop.lengthMm}
                ends={freedom}
                atLeast={0}
                take={(ends) => take(withEnds(freedom, ends))}
              />
            ) : null}
          </td>
        </tr>
      ) : null}
    </>
  )
})

/** The freedom with other ends; ends that are absent are taken out. */
function withEnds<Freedom extends Exclude<LoopFreedom, { kind: 'held' }>>(
  freedom: Freedom,
  ends: { readonly lowestMm?: number; readonly highestMm?: number },
): Freedom {
  const { lowestMm: _lowest, highestMm: _highest, ...rest } = freedom
  return { ...rest, ...ends } as Freedom
}
