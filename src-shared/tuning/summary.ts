import type { Routing } from '../valves/route.ts'
import type { Combination } from './combinations.ts'
import { type Note, playedCandidate } from './notes.ts'

/** Root mean square and largest of some errors, with where the largest is. */
export interface Spread<At> {
  readonly rmsCents: number
  /** The error farthest from zero, with its sign: sharp is positive. The `lengths` table gives a size alone. */
  readonly largestCents: number
  /** Where it is: a fingering's name or a note's midi number; `null` when there are no errors. */
  readonly largestAt: At | null
  readonly count: number
}

/** The figures by which designs are compared. */
export interface Summary {
  /** Over the fingerings in use: the usual one for each nominal drop, open included. */
  readonly byFingering: Spread<string>
  /** Over the notes of the compass, each with its chosen, usual or nearest candidate. */
  readonly byNote: Spread<number>
  /** Body and every loop, mm of tube. */
  readonly tubeMm: number
  /** Tube that no gate switches, mm. */
  readonly bodyMm: number
  /** Tube of all loops together, mm. */
  readonly loopsMm: number
  readonly loops: number
  /** Most loops in the route of any fingering in use. */
  readonly mostLoopsInRoute: number
  /** Loops in the route by fingering name, over the fingerings in use. */
  readonly loopsInRoute: Readonly<Record<string, number>>
}

/**
 * Root mean square and largest of errors in cents; zeros when there are none.
 *
 * @example spreadOf([{ at: '1-3', errorCents: 30 }]).rmsCents // 30
 */
export function spreadOf<At>(
  errors: readonly { readonly at: At; readonly errorCents: number }[],
): Spread<At> {
  let squares = 0
  let largestCents = 0
  let largestAt: At | null = null
  for (const { at, errorCents } of errors) {
    squares += errorCents * errorCents
    if (largestAt === null || Math.abs(errorCents) > Math.abs(largestCents)) {
      largestCents = errorCents
      largestAt = at
    }
  }
  const count = errors.length
  return { rmsCents: count === 0 ? 0 : Math.sqrt(squares / count), largestCents, largestAt, count }
}

/** Errors over the notes of the compass, each with its chosen, usual or nearest candidate. */
export function spreadOfNotes(notes: readonly Note[]): Spread<number> {
  return spreadOf(
    notes.flatMap((note) => {
      const played = playedCandidate(note)
      return played === null ? [] : [{ at: note.midi, errorCents: played.errorCents }]
    }),
  )
}

/**
 * Compares a design with others: errors over the fingerings in use, tube and loops.
 *
 * @param rows rows of `combinationTable` for the fingerings in use
 */
export function summarise(system: Routing, rows: readonly Combination[]): Omit<Summary, 'byNote'> {
  const loopsMm = system.loops.reduce((sum, loop) => sum + loop.lengthMm, 0)
  return {
    byFingering: spreadOf(rows.map(({ fingering, errorCents }) => ({ at: fingering, errorCents }))),
    tubeMm: system.bodyMm + loopsMm,
    bodyMm: system.bodyMm,
    loopsMm,
    loops: system.loops.length,
    mostLoopsInRoute: rows.reduce((most, { loops }) => Math.max(most, loops.length), 0),
    loopsInRoute: Object.fromEntries(rows.map(({ fingering, loops }) => [fingering, loops.length])),
  }
}
