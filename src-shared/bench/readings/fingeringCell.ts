/** Months as a spreadsheet writes them when it takes `1-3` for a date. */
const monthInside = /[a-z]{3,}/i

/** No fingering is longer, and taking a long run of blanks apart would take its time. */
const longestCell = 1000

/**
 * Reads a fingering as people type it: `0` or `open`, valve names joined by `-`, `+`, a blank or a full stop, or
 * run together when every name is one letter or figure (`123`). Gives the valves in the design's order, or words
 * that say what was expected.
 *
 * @example readFingering('3+1', ['1', '2', '3']) // ['1', '3']
 */
export function readFingering(text: string, valveIds: readonly string[]): readonly string[] | string {
  const plain = text.trim()
  const expected = `0, or valves of ${valveIds.join(', ')} joined with -`
  if (plain.length > longestCell) return expected
  if (/^(0|open)$/i.test(plain)) return []
  const parts = splitFingering(plain, valveIds)
  const strangers = parts.filter((part) => !valveIds.includes(part))
  if (strangers.length > 0 || parts.length === 0)
    return monthInside.test(plain) && /\d/.test(plain)
      ? `${expected}; a spreadsheet turns 1-3 into a date unless the column is text`
      : expected
  if (new Set(parts).size < parts.length) return 'each valve once'
  return valveIds.filter((id) => parts.includes(id))
}

function splitFingering(plain: string, valveIds: readonly string[]): readonly string[] {
  const parts = plain.split(/\s*[-–+. ]\s*/).filter((part) => part !== '')
  const [only] = parts
  if (parts.length !== 1 || only === undefined || valveIds.includes(only)) return parts
  return [...only]
}
