import { lookFromCents, nearShare, slipFromCents } from '../../bench/slips/lengthSlips.ts'
import {
  dropOfLoopCents,
  loopForDropMm,
  requiredLengthMm,
  routeErrorCents,
} from '../../tubing/requiredLength.ts'
import type { Loop } from '../../valves/loop.ts'
import type { Valve } from '../../valves/valve.ts'
import type { Design } from '../workbook.ts'
import { likelySlip } from './likelySlip.ts'
import { type MadeFor, madeForEach } from './madeFor.ts'
import type { Warning } from './warning.ts'

interface SingleLoop {
  readonly index: number
  readonly loop: Loop
  readonly valve: Valve
}

/** A length that a loop may have been made for, in the route that it is to complete. */
interface Aim {
  readonly lengthMm: number
  readonly requiredMm: number
  readonly counts: 1 | -1
}

/**
 * Loops that do not fit their valves: one far from what its fingering needs, one not so far but short that a slip
 * explains (a small loop is made up to twice as long on purpose, and never half as short), and one longer than the loop
 * of a bigger drop. The last is only said of loops that a single valve switches in.
 */
export function loopWarnings(design: Design, openMm: number, at: string): readonly Warning[] {
  const made = madeForEach(design, openMm)
  const far = design.loops.flatMap((loop, index) => {
    const madeFor = made[index] ?? null
    const path = `${at}.loops[${index}].lengthMm`
    return madeFor === null ? [] : farFromDrop(design, loop, madeFor, openMm, path)
  })
  return [...far, ...outOfOrder(singleLoops(design), at)]
}

function singleLoops(design: Design): readonly SingleLoop[] {
  return design.loops.flatMap((loop, index) => {
    const valve = design.valves.find(({ id }) => id === loop.pressed[0])
    const alone = loop.pressed.length === 1 && (loop.released ?? []).length === 0
    return alone && valve !== undefined && valve.semitones > 0 && isOnlyLoopOf(design, valve)
      ? [{ index, loop, valve }]
      : []
  })
}

function isOnlyLoopOf(design: Design, valve: Valve): boolean {
  const own = design.loops.filter(({ pressed }) => pressed.length === 1 && pressed[0] === valve.id)
  const takenOut = design.loops.some(({ released }) => released?.includes(valve.id))
  return own.length === 1 && !takenOut
}

function farFromDrop(
  design: Design,
  loop: Loop,
  madeFor: MadeFor,
  openMm: number,
  path: string,
): readonly Warning[] {
  if (madeFor.exactMm <= 0) return wrongWay(loop, madeFor, path)
  const aims = aimsOf(design, madeFor, openMm)
  const offBy = (lengthMm: number): number => Math.min(...aims.map((aim) => centsOff(aim, lengthMm)))
  const offCents = offBy(loop.lengthMm)
  const isFar = offCents > slipFromCents
  const isShort = offCents > lookFromCents && loop.lengthMm < madeFor.exactMm
  if (!isFar && !isShort) return []
  const shareOff = (lengthMm: number): number =>
    Math.min(...aims.map((aim) => Math.abs(lengthMm / aim.lengthMm - 1)))
  const slip = isFar
    ? likelySlip(loop.lengthMm, offBy, slipFromCents)
    : likelySlip(loop.lengthMm, shareOff, nearShare)
  if (!isFar && slip === null) return []
  return [warning(path, foundWords(loop, madeFor, openMm), expectedWords(madeFor), slip)]
}

/** A loop that adds tube where its fingering wants less, or takes it out where it wants more. */
function wrongWay({ lengthMm }: Loop, { fingering, counts }: MadeFor, path: string): readonly Warning[] {
  if (lengthMm === 0) return []
  const { name, semitones } = fingering
  const found = `${lengthMm.toFixed(1)} mm of tube that ${name} switches ${counts === 1 ? 'in' : 'out'}`
  const expected =
    semitones < 0
      ? `no more tube than open for a rise of ${semitoneWords(semitones)}`
      : `more tube than open for a drop of ${semitoneWords(semitones)}`
  const when = semitones < 0 ? 'up' : 'down'
  return [warning(path, found, expected, `should the loop be in the route while the valve is ${when}?`)]
}

/**
 * What a loop may have been made for: its fingering, with the other loops exact or as they stand, and, for a valve
 * whose drop another valve has too, the company of any other valve; such a second valve is made long on purpose.
 */
function aimsOf(design: Design, madeFor: MadeFor, openMm: number): readonly Aim[] {
  const { counts, requiredMm, exactMm, amongOthersMm, fingering, isAlone } = madeFor
  const own = [exactMm, amongOthersMm].map((lengthMm) => ({ lengthMm, requiredMm, counts }))
  const [id] = fingering.pressed
  const others = design.valves.filter((valve) => valve.id !== id)
  if (!isAlone || !others.some(({ semitones }) => semitones === fingering.semitones)) return own
  const inCompany = others.map(({ semitones }): Aim => {
    const companyMm = requiredLengthMm(openMm, semitones)
    const lengthMm = loopForDropMm(companyMm, fingering.semitones)
    return { lengthMm, requiredMm: companyMm + lengthMm, counts: 1 }
  })
  return [...own, ...inCompany]
}

/** How far a length puts the route of its aim off, cents; a route that it uses up is as far off as can be. */
function centsOff({ lengthMm, requiredMm, counts }: Aim, typedMm: number): number {
  const routeMm = requiredMm + counts * (typedMm - lengthMm)
  return routeMm > 0 ? Math.abs(routeErrorCents(requiredMm, routeMm)) : Number.POSITIVE_INFINITY
}

function foundWords({ id, name, lengthMm }: Loop, { isAlone }: MadeFor, openMm: number): string {
  const tube = `${lengthMm.toFixed(1)} mm`
  return isAlone
    ? `${tube}, a drop of ${dropOfLoopCents(openMm, lengthMm).toFixed(0)} cents`
    : `${tube} for ${name ?? id}`
}

function expectedWords({ fingering, exactMm, isAlone }: MadeFor): string {
  const { name, semitones } = fingering
  const tube = `${exactMm.toFixed(1)} mm`
  if (isAlone) return `${100 * semitones} cents, ${tube}, for valve ${name}`
  const change = semitones < 0 ? 'rise' : 'drop'
  return `${tube}, for ${name} to ${change} ${Math.abs(100 * semitones)} cents`
}

function outOfOrder(singles: readonly SingleLoop[], at: string): readonly Warning[] {
  return singles.flatMap(({ index, loop, valve }) => {
    const bigger = singles.find(
      (other) => other.valve.semitones > valve.semitones && other.loop.lengthMm < loop.lengthMm,
    )
    if (bigger === undefined) return []
    const found = `${loop.lengthMm.toFixed(1)} mm for ${drop(valve)}`
    const expected = `less than the ${bigger.loop.lengthMm.toFixed(1)} mm of valve ${bigger.valve.id}, ${drop(bigger.valve)}`
    return [warning(`${at}.loops[${index}].lengthMm`, found, expected, 'are the two exchanged?')]
  })
}

function drop({ semitones }: Valve): string {
  return `a drop of ${semitoneWords(semitones)}`
}

function semitoneWords(semitones: number): string {
  const size = Math.abs(semitones)
  return size === 1 ? '1 semitone' : `${size} semitones`
}

function warning(path: string, found: string, expected: string, question: string | null): Warning {
  const message = `Found ${found}; expected ${expected}${question === null ? '.' : `: ${question}`}`
  return { path, found, expected, message }
}
