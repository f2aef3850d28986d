import type { Remote } from 'comlink'
import { useMemo } from 'react'
import type { LengthAnswer, LengthSolution, LengthsAndErrors } from '#shared/solve/lengthAnswer.ts'
import type { TradeOff } from '#shared/solve/tradeOff.ts'
import type { DerivedDesign } from '../state/derived.ts'
import { useLengths } from '../state/lengthsStore.ts'
import { proposalWords } from '../words/lengths.ts'
import type { LengthsWork, SoundedAnswer } from '../worker/lengthsWorker.ts'
import { useSettled } from '../worker/useSettled.ts'
import { useWork } from '../worker/useWork.ts'
import type { Worked } from '../worker/workDesk.ts'
import { type Present, presentOf } from './present.ts'
import { answerWords, refusalWords } from './refusalWords.ts'
import { type Question, useQuestions } from './useQuestion.ts'

/** What stands on the page: the question, what is proposed, and what there is to say when nothing is. */
export interface Proposing {
  readonly question: Question | null
  readonly present: Present
  /** The resonances are being worked out, and there is nothing of them to show yet. */
  readonly waiting: boolean
  /** Lengths on show: the objective's own, or those walked to on the trade curve. `null` while there are none. */
  readonly proposal: Proposal | null
  /** Plain sentences about why there is no proposal, or what to know about it. */
  readonly words: readonly string[]
  /** The curve from least rms to least largest error: the one before the latest while that is worked out. */
  readonly trade: readonly LengthsAndErrors[]
  readonly tradeIsCurrent: boolean
}

export interface Proposal {
  /** The question it answers, which may be the one before the latest. */
  readonly question: Question
  readonly lengths: LengthsAndErrors
  /** Bounds that hold and what they are worth; known only at the objective's own end. */
  readonly solution: LengthSolution | null
}

const noTrade = { trade: [], tradeIsCurrent: false }

/** Points of the trade curve. */
const tradePoints = 9
/** The curve is found when choosing pauses, so that no proposal waits for the curve of the one before, ms. */
const tradePauseMs = 200

const solve = async (worker: Remote<LengthsWork>, { problem, bore }: Question): Promise<SoundedAnswer> =>
  bore === null ? { answer: await worker.solve(problem), now: null } : worker.solveBore(problem, bore)
const trade = async (worker: Remote<LengthsWork>, { problem }: Question): Promise<TradeOff> =>
  worker.trade(problem, tradePoints)

/** Keeps a proposal for a design, found anew with every choice. */
export function useProposal(derived: DerivedDesign): Proposing {
  const asked = useQuestions(useMemo(() => [derived], [derived]))[0]!
  const question = 'refusals' in asked ? null : asked
  const walkedTo = useLengths((state) => state.walkedTo)
  const left = useLengths((state) => state.left)
  const worked = useWork('proposal', question, solve)
  const solved = worked !== null && question !== null && isOfKind(worked.question, question) ? worked : null
  const settled = useSettled(question, tradePauseMs)
  // Between two sets of lengths that suit the resonances there is no curve.
  const traded = useWork('trade', settled?.bore === null ? settled : null, trade)
  const heard = solved === null || 'failure' in solved ? null : solved.answer.now
  const present = useMemo(() => presentOf(derived, question, heard), [derived, question, heard])
  const isCurrent = traded?.question === question
  const points = question?.bore === null ? pointsOf(traded) : []
  const tradeNow = { trade: points, tradeIsCurrent: isCurrent }
  const base = { question, present, waiting: false, proposal: null }
  if (question === null) {
    const refusals = 'refusals' in asked ? asked.refusals : []
    return { ...base, words: refusalWords(refusals, derived), ...noTrade }
  }
  if (solved === null) return { ...base, waiting: question.bore !== null, words: [], ...tradeNow }
  if ('failure' in solved) {
    return { ...base, words: [proposalWords.solverFailed(solved.failure)], ...noTrade }
  }
  const words = answerWords(solved.answer.answer, derived)
  const solution = solutionOf(solved.answer.answer)
  const walked = walkedTo === null || !isCurrent ? undefined : points[walkedTo]
  const own = solution === null ? null : { question: solved.question, lengths: solution, solution }
  const shown = walked === undefined ? own : { question, lengths: walked, solution: null }
  return { ...base, proposal: left ? null : shown, words, ...tradeNow }
}

/** Whether an earlier question may stand in for a later one: it is of the same design and aims at the same. */
function isOfKind(earlier: Question, later: Question): boolean {
  const sameDesign = earlier.derived.design.id === later.derived.design.id
  return sameDesign && (earlier.bore === null) === (later.bore === null)
}

function solutionOf(answer: LengthAnswer): LengthSolution | null {
  return answer.status === 'converged' || answer.status === 'stopped' ? answer : null
}

function pointsOf(traded: Worked<Question, TradeOff> | null): readonly LengthsAndErrors[] {
  if (traded === null || 'failure' in traded) return []
  return 'points' in traded.answer ? traded.answer.points : []
}
