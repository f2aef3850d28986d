import { type Result, refused } from './outcome.ts'

/** The one file of a command that takes no more and no less; `wanted` is what is said to be missing without one. */
export function oneFile(files: readonly string[], wanted = 'one design file'): Result<string> {
  const [file] = files
  if (file === undefined) return refused(`found no file, expected ${wanted}`)
  if (files.length > 1) return refused(`found ${files.length} files, expected one design file`)
  return { ok: true, value: file }
}
