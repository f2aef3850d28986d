import { expose } from 'comlink'
import loadRuntime from 'highs'
import wasmUrl from 'highs/runtime?url'
import { highsProgrammer } from '#shared/solve/highsProgrammer.ts'
import type { LengthAnswer, LengthsAndErrors } from '#shared/solve/lengthAnswer.ts'
import type { LengthProblem } from '#shared/solve/lengthProblem.ts'
import { refusal } from '#shared/solve/lengthRefusal.ts'
import type { LinearProgrammer } from '#shared/solve/linearProgrammer.ts'
import { prepareProblem } from '#shared/solve/prepareProblem.ts'
import { solveLengths, solveRms } from '#shared/solve/solveLengths.ts'
import { solveSounding, soundedNow } from '#shared/solve/solveSounding.ts'
import { type TradeOff, tradeOff } from '#shared/solve/tradeOff.ts'
import type { BoreInput } from '#shared/workbook/boreInput.ts'
import { boreSounding } from '#shared/workbook/boreSounding.ts'

let loading: Promise<LinearProgrammer> | undefined

/** The linear programmer, fetched and compiled when a question first needs it. */
function programmer(): Promise<LinearProgrammer> {
  loading ??= loadRuntime({ locateFile: () => wasmUrl }).then(highsProgrammer)
  loading.catch(() => {
    loading = undefined
  })
  return loading
}

/** Lengths that suit the resonances, and what the resonances are with the lengths that stand. */
export interface SoundedAnswer {
  readonly answer: LengthAnswer
  readonly now: LengthsAndErrors | null
}

/** What the worker answers. */
export interface LengthsWork {
  solve(problem: LengthProblem): Promise<LengthAnswer>
  solveBore(problem: LengthProblem, bore: BoreInput): Promise<SoundedAnswer>
  solveEach(problems: readonly LengthProblem[]): Promise<readonly LengthAnswer[]>
  trade(problem: LengthProblem, count: number): Promise<TradeOff>
}

const work: LengthsWork = {
  solve,
  solveBore,
  solveEach: async (problems) => {
    const answers: LengthAnswer[] = []
    for (const problem of problems) answers.push(await solve(problem))
    return answers
  },
  trade: async (problem, count) => tradeOff(problem, count, await programmer()),
}

/** The mean square needs no linear programs, and so does not wait for them. */
async function solve(problem: LengthProblem): Promise<LengthAnswer> {
  if (problem.objective === 'largest') return solveLengths(problem, await programmer())
  const prepared = prepareProblem(problem)
  return 'refusals' in prepared ? { status: 'refused', refusals: prepared.refusals } : solveRms(prepared)
}

async function solveBore(problem: LengthProblem, bore: BoreInput): Promise<SoundedAnswer> {
  const sounding = boreSounding(bore, problem)
  if (!sounding.ok) {
    const { path, found, expected } = sounding.refusal
    const refusals = [refusal('notSounded', path, found, expected)]
    return { answer: { status: 'refused', refusals }, now: null }
  }
  const programs = problem.objective === 'largest' ? await programmer() : null
  return {
    answer: solveSounding(problem, sounding.value, programs),
    now: soundedNow(problem, sounding.value),
  }
}

expose(work)
