import { speedOfSound } from '../air/speedOfSound.ts'
import { openLengthMm } from '../tubing/openRoute.ts'
import { type Failure, failure, foundText, pathText } from './failure.ts'
import { workbookSchema } from './schema.ts'
import type { Design, Workbook } from './workbook.ts'

/** Loops in the open route may take up this share of the open length; the rest is mouthpiece, body and bell. */
const mostOfOpenRoute = 0.9

/**
 * Checks a value against every rule of the design file, version 1.
 *
 * @returns the first rule that is broken, with path, found and expected; `null` when the value is a workbook
 */
export function brokenRule(value: unknown): Failure | null {
  const checked = workbookSchema.safeParse(value)
  if (!checked.success) return failureOfIssue(checked.error.issues[0], value)
  return brokenDesignRule(value as Workbook)
}

interface Issue {
  readonly path: readonly PropertyKey[]
  readonly message: string
  readonly code?: string
  readonly issues?: readonly { readonly message: string }[]
}

function failureOfIssue(issue: Issue | undefined, value: unknown): Failure {
  if (issue === undefined) return failure('brokenRule', '', foundText(value), 'a workbook')
  const isKey = issue.code === 'invalid_key'
  const expected = isKey ? (issue.issues?.[0]?.message ?? issue.message) : issue.message
  const found = isKey ? JSON.stringify(String(issue.path.at(-1))) : foundText(valueAt(value, issue.path))
  return failure('brokenRule', pathText(issue.path), found, expected)
}

function valueAt(value: unknown, path: readonly PropertyKey[]): unknown {
  return path.reduce<unknown>((at, part) => (at as Record<PropertyKey, unknown> | undefined)?.[part], value)
}

function brokenDesignRule(workbook: Workbook): Failure | null {
  const speed = speedOfSound(workbook.air)
  const ids = repeatedId(workbook.designs, 'designs')
  if (ids !== null) return ids
  for (const [i, design] of workbook.designs.entries()) {
    const at = `designs[${i}]`
    const broken =
      repeatedId(design.valves, `${at}.valves`) ??
      repeatedId(design.loops, `${at}.loops`) ??
      unknownValve(design, at) ??
      overfullOpenRoute(design, at, openLengthMm(speed, design.instrument.fundamentalHz))
    if (broken !== null) return broken
  }
  return null
}

function repeatedId(items: readonly { readonly id: string }[], at: string): Failure | null {
  const seen = new Set<string>()
  for (const [i, { id }] of items.entries()) {
    if (seen.has(id))
      return failure('brokenRule', `${at}[${i}].id`, `${foundText(id)} again`, 'an id used once')
    seen.add(id)
  }
  return null
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
