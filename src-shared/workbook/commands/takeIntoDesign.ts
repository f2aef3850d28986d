import type { Loop } from '../../valves/loop.ts'
import type { Design } from '../workbook.ts'
import { type Command, recorded, withDesign, withOptional } from './command.ts'
import { withDetuning } from './lengthCommands.ts'

/** Lengths that were found or decided, for a design. What is absent stays as it is. */
export interface TakenLengths {
  /** mm of tube, by loop id. */
  readonly loopsMm: Readonly<Record<string, number>>
  /** Nominal harmonic 1 of the open route. */
  readonly fundamentalHz?: number
  /** Physical centre line, mm. */
  readonly boreLengthMm?: number
  /** Cents by harmonic; those that are not named stay. */
  readonly harmonicOffsetsCents?: Readonly<Record<string, number>>
  /** How far the open note is set off its pitch on purpose, cents, sharp positive; 0 takes it out. */
  readonly openDetuningCents?: number
}

/**
 * Takes lengths into a design as one step; loops that are not named stay as they are. `name` is the step's, as undo says it.
 *
 * @example takeIntoDesign('Take lengths found', 'plain', { loopsMm: { L3: 259.1 } })
 */
export function takeIntoDesign(name: string, designId: string, taken: TakenLengths): Command {
  return recorded(name, (workbook) =>
    withDesign(workbook, designId, (design) => {
      const next = withLengths(design, taken)
      return taken.openDetuningCents === undefined ? next : withDetuning(next, taken.openDetuningCents)
    }),
  )
}

function withLengths(design: Design, taken: TakenLengths): Design {
  const { instrument } = design
  const fundamentalHz = taken.fundamentalHz ?? instrument.fundamentalHz
  const bore = taken.boreLengthMm ?? instrument.boreLengthMm
  const withBore = withOptional({ ...instrument, fundamentalHz }, 'boreLengthMm', bore)
  return {
    ...design,
    instrument: withOffsets(withBore, taken.harmonicOffsetsCents),
    loops: design.loops.map((loop) => withTakenLength(loop, taken)),
  }
}

function withOffsets(
  instrument: Design['instrument'],
  taken: TakenLengths['harmonicOffsetsCents'],
): Design['instrument'] {
  if (taken === undefined) return instrument
  const offsets = { ...instrument.harmonicOffsetsCents, ...taken }
  const kept = Object.entries(offsets).filter(([, cents]) => cents !== 0)
  const next = kept.length === 0 ? undefined : Object.fromEntries(kept)
  return withOptional(instrument, 'harmonicOffsetsCents', next)
}

/** Asks for the loop's own entry: one may be called `constructor`. */
function withTakenLength(loop: Loop, { loopsMm }: TakenLengths): Loop {
  const lengthMm = Object.hasOwn(loopsMm, loop.id) ? loopsMm[loop.id] : undefined
  return lengthMm === undefined ? loop : { ...loop, lengthMm }
}
