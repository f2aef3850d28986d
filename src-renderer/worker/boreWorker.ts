import { expose } from 'comlink'
import { type Body, prepareBody } from '#shared/bore/body.ts'
import { type FittedBore, type FreeDimension, fitBore, type ModeTarget } from '#shared/bore/fitBore.ts'
import type { BoreResult } from '#shared/bore/refusal.ts'
import type { BoreConditions, BoreSection, Insert } from '#shared/bore/section.ts'
import { type BoreAnswer, type BoreBody, type BoreQuestion, describeBore } from './boreAnswer.ts'
import { type SumAnswer, type SumQuestion, sumBore } from './sumAnswer.ts'

/** A bore to be fitted. */
export interface FitQuestion {
  readonly sections: readonly BoreSection[]
  readonly conditions: BoreConditions
  readonly free: readonly FreeDimension[]
  readonly targets: readonly ModeTarget[]
  /** Loops that lie in the open route. */
  readonly inserts: readonly Insert[]
}

/** What the worker answers; `null` to a question about a bore that it was not given, or no longer has. */
export interface BoreWork {
  /** Takes a bore, which questions then name by its key: a measured one is too large to send with every loop. */
  keep(body: BoreBody): void
  describe(question: BoreQuestion): Promise<BoreResult<BoreAnswer> | null>
  sums(question: SumQuestion): BoreResult<SumAnswer> | null
  fit(question: FitQuestion): BoreResult<FittedBore>
}

/** How far a long piece of work has come; sent beside the answers. */
export interface BoreProgress {
  readonly boreProgress: { readonly done: number; readonly of: number }
}

/** The latest bores, and the latest bodies made of them: a loop that is edited finds its bore ready. */
const bores = new Map<string, BoreBody>()
const bodies = new Map<string, BoreResult<Body>>()
const mostKept = 6

/** Keeps a value as the newest; the oldest goes. */
function keepNewest<Value>(kept: Map<string, Value>, key: string, value: Value): void {
  kept.delete(key)
  kept.set(key, value)
  if (kept.size > mostKept) kept.delete(kept.keys().next().value ?? '')
}

/** A bore ready for loops, made once for each key; `null` for a key that is not known. */
function bodyFor(bodyKey: string, highestMode: number): BoreResult<Body> | null {
  const bore = bores.get(bodyKey)
  if (bore === undefined) return null
  const key = `${bodyKey} ${highestMode}`
  const body = bodies.get(key) ?? prepareBody(bore.sections, bore.conditions, { highestMode })
  keepNewest(bores, bodyKey, bore)
  keepNewest(bodies, key, body)
  return body
}

const work: BoreWork = {
  keep: (body) => keepNewest(bores, body.bodyKey, body),
  describe: async (question) => {
    const body = bodyFor(question.bodyKey, question.highestMode)
    if (body === null) return null
    return describeBore(question, body, (done, of) => {
      const progress: BoreProgress = { boreProgress: { done, of } }
      postMessage(progress)
    })
  },
  sums: (question) => {
    const body = bodyFor(question.bodyKey, question.highestMode)
    return body === null ? null : sumBore(question, body)
  },
  fit: ({ sections, conditions, free, targets, inserts }) =>
    fitBore(sections, conditions, free, targets, inserts),
}

expose(work)
