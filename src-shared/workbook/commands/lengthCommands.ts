import type { Design } from '../workbook.ts'
import { type Command, coalesced, recorded, withDesign, withOptional } from './command.ts'

/** Lengths as they were found: every loop's by its id, mm of tube, and how far the open note is set off its pitch. */
export interface FoundLengths {
  readonly lengthsMm: Readonly<Record<string, number>>
  readonly openDetuningCents: number
}

/** Takes lengths that were found into a design, all in one step. Loops that are not named stay as they are. */
export function takeLengths(designId: string, found: FoundLengths): Command {
  return recorded('Take lengths', (workbook) =>
    withDesign(workbook, designId, (design) => {
      const loops = design.loops.map((loop) =>
        Object.hasOwn(found.lengthsMm, loop.id)
          ? { ...loop, lengthMm: found.lengthsMm[loop.id] ?? loop.lengthMm }
          : loop,
      )
      return withDetuning({ ...design, loops }, found.openDetuningCents)
    }),
  )
}

/** Sets how far the open note stands off its pitch on purpose, cents, sharp positive; 0 takes it out. */
export function setOpenDetuning(designId: string, openDetuningCents: number): Command {
  return coalesced('Open note', `${designId} open detuning`, (workbook) =>
    withDesign(workbook, designId, (design) => withDetuning(design, openDetuningCents)),
  )
}

function withDetuning(design: Design, cents: number): Design {
  return withOptional(design, 'openDetuningCents', cents === 0 ? undefined : cents)
}
