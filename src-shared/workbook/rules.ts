import type { core } from 'zod'
import { setMainSlide } from '../tuning/mainSlide.ts'
import type { Bench } from './bench.ts'
import { brokenDesignRule, repeatedId } from './designRules.ts'
import { type Failure, failure, foundText, pathText } from './failure.ts'
import { instrumentOf } from './instrumentOf.ts'
import { notFiniteAt } from './json/numbers.ts'
import { designSchema, workbookSchema } from './schema.ts'
import type { Design, Workbook } from './workbook.ts'

/**
 * Checks a value against every rule of the design file, version 1.
 *
 * @returns the first rule that is broken, with path, found and expected; `null` when the value is a workbook
 */
export function brokenRule(value: unknown): Failure | null {
  const around = workbookSchema.safeParse(value, untilFirst)
  if (!around.success) return failureOfIssue(around.error.issues[0], value)
  for (const [i, design] of around.data.designs.entries()) {
    const issue = issueOfDesign(design)
    if (issue !== null) return failureOfIssue({ ...issue, path: ['designs', i, ...issue.path] }, value)
  }
  return numberNotFinite(value) ?? brokenWorkbookRule(value as Workbook)
}

/** Values are never changed, so a design whose shape was found good need not be looked at again. */
const goodDesigns = new WeakSet<object>()

function issueOfDesign(design: unknown): Issue | null {
  const isObject = typeof design === 'object' && design !== null
  if (isObject && goodDesigns.has(design)) return null
  const checked = designSchema.safeParse(design, untilFirst)
  if (!checked.success) return checked.error.issues[0] ?? null
  if (isObject) goodDesigns.add(design)
  return null
}

/** A file can break a rule a million times; only the first is told, and a list of all could not be held. */
const untilFirst: core.ParseContextInternal<core.$ZodIssue> = { abortEarly: true }

interface Issue {
  readonly path: readonly PropertyKey[]
  readonly message: string
  readonly code?: string
  readonly issues?: readonly { readonly message: string }[]
  /** What each branch of a union objected to. */
  readonly errors?: readonly (readonly Issue[])[]
}

function failureOfIssue(raw: Issue | undefined, value: unknown): Failure {
  if (raw === undefined) return failure('brokenRule', '', foundText(value), 'a workbook')
  const issue = innermost(raw)
  const isKey = issue.code === 'invalid_key'
  const expected = isKey ? (issue.issues?.[0]?.message ?? issue.message) : issue.message
  const found = isKey ? foundText(String(issue.path.at(-1))) : foundText(valueAt(value, issue.path))
  return failure('brokenRule', pathText(issue.path), found, expected)
}

/** In a union, the objection of the branch that got farther into the value, which is the one that was meant. */
function innermost(issue: Issue): Issue {
  const inner = issue.errors?.flat().find(({ path }) => path.length > 0)
  return inner === undefined ? issue : innermost({ ...inner, path: [...issue.path, ...inner.path] })
}

function valueAt(value: unknown, path: readonly PropertyKey[]): unknown {
  return path.reduce<unknown>((at, part) => (at as Record<PropertyKey, unknown> | undefined)?.[part], value)
}

/** What is not finite could not be written back. */
function numberNotFinite(value: unknown): Failure | null {
  const path = notFiniteAt(value)
  if (path === null) return null
  return failure('brokenRule', pathText(path), foundText(valueAt(value, path)), 'a number that can be held')
}

function brokenWorkbookRule(workbook: Workbook): Failure | null {
  const ids = repeatedId(workbook.designs, 'designs') ?? repeatedJob(workbook.bench)
  if (ids !== null) return ids
  for (const [i, design] of workbook.designs.entries()) {
    // The main slide may stand farther in than drawn: the loops in the open route must leave room then, too.
    const { nominalOpenMm, openMm } = setMainSlide(instrumentOf(workbook, design))
    const farthestInMm = Math.min(nominalOpenMm, openMm)
    if (soundAt.get(design) === farthestInMm) continue
    const broken = brokenDesignRule(design, `designs[${i}]`, farthestInMm)
    if (broken !== null) return broken
    soundAt.set(design, farthestInMm)
  }
  return null
}

/** The open length, mm, at which a design was found to break no rule; it need not be looked at again there. */
const soundAt = new WeakMap<Design, number>()

/** Jobs of the bench that share a name within their list. */
function repeatedJob(bench: Bench = {}): Failure | null {
  return (
    repeatedId(bench.slides ?? [], 'bench.slides') ??
    repeatedId(bench.readings ?? [], 'bench.readings') ??
    repeatedId(bench.pitchChanges ?? [], 'bench.pitchChanges')
  )
}
