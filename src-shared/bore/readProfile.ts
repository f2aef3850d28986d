import { accepted, type BoreResult, refused } from './refusal.ts'
import type { ProfileSection } from './section.ts'

/** Units a measured profile may come in. */
export type ProfileUnit = 'mm' | 'cm' | 'in'

/** A profile read from text, and how the text was understood, to be shown beside it. */
export interface ReadProfile {
  readonly section: ProfileSection
  readonly unit: ProfileUnit
  readonly separator: 'tab' | 'semicolon' | 'comma' | 'space'
  readonly headerLines: number
  /** Whether the second column was read as radii, because its heading says so. */
  readonly radii: boolean
}

interface Line {
  readonly number: number
  readonly text: string
}

const millimetres: Readonly<Record<ProfileUnit, number>> = { mm: 1, cm: 10, in: 25.4 }
const numberPattern = /^[+-]?(\d+([.,]\d*)?|[.,]\d+)(e[+-]?\d+)?$/i
const mostPoints = 100_000
const mostCharacters = 5_000_000

/**
 * Reads a measured bore from pasted or CSV text: two columns, distance and diameter, parted by tabs, semicolons,
 * commas or spaces, with or without lines of heading, decimal point or decimal comma. The unit is `unit`, else what the
 * heading names (mm, cm, in), else mm. A list from the bell to the lips is turned round. What cannot be read is
 * refused with its line.
 *
 * @example readProfile('x (mm);d (mm)\n0;11,66\n120;13,2')
 */
export function readProfile(text: string, unit?: ProfileUnit): BoreResult<ReadProfile> {
  if (text.length > mostCharacters) {
    return refused('text', `${text.length} characters`, `at most ${mostCharacters} characters`)
  }
  const lines = text
    .replace(/^\uFEFF/, '')
    .split(/\r\n|\n|\r/)
    .map((line, i) => ({ number: i + 1, text: line.trim() }))
    .filter((line) => line.text !== '' && !line.text.startsWith('#'))
  const firstRow = lines.findIndex((line) => startsWithNumber(line.text))
  if (firstRow < 0) return refused('text', lines[0]?.text ?? 'nothing', 'two columns of numbers')
  if (firstRow > 20) return refused(`line ${lines[0]!.number}`, lines[0]!.text, 'at most 20 lines of heading')
  const headings = lines.slice(0, firstRow).map((line) => line.text)
  const rows = lines.slice(firstRow)
  if (rows.length > mostPoints) return refused('text', `${rows.length} lines`, 'at most 100000 lines')
  const separator = separatorOf(rows)
  const known = unit ?? unitIn(headings, separator)
  const radii = headings.some((heading) => /radi/i.test(heading))
  const points = readRows(rows, separator, millimetres[known], radii)
  if (!points.ok) return points
  const section: ProfileSection = { kind: 'profile', points: points.value }
  return accepted({ section, unit: known, separator, headerLines: firstRow, radii })
}

function startsWithNumber(text: string): boolean {
  return /^"?[+-]?[.,]?\d/.test(text)
}

/** The columns' own headings stand last and are heard first. */
function unitIn(headings: readonly string[], separator: ReadProfile['separator']): ProfileUnit {
  for (const heading of headings.toReversed()) {
    if (/\bmm\b|millimet/i.test(heading)) return 'mm'
    if (/\bcm\b|centimet/i.test(heading)) return 'cm'
    if (namesInches(heading, separator)) return 'in'
  }
  return 'mm'
}

/** `in` is a preposition too: it is the unit in brackets or at the end of a column's heading. */
function namesInches(heading: string, separator: ReadProfile['separator']): boolean {
  if (/\binch|″|[([]\s*(?:in\.?|")\s*[)\]]/i.test(heading)) return true
  const cells = separator === 'space' ? [heading] : cellsOf(heading, separator)
  const areColumns = separator === 'space' || cells.length > 1
  return areColumns && cells.some((cell) => /\bin\.?$/i.test(cell))
}

/** Spaces part the columns only where they leave exactly two numbers: `0,5 11,66` but not `0, 11.66`. */
function separatorOf(rows: readonly Line[]): ReadProfile['separator'] {
  if (rows.some((line) => line.text.includes('\t'))) return 'tab'
  if (rows.some((line) => line.text.includes(';'))) return 'semicolon'
  const spaced = rows.every((line) => {
    const cells = line.text.split(/\s+/)
    return cells.length === 2 && cells.every((cell) => numberPattern.test(cell) && !/[.,]$/.test(cell))
  })
  return spaced ? 'space' : 'comma'
}

function cellsOf(text: string, separator: ReadProfile['separator']): string[] {
  const parting = { tab: '\t', semicolon: ';', comma: ',', space: /\s+/ }[separator]
  const cells = text.split(parting).map((cell) =>
    cell
      .trim()
      .replace(/^"(.*)"$/, '$1')
      .trim(),
  )
  while (cells.length > 2 && cells.at(-1) === '') cells.pop()
  return cells
}

function readRows(
  rows: readonly Line[],
  separator: ReadProfile['separator'],
  mmPerUnit: number,
  radii: boolean,
): BoreResult<readonly (readonly [number, number])[]> {
  const points: (readonly [number, number])[] = []
  for (const line of rows) {
    const cells = cellsOf(line.text, separator)
    if (cells.length !== 2 || !cells.every((cell) => numberPattern.test(cell)))
      return refused(`line ${line.number}`, line.text, 'two numbers: distance and diameter')
    const [x, width] = cells.map((cell) => Number(cell.replace(',', '.')) * mmPerUnit) as [number, number]
    points.push([x, radii ? 2 * width : width])
  }
  return inOrder(points, rows)
}

function inOrder(
  points: readonly (readonly [number, number])[],
  rows: readonly Line[],
): BoreResult<readonly (readonly [number, number])[]> {
  if (points.length < 2) return refused('text', `${points.length} point`, 'two points or more')
  const backwards = points[0]![0] > points.at(-1)![0]
  for (const [i, [x, diameter]] of points.entries()) {
    const line = rows[i]!
    if (!(diameter > 0 && diameter <= 1e4) || !(Math.abs(x) <= 1e6))
      return refused(`line ${line.number}`, line.text, 'a diameter above 0 and up to 10000 mm')
    const before = points[i - 1]?.[0]
    if (before !== undefined && (backwards ? x > before : x < before))
      return refused(`line ${line.number}`, line.text, 'distances in order')
  }
  return accepted(backwards ? points.toReversed() : points)
}
