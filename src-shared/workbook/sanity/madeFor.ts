import { requiredLengthMm } from '../../tubing/requiredLength.ts'
import { fingeringsOf, type NamedFingering, namedFingering } from '../../valves/fingerings.ts'
import { type GateBits, gateBits, liesInRoute } from '../../valves/gate.ts'
import type { Loop } from '../../valves/loop.ts'
import type { Design } from '../workbook.ts'

/** What a loop is made for. */
export interface MadeFor {
  /** The fingering that settles the loop's length. */
  readonly fingering: NamedFingering
  /** Route that the fingering needs, mm. */
  readonly requiredMm: number
  /** 1 when the fingering switches the loop in, −1 when it switches it out. */
  readonly counts: 1 | -1
  /** Length that makes the fingering exact when every other loop is exact, mm of tube. */
  readonly exactMm: number
  /** The same among the other loops as they stand. */
  readonly amongOthersMm: number
  /** Whether the fingering is one valve that switches in this loop and nothing else. */
  readonly isAlone: boolean
}

interface Question {
  readonly fingering: NamedFingering
  /** Places of the loops that the fingering switches, those that it switches out under `gone`. */
  readonly added: readonly number[]
  readonly gone: readonly number[]
}

/**
 * What each loop of a design is made for, in the order of the loops: its gate's own fingering, and the length that
 * puts that in tune. Fingerings are gone through from the fewest valves up, and one that switches a single loop not yet
 * known settles it: a valve's own loop first, what compensates it after. `null` for a loop that none settles, as of two
 * that always go together. A drop that the design lists counts before the sum of the valves'.
 *
 * @param openMm effective length of the open route in tune, mm
 * @example madeForEach(plain, 2000)[1]?.exactMm // 118.9… for the semitone
 */
export function madeForEach(design: Design, openMm: number): readonly (MadeFor | null)[] {
  const { loops } = design
  const found: (MadeFor | null)[] = loops.map(() => null)
  let left = questionsOf(design)
  let before: number
  do {
    before = left.length
    left = left.filter((question) => {
      const unknown = [...question.added, ...question.gone].filter((place) => found[place] === null)
      if (unknown.length === 1) found[unknown[0]!] = answerTo(question, unknown[0]!, loops, found, openMm)
      return unknown.length > 1
    })
  } while (left.length < before)
  return found
}

function answerTo(
  { fingering, added, gone }: Question,
  place: number,
  loops: readonly Loop[],
  found: readonly (MadeFor | null)[],
  openMm: number,
): MadeFor {
  const requiredMm = requiredLengthMm(openMm, fingering.semitones)
  const counts = added.includes(place) ? 1 : -1
  const lengthAmong = (lengthOf: (other: number) => number): number => {
    const sum = (places: readonly number[]): number =>
      places.reduce((mm, other) => (other === place ? mm : mm + lengthOf(other)), 0)
    return counts * (requiredMm - openMm - sum(added) + sum(gone))
  }
  return {
    fingering,
    requiredMm,
    counts,
    exactMm: lengthAmong((other) => found[other]!.exactMm),
    amongOthersMm: lengthAmong((other) => loops[other]!.lengthMm),
    isAlone: fingering.pressed.length === 1 && added.length === 1 && gone.length === 0,
  }
}

/** The fingerings that loops may be made for, fewest valves first, each with the loops that it switches. */
function questionsOf({ valves, loops, fingerings }: Design): readonly Question[] {
  const valveIds = valves.map(({ id }) => id)
  const gates = loops.map((loop) => gateBits(valveIds, loop))
  const given = fingerings === undefined || fingerings === 'all' ? [] : fingerings
  const listed = new Map(fingeringsOf(valves, given).map((each) => [each.down, each]))
  const named = ownFingerings(gates).map((down) => listed.get(down) ?? namedFingering(valves, down))
  const inOrder = named.sort((a, b) => a.pressed.length - b.pressed.length || a.down - b.down)
  const switched = (from: number, to: number): readonly number[] =>
    gates.flatMap((gate, i) => (liesInRoute(gate, to) && !liesInRoute(gate, from) ? [i] : []))
  return inOrder.map((fingering) => ({
    fingering,
    added: switched(0, fingering.down),
    gone: switched(fingering.down, 0),
  }))
}

/**
 * The gates' own fingerings, as sets of bits: the valves that a loop needs down, and these with one more that takes out
 * another loop of the same valves; for a loop of the open route each valve that takes it out.
 */
function ownFingerings(gates: readonly GateBits[]): readonly number[] {
  const takenOutBy = new Map<number, number>()
  for (const { pressed, released } of gates) {
    takenOutBy.set(pressed, (takenOutBy.get(pressed) ?? 0) | released)
  }
  const all = [...takenOutBy].flatMap(([pressed, released]) => [
    ...(pressed === 0 ? [] : [pressed]),
    ...bitsIn(released).map((bit) => pressed | bit),
  ])
  return [...new Set(all)]
}

function bitsIn(bits: number): readonly number[] {
  const found: number[] = []
  for (let bit = 1; bit <= bits; bit <<= 1) if ((bits & bit) !== 0) found.push(bit)
  return found
}
