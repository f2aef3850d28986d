import { expose } from 'comlink'
import { type Body, prepareBody } from '#shared/bore/body.ts'
import { type FittedBore, type FreeDimension, fitBore, type ModeTarget } from '#shared/bore/fitBore.ts'
import type { BoreResult } from '#shared/bore/refusal.ts'
import type { BoreConditions, BoreSection, Insert } from '#shared/bore/section.ts'
import { type BoreAnswer, type BoreQuestion, describeBore } from './boreAnswer.ts'
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

/** What the worker answers. */
export interface BoreWork {
  describe(question: BoreQuestion): Promise<BoreResult<BoreAnswer>>
  sums(question: SumQuestion): BoreResult<SumAnswer>
  fit(question: FitQuestion): BoreResult<FittedBore>
}

/** How far a long piece of work has come; sent beside the answers. */
export interface BoreProgress {
  readonly boreProgress: { readonly done: number; readonly of: number }
}

/** The latest bodies: a loop that is edited finds its bore ready. */
const kept = new Map<string, BoreResult<Body>>()
const mostKept = 6

/** A bore ready for loops, made once for each key. */
function bodyFor(
  { bodyKey, sections, conditions }: Pick<BoreQuestion, 'bodyKey' | 'sections' | 'conditions'>,
  highestMode: number,
): BoreResult<Body> {
  const key = `${bodyKey} ${highestMode}`
  const known = kept.get(key)
  const body = known ?? prepareBody(sections, conditions, { highestMode })
  kept.delete(key)
  kept.set(key, body)
  if (kept.size > mostKept) kept.delete(kept.keys().next().value ?? '')
  return body
}

const work: BoreWork = {
  describe: (question) => {
    const tell = (done: number, of: number): void => {
      const progress: BoreProgress = { boreProgress: { done, of } }
      postMessage(progress)
    }
    return describeBore(question, bodyFor(question, question.highestMode), tell)
  },
  sums: (question) => sumBore(question, bodyFor(question, question.highestMode)),
  fit: ({ sections, conditions, free, targets, inserts }) =>
    fitBore(sections, conditions, free, targets, inserts),
}

expose(work)
