import { lookFromCents, nearShare, slipFromCents } from '../../bench/slips/lengthSlips.ts'
import { dropOfLoopCents, loopForDropMm, requiredLengthMm } from '../../tubing/requiredLength.ts'
import type { Loop } from '../../valves/loop.ts'
import type { Valve } from '../../valves/valve.ts'
import type { Design } from '../workbook.ts'
import { likelySlip } from './likelySlip.ts'
import type { Warning } from './warning.ts'

interface SingleLoop {
  readonly index: number
  readonly loop: Loop
  readonly valve: Valve
}

/**
 * Loops that do not fit their valves: one far from its valve's nominal drop, one nearer that a slip explains, and one
 * longer than the loop of a bigger drop. Only loops that a single valve switches in are looked at.
 */
export function loopWarnings(design: Design, openMm: number, at: string): readonly Warning[] {
  const singles = singleLoops(design)
  return [...singles.flatMap((single) => farFromDrop(design, single, openMm, at)), ...outOfOrder(singles, at)]
}

function singleLoops(design: Design): readonly SingleLoop[] {
  return design.loops.flatMap((loop, index) => {
    const valve = design.valves.find(({ id }) => id === loop.pressed[0])
    const alone = loop.pressed.length === 1 && (loop.released ?? []).length === 0
    return alone && valve !== undefined && isOnlyLoopOf(design, valve) ? [{ index, loop, valve }] : []
  })
}

function isOnlyLoopOf(design: Design, valve: Valve): boolean {
  const own = design.loops.filter(({ pressed }) => pressed.length === 1 && pressed[0] === valve.id)
  const takenOut = design.loops.some(({ released }) => released?.includes(valve.id))
  return own.length === 1 && !takenOut
}

function farFromDrop(
  design: Design,
  { index, loop, valve }: SingleLoop,
  openMm: number,
  at: string,
): readonly Warning[] {
  const bases = companyLengthsMm(design, valve, openMm)
  const offBy = (lengthMm: number): number =>
    Math.min(...bases.map((baseMm) => Math.abs(dropOfLoopCents(baseMm, lengthMm) - 100 * valve.semitones)))
  const shareOff = (lengthMm: number): number =>
    Math.min(...bases.map((baseMm) => Math.abs(lengthMm / loopForDropMm(baseMm, valve.semitones) - 1)))
  const offCents = offBy(loop.lengthMm)
  if (offCents <= lookFromCents) return []
  const isFar = offCents > slipFromCents
  const slip = isFar
    ? likelySlip(loop.lengthMm, offBy, slipFromCents)
    : likelySlip(loop.lengthMm, shareOff, nearShare)
  if (!isFar && slip === null) return []
  const dropCents = dropOfLoopCents(openMm, loop.lengthMm)
  const found = `${loop.lengthMm.toFixed(1)} mm, a drop of ${dropCents.toFixed(0)} cents`
  const expected = `${100 * valve.semitones} cents, ${(requiredLengthMm(openMm, valve.semitones) - openMm).toFixed(1)} mm, for valve ${valve.id}`
  return [warning(`${at}.loops[${index}].lengthMm`, found, expected, slip)]
}

/**
 * The lengths a loop may have been made for: the open route, and, for a valve whose drop another valve has too,
 * the open route with any other valve down; such a second valve is made long on purpose.
 */
function companyLengthsMm(design: Design, valve: Valve, openMm: number): readonly number[] {
  const others = design.valves.filter(({ id }) => id !== valve.id)
  if (!others.some(({ semitones }) => semitones === valve.semitones)) return [openMm]
  return [openMm, ...others.map(({ semitones }) => requiredLengthMm(openMm, semitones))]
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
  return `a drop of ${semitones} semitone${semitones === 1 ? '' : 's'}`
}

function warning(path: string, found: string, expected: string, question: string | null): Warning {
  const message = `Found ${found}; expected ${expected}${question === null ? '.' : `: ${question}`}`
  return { path, found, expected, message }
}
