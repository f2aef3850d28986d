import type { Remote } from 'comlink'
import { create } from 'zustand'
import type { BoreBody } from './boreAnswer.ts'
import type { BoreProgress, BoreWork } from './boreWorker.ts'
import { workDesk } from './workDesk.ts'

/** Kinds of work, the most urgent first. */
const boreKinds = { picture: 0, sum: 1, fit: 2, report: 3 } as const

/** How far the bore's worker has come with what it is at; `null` where it cannot say. */
export const useBoreProgress = create<{ readonly progress: BoreProgress['boreProgress'] | null }>()(() => ({
  progress: null,
}))

function start(): Worker {
  const worker = new Worker(new URL('./boreWorker.ts', import.meta.url), { type: 'module', name: 'bore' })
  worker.addEventListener('message', ({ data }: MessageEvent<Partial<BoreProgress>>) => {
    if (data.boreProgress !== undefined) useBoreProgress.setState({ progress: data.boreProgress })
  })
  return worker
}

const desk = workDesk<BoreWork, keyof typeof boreKinds>(boreKinds, start)

/** Asks the bore's worker. */
export const useBoreWork = desk.useWork

/** Asks it once, from outside a component. */
export const askBoreWork = desk.ask

/** Asks about a bore by its key, and gives the worker the bore when it has not got it. */
export async function askWithBody<Answer>(
  worker: Remote<BoreWork>,
  body: BoreBody,
  ask: () => Promise<Answer | null>,
): Promise<Answer> {
  const known = await ask()
  if (known !== null) return known
  await worker.keep(body)
  const answer = await ask()
  if (answer === null) throw new Error('the worker lost the bore it was given')
  return answer
}

/** What a piece of work that a person gave up fails with. */
export const givenUp = 'given up'

/** Gives up what the bore's worker is at. */
export function giveUpBoreWork(): void {
  useBoreProgress.setState({ progress: null })
  desk.giveUp(givenUp)
}
