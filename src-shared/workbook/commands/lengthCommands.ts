import type { Design } from '../workbook.ts'
import { type Command, coalesced, withDesign, withOptional } from './command.ts'

/** Sets how far the open note stands off its pitch on purpose, cents, sharp positive; 0 takes it out. */
export function setOpenDetuning(designId: string, openDetuningCents: number): Command {
  return coalesced('Open note', `${designId} open detuning`, (workbook) =>
    withDesign(workbook, designId, (design) => withDetuning(design, openDetuningCents)),
  )
}

/** The design with its open note that far off its pitch, cents; 0 leaves no key behind. */
export function withDetuning(design: Design, cents: number): Design {
  return withOptional(design, 'openDetuningCents', cents === 0 ? undefined : cents)
}
