/** Largest design file that is read or written: in bytes, and in characters as an opened text. */
export const mostBytes = 20 * 1024 * 1024

/**
 * A size for people, in megabytes of 1024² bytes.
 *
 * @example megabytesText(21_000_000, 1) // '20.0 MB'
 */
export function megabytesText(bytes: number, digits = 0): string {
  return `${(bytes / 1024 ** 2).toFixed(digits)} MB`
}
