import { type core, safeParse, type ZodObject } from 'zod'
import { setMainSlide } from '../tuning/mainSlide.ts'
import type { Bench } from './bench.ts'
import { brokenDesignRule, repeatedId } from './designRules.ts'
import { type Failure, failure, foundText, pathText } from './failure.ts'
import { instrumentOf } from './instrumentOf.ts'
import { notFiniteAt } from './json/numbers.ts'
import { designSchema, loopSchema, workbookSchema } from './schema.ts'
import type { Design, Workbook } from './workbook.ts'

/**
 * Checks a value against every rule of the design file, version 1.
 *
 * @returns the first rule that is broken, with path, found and expected; `null` when the value is a workbook
 */
export function brokenRule(value: unknown): Failure | null {
  const issue = issueOfWorkbook(value)
  if (issue !== null) return failureOfIssue(issue, value)
  return numberNotFinite(value) ?? brokenWorkbookRule(value as Workbook)
}

function issueOfWorkbook(value: unknown): Issue | null {
  return (
    issueByKey(workbookSchema, value) ?? issueInList('designs', (value as Workbook).designs, issueOfDesign)
  )
}

function issueOfDesign(value: unknown): Issue | null {
  return (
    issueByKey(designSchema, value) ??
    issueInList('loops', (value as Design).loops, (loop) => issueOf(loopSchema, loop))
  )
}

/** Checks a record key by key: an edit leaves most of its values what they were, and those are good already. */
function issueByKey(schema: ZodObject, value: unknown): Issue | null {
  if (!isRecord(value)) return issueOf(schema, value)
  if (goodAs.get(value) === schema) return null
  for (const [key, part] of Object.entries(schema.shape)) {
    const issue = issueOf(part, value[key])
    if (issue !== null) return within([key], issue)
  }
  goodAs.set(value, schema)
  return null
}

function isRecord(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value)
}

function issueInList(
  key: string,
  items: readonly unknown[],
  issueOfItem: (item: unknown) => Issue | null,
): Issue | null {
  for (const [i, item] of items.entries()) {
    const issue = issueOfItem(item)
    if (issue !== null) return within([key, i], issue)
  }
  return null
}

function within(path: readonly PropertyKey[], issue: Issue): Issue {
  return { ...issue, path: [...path, ...issue.path] }
}

/** Values are never changed, so one that was found good need not be looked at again. */
const goodAs = new WeakMap<object, unknown>()

function issueOf(schema: core.$ZodType, value: unknown): Issue | null {
  const isObject = typeof value === 'object' && value !== null
  if (isObject && goodAs.get(value) === schema) return null
  const checked = safeParse(schema, value, untilFirst)
  if (!checked.success) return checked.error.issues[0] ?? null
  if (isObject) goodAs.set(value, schema)
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
