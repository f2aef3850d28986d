import type { LengthsAndErrors, NoteOutcome } from '#shared/solve/lengthAnswer.ts'
import type { BoreInput } from '#shared/workbook/boreInput.ts'
import type { DerivedDesign } from '../state/derived.ts'
import { aimWords } from '../words/lengthsAim.ts'
import { leftByFingering, presentRoutes, proposedRoutes, type Reached, reachedBy } from './played.ts'
import type { Proposal } from './useProposal.ts'
import type { Question } from './useQuestion.ts'

/** Errors of a design as it stands, by whatever is aimed at. */
export interface Present {
  /** By fingering; none while the resonances are worked out. */
  readonly cents: ReadonlyMap<string, number>
  readonly reached: Reached | null
}

/**
 * Errors of a design as it stands.
 *
 * @param heard what its resonances are, when they are aimed at and known
 */
export function presentOf(
  derived: DerivedDesign,
  question: Question | null,
  heard: LengthsAndErrors | null,
): Present {
  if (question !== null && question.bore !== null)
    return heard === null
      ? { cents: new Map(), reached: null }
      : { cents: centsOf(heard), reached: reachedIn(heard) }
  const cents = leftByFingering(presentRoutes(derived), question?.counted ?? [])
  return { cents, reached: question === null ? null : reachedBy(question.problem, cents) }
}

/** Errors of a proposal by fingering. */
export function proposedCents({ question, lengths }: Proposal): ReadonlyMap<string, number> {
  if (question.bore !== null) return centsOf(lengths)
  return leftByFingering(proposedRoutes(question.problem, lengths), question.counted)
}

function centsOf({ rows }: LengthsAndErrors): ReadonlyMap<string, number> {
  return new Map(rows.map(({ name, leftCents }) => [name, leftCents]))
}

function reachedIn({ rows, rmsCents }: LengthsAndErrors): Reached {
  const counted = rows.filter(({ weight }) => weight > 0)
  const all = counted.flatMap(({ name, notes = [] }) => notes.map((note) => ({ name, note })))
  const size = ({ note }: { readonly note: NoteOutcome }): number => Math.abs(note.leftCents)
  const largest = all.reduce<(typeof all)[number] | null>(
    (most, each) => (most === null || size(each) > size(most) ? each : most),
    null,
  )
  return {
    rmsCents,
    largestCents: largest?.note.leftCents ?? 0,
    largestAt: largest?.name ?? null,
    largestNote: largest?.note.name ?? null,
  }
}

/** The modes that a bore aims at, as a sentence names them: `2 to 8`, or `2, 4, 6`. */
export function modesAimedAt({ targets }: BoreInput): string {
  const modes = targets.filter(({ weight = 1 }) => weight > 0).map(({ mode }) => mode)
  const sorted = modes.toSorted((a, b) => a - b)
  const evenly = sorted.every((mode, i) => mode === sorted[0]! + i)
  return evenly && sorted.length > 2 ? aimWords.modesFromTo(sorted[0]!, sorted.at(-1)!) : sorted.join(', ')
}
