/** Why a file or an edit was refused: a closed set. */
export type FailureKind = 'tooLarge' | 'notJson' | 'notFerrule' | 'newerVersion' | 'brokenRule'

/** A refusal: where, what was found there, and what was expected. */
export interface Failure {
  readonly kind: FailureKind
  /** As in `designs[0].loops[3].lengthMm`; empty for the file as a whole. */
  readonly path: string
  readonly found: string
  readonly expected: string
  /** One sentence for a person. */
  readonly message: string
}

/** Builds a refusal whose sentence names the path, what was found and what was expected. */
export function failure(kind: FailureKind, path: string, found: string, expected: string): Failure {
  const where = path === '' ? 'The file' : path
  return { kind, path, found, expected, message: `${where}: found ${found}, expected ${expected}.` }
}

/**
 * A path as a person reads it.
 *
 * @example pathText(['designs', 0, 'loops', 3, 'lengthMm']) // 'designs[0].loops[3].lengthMm'
 */
export function pathText(path: readonly PropertyKey[]): string {
  return path.reduce<string>((text, part) => {
    if (typeof part === 'number') return `${text}[${part}]`
    const name = shortened(String(part))
    if (!/^[\p{L}_$][\p{L}\p{N}_$]*$/u.test(name)) return `${text}[${quoted(name)}]`
    return text === '' ? name : `${text}.${name}`
  }, '')
}

/**
 * A value as a person reads it in a message: short, and saying what kind of thing it is.
 *
 * @example foundText([5, 1]) // '[5, 1]'
 * @example foundText(Array(400).fill(0)) // 'a list of 400'
 */
export function foundText(value: unknown): string {
  if (value === undefined) return 'nothing'
  if (typeof value === 'string') return quoted(value)
  if (Array.isArray(value)) return isPair(value) ? `[${value.join(', ')}]` : `a list of ${value.length}`
  if (value !== null && typeof value === 'object') return 'an object'
  return String(value)
}

function isPair(value: readonly unknown[]): boolean {
  return value.length === 2 && value.every((part) => typeof part === 'number')
}

/** Marks that turn the writing round or break the line are spelt out, or they would do so to the message. */
function quoted(text: string): string {
  return JSON.stringify(shortened(text)).replace(/[\p{Cc}\p{Cf}\p{Zl}\p{Zp}]/gu, (mark) =>
    Array.from(
      { length: mark.length },
      (_, i) => `\\u${mark.charCodeAt(i).toString(16).padStart(4, '0')}`,
    ).join(''),
  )
}

function shortened(text: string): string {
  return text.length > 40 ? `${text.slice(0, 40).replace(/[\ud800-\udbff]$/, '')}…` : text
}
