import type { LengthsWork } from './lengthsWorker.ts'
import { workDesk } from './workDesk.ts'

/** Kinds of work, the most urgent first. */
const workKinds = { proposal: 0, trade: 1, systems: 2 } as const

/** The solver's worker. */
export const { useWork } = workDesk<LengthsWork, keyof typeof workKinds>(
  workKinds,
  () => new Worker(new URL('./lengthsWorker.ts', import.meta.url), { type: 'module', name: 'lengths' }),
)
