import { type Result, refused } from './outcome.ts'

/** The form in which a command answers. */
export type Form = 'text' | 'json' | 'csv'

/** The form that the flags `--json` and `--csv` ask for: text without either, and refused with both. */
export function formOf(flags: ReadonlySet<string>): Result<Form> {
  const json = flags.has('json')
  const csv = flags.has('csv')
  if (json && csv) return refused('found both --json and --csv, expected one of them')
  return { ok: true, value: json ? 'json' : csv ? 'csv' : 'text' }
}
