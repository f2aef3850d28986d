import { rm } from 'node:fs/promises'
import { join } from 'node:path'
import type { Draft } from '#shared/bridge/bridge.ts'
import { draftShape } from '../channels/payloads.ts'
import { inTurn } from './inTurn.ts'
import { readStored, writeStored } from './stored.ts'

/** The unsaved work of the window, in the user's data, so that a crash or a power cut leaves it there. */
export interface DraftStore {
  keep(draft: Draft): Promise<void>
  forget(): Promise<void>
  left(): Promise<Draft | null>
}

export function draftStoreIn(dataFolder: string): DraftStore {
  const file = join(dataFolder, 'draft.json')
  const queue = inTurn()
  return {
    keep: (draft) =>
      queue(async () => {
        if (!(await writeStored(file, draft))) throw new Error('The draft could not be kept.')
      }),
    forget: () => queue(() => rm(file, { force: true })),
    left: () => queue(() => readStored(file, draftShape)),
  }
}
