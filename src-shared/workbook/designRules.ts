import { fingeringsOf } from '../valves/fingerings.ts'
import { brokenBoreRule } from './boreRules.ts'
import { type Failure, failure, foundText } from './failure.ts'
import type { Design } from './workbook.ts'

/** Loops in the open route may take up this share of the open length; the rest is mouthpiece, body and bell. */
const mostOfOpenRoute = 0.9

/**
 * Checks the rules of a design that span several of its values; its shape has been checked already.
 *
 * @param at the design's path, for the refusal
 * @param openMm its effective open length where the main slide is farthest in, mm
 * @returns the first rule that is broken; `null` when none is
 */
export function brokenDesignRule(design: Design, at: string, openMm: number): Failure | null {
  return (
    keyNotNumbered(design, at) ??
    repeatedId(design.valves, `${at}.valves`, 'a valve name used once') ??
    repeatedId(design.loops, `${at}.loops`) ??
    unknownValve(design, at) ??
    repeatedFingering(design, at) ??
    overfullOpenRoute(design, at, openMm) ??
    brokenBoreRule(design, at)
  )
}

/** The first id in a list that an earlier item has already. */
export function repeatedId(
  items: readonly { readonly id: string }[],
  at: string,
  expected = 'an id used once',
): Failure | null {
  const seen = new Set<string>()
  for (const [i, { id }] of items.entries()) {
    if (seen.has(id)) return failure('brokenRule', `${at}[${i}].id`, `${foundText(id)} again`, expected)
    seen.add(id)
  }
  return null
}

/** The schema's records pass over a key named `__proto__`, whatever it holds. */
function keyNotNumbered(design: Design, at: string): Failure | null {
  const records = [
    [`${at}.chosen.__proto__`, design.chosen, 'a midi note number from 0 to 127'],
    [
      `${at}.instrument.harmonicOffsetsCents.__proto__`,
      design.instrument.harmonicOffsetsCents,
      'a harmonic number from 1 to 99',
    ],
  ] as const
  const broken = records.find(([, record]) => record !== undefined && Object.hasOwn(record, '__proto__'))
  return broken === undefined ? null : failure('brokenRule', broken[0], '"__proto__"', broken[2])
}

function unknownValve(design: Design, at: string): Failure | null {
  const known = new Set(design.valves.map((valve) => valve.id))
  const expected =
    known.size === 0 ? 'no valve names: the design has no valves' : `one of ${[...known].join(', ')}`
  for (const [path, ids] of valveMentions(design, at)) {
    for (const [i, id] of ids.entries()) {
      if (!known.has(id)) return failure('brokenRule', `${path}[${i}]`, foundText(id), expected)
      if (ids.indexOf(id) !== i)
        return failure('brokenRule', `${path}[${i}]`, `${foundText(id)} again`, 'each once')
    }
  }
  for (const [i, loop] of design.loops.entries()) {
    const both = loop.pressed.findIndex((id) => loop.released?.includes(id))
    if (both >= 0) {
      const path = `${at}.loops[${i}].pressed[${both}]`
      return failure(
        'brokenRule',
        path,
        `${foundText(loop.pressed[both])} in released too`,
        'down or up, not both',
      )
    }
  }
  return null
}

/** Every list of valve names in a design, with its path. */
function* valveMentions(design: Design, at: string): Generator<readonly [string, readonly string[]]> {
  for (const [i, loop] of design.loops.entries()) {
    yield [`${at}.loops[${i}].pressed`, loop.pressed]
    if (loop.released !== undefined) yield [`${at}.loops[${i}].released`, loop.released]
  }
  for (const [midi, { pressed }] of Object.entries(design.chosen ?? {}))
    yield [`${at}.chosen[${JSON.stringify(midi)}].pressed`, pressed]
  if (design.fingerings === undefined || design.fingerings === 'all') return
  for (const [i, { pressed }] of design.fingerings.entries())
    yield [`${at}.fingerings[${i}].pressed`, pressed]
}

/** Errors stand under the names of their fingerings, so each has one, whatever the order of its valves. */
function repeatedFingering({ valves, fingerings = 'all' }: Design, at: string): Failure | null {
  if (fingerings === 'all') return null
  const seen = new Set<number>()
  for (const [i, { name, down }] of fingeringsOf(valves, fingerings).entries()) {
    if (seen.has(down)) {
      const path = `${at}.fingerings[${i}].pressed`
      return failure('brokenRule', path, `${foundText(name)} again`, 'each fingering once')
    }
    seen.add(down)
  }
  return null
}

function overfullOpenRoute(design: Design, at: string, openMm: number): Failure | null {
  const inOpenMm = design.loops.reduce(
    (sum, loop) => (loop.pressed.length === 0 ? sum + loop.lengthMm : sum),
    0,
  )
  if (inOpenMm <= mostOfOpenRoute * openMm) return null
  const most = Math.floor(mostOfOpenRoute * openMm)
  const found = `${inOpenMm.toFixed(1)} mm of loops in the open route`
  return failure(
    'brokenRule',
    `${at}.loops`,
    found,
    `at most ${most} mm of the open length ${openMm.toFixed(1)} mm`,
  )
}
