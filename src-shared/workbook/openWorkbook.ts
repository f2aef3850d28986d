import { type Failure, failure, foundText } from './failure.ts'
import { megabytesText, mostBytes } from './fileLimit.ts'
import { jsonProblem } from './json/jsonProblem.ts'
import { withoutMinusZero } from './json/numbers.ts'
import { migrate, migrations } from './migrate.ts'
import { brokenRule } from './rules.ts'
import { currentVersion, type Workbook } from './workbook.ts'

/** What became of opening: the workbook, or why it was refused. */
export type Opened =
  | { readonly ok: true; readonly workbook: Workbook }
  | { readonly ok: false; readonly failure: Failure }

/**
 * Opens the text of a design file: parses, migrates and checks it. What opens keeps every key of the file, known
 * or not; what breaks a rule is refused with the path of the value, what was found and what was expected.
 *
 * @example openWorkbook('{}') // { ok: false, failure: { kind: 'notFerrule', … } }
 */
export function openWorkbook(text: string): Opened {
  if (text.length > mostBytes)
    return refused(
      failure('tooLarge', '', megabytesText(text.length, 1), `at most ${megabytesText(mostBytes)}`),
    )
  const parsed = parseJson(text.replace(/^\uFEFF/, ''))
  return 'failure' in parsed ? refused(parsed.failure) : openValue(parsed.value)
}

/** As `openWorkbook`, for a value that is parsed already. */
export function openValue(value: unknown): Opened {
  if (value === null || typeof value !== 'object' || Array.isArray(value) || !('format' in value)) {
    return refused(
      failure('notFerrule', 'format', foundText((value as { format?: unknown })?.format), '"ferrule"'),
    )
  }
  const record = value as Record<string, unknown>
  if (record.format !== 'ferrule') {
    return refused(failure('notFerrule', 'format', foundText(record.format), '"ferrule"'))
  }
  const current = toCurrentVersion(record)
  if ('failure' in current) return refused(current.failure)
  const broken = brokenRule(current.value)
  return broken === null ? { ok: true, workbook: current.value as unknown as Workbook } : refused(broken)
}

type Step<T> = { readonly value: T } | { readonly failure: Failure }

function refused(because: Failure): Opened {
  return { ok: false, failure: because }
}

/** How UTF-16 looks when it is taken for UTF-8: its mark unreadable, or every other sign a NUL. */
const twoBytesASign = /^(?:\uFFFD\uFFFD|[^\0]\0|\0[^\0])/

function parseJson(text: string): Step<unknown> {
  if (twoBytesASign.test(text)) {
    return { failure: failure('notJson', '', 'two bytes for each sign, as in UTF-16', 'text in UTF-8') }
  }
  const problem = jsonProblem(text)
  if (problem !== null) {
    return { failure: failure('notJson', problem.path, problem.found, problem.expected) }
  }
  return { value: withoutMinusZero(JSON.parse(text)) }
}

function toCurrentVersion(
  record: Readonly<Record<string, unknown>>,
): Step<Readonly<Record<string, unknown>>> {
  const { version } = record
  if (typeof version !== 'number' || !Number.isInteger(version) || version < 0) {
    return {
      failure: failure('brokenRule', 'version', foundText(version), `a whole number up to ${currentVersion}`),
    }
  }
  if (version > currentVersion) {
    const made = failure('newerVersion', 'version', String(version), `at most ${currentVersion}`)
    return {
      failure: {
        ...made,
        message: `This file is of version ${version}; this program reads up to version ${currentVersion}. Open it with a newer Ferrule.`,
      },
    }
  }
  const migrated = migrate(record, version, currentVersion, migrations)
  if (migrated !== null) return { value: migrated }
  return {
    failure: failure('brokenRule', 'version', String(version), `${currentVersion}, the first version`),
  }
}
