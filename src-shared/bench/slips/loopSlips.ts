import { loopForDropMm, requiredLengthMm } from '../../tubing/requiredLength.ts'
import { benchFigure, benchMm, centsText } from '../figures.ts'
import type { Finding } from '../finding.ts'
import { lengthSlips, lookFromCents, loopErrorCents, slipFromCents } from './lengthSlips.ts'

/** A plain loop as typed: the one that its valve alone switches in. */
export interface TypedLoop {
  /** Name of the field, for the finding. */
  readonly field: string
  /** How the valve is called. */
  readonly valve: string
  /** Drop of the valve alone; above 0. */
  readonly semitones: number
  /** mm of tube. */
  readonly lengthMm: number
}

/**
 * Checks typed loops against the open length and against each other: a loop more than 60 cents from its valve's
 * nominal drop, with what it may have been meant as (another valve's, a leg, another unit, a lost decimal comma), one
 * more than 20 cents off that such a meaning explains, and a loop of a smaller drop that is longer than one of a
 * greater. Nothing is changed. `openLengthMm` above 0.
 *
 * @example loopSlips(3951.6, [{ field: 'L3', valve: '3', semitones: 3, lengthMm: 374 }])[0]?.message
 */
export function loopSlips(openLengthMm: number, loops: readonly TypedLoop[]): readonly Finding[] {
  return [...loops.flatMap((loop) => nominalSlips(openLengthMm, loop, loops)), ...orderSlips(loops)]
}

function nominalSlips(openLengthMm: number, loop: TypedLoop, all: readonly TypedLoop[]): readonly Finding[] {
  const { field, lengthMm, semitones, valve } = loop
  const offCents = centsOff(openLengthMm, loop, all)
  if (offCents <= lookFromCents) return []
  const expectedMm = loopForDropMm(openLengthMm, semitones)
  if (offCents <= slipFromCents) return lengthSlips(field, lengthMm, expectedMm)
  const found = benchMm(lengthMm)
  const expected = `about ${benchMm(expectedMm)}`
  const offered = [...otherValveSlips(openLengthMm, loop, all), ...lengthSlips(field, lengthMm, expectedMm)]
  if (offered.length > 0) return offered
  const errorCents = loopErrorCents(openLengthMm, lengthMm, semitones)
  const drop = benchFigure(100 * semitones - errorCents)
  const message = `Loop of valve ${valve} is ${found}; it drops ${drop} cents where ${100 * semitones} are nominal (${centsText(errorCents)}). Expected ${expected}.`
  return [{ field, found, expected, message }]
}

/**
 * How far a loop is from its drop on the open instrument, cents, or, where another valve has the same drop, with any
 * other valve down: such a second valve is made long on purpose.
 */
function centsOff(openLengthMm: number, loop: TypedLoop, all: readonly TypedLoop[]): number {
  const others = all.filter((other) => other !== loop)
  const inCompany = others.some(({ semitones }) => semitones === loop.semitones) ? others : []
  const basesMm = [
    openLengthMm,
    ...inCompany.map(({ semitones }) => requiredLengthMm(openLengthMm, semitones)),
  ]
  return Math.min(...basesMm.map((baseMm) => Math.abs(loopErrorCents(baseMm, loop.lengthMm, loop.semitones))))
}

/** A length that suits another valve of the instrument better. */
function otherValveSlips(
  openLengthMm: number,
  loop: TypedLoop,
  all: readonly TypedLoop[],
): readonly Finding[] {
  const { field, lengthMm, valve } = loop
  const others = all.filter(
    (other) =>
      other.semitones !== loop.semitones &&
      Math.abs(loopErrorCents(openLengthMm, lengthMm, other.semitones)) <= slipFromCents / 2,
  )
  const expectedMm = loopForDropMm(openLengthMm, loop.semitones)
  return others.map((other) => ({
    field,
    found: benchMm(lengthMm),
    expected: `about ${benchMm(expectedMm)}`,
    message: `Found ${benchMm(lengthMm)} for valve ${valve}, expected about ${benchMm(expectedMm)}. Is it the loop of valve ${other.valve}?`,
  }))
}

/** Loops whose lengths run against their drops: a second loop longer than the first, say. */
function orderSlips(loops: readonly TypedLoop[]): readonly Finding[] {
  return loops.flatMap((loop) => {
    const passed = loops.find((other) => other.semitones > loop.semitones && other.lengthMm < loop.lengthMm)
    if (passed === undefined) return []
    const message = `Loop of valve ${loop.valve} (${benchMm(loop.lengthMm)}) is longer than that of valve ${passed.valve} (${benchMm(passed.lengthMm)}), though it drops less. Are the two exchanged?`
    const expected = `shorter than ${benchMm(passed.lengthMm)}`
    return [{ field: loop.field, found: benchMm(loop.lengthMm), expected, message }]
  })
}
