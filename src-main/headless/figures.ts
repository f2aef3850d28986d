const minus = '\u2212'

/** A number with a fixed count of decimals and a true minus sign; what rounds to zero has no sign. */
export function fixed(value: number, decimals: number): string {
  const text = Math.abs(value).toFixed(decimals)
  return value < 0 && Number(text) !== 0 ? `${minus}${text}` : text
}

/** Cents to a tenth, always with their sign: sharp is `+`, and what rounds to zero has none. */
export function signedCents(cents: number): string {
  const text = fixed(cents, 1)
  return cents > 0 && Number(text) !== 0 ? `+${text}` : text
}

/** Whole numbers as they are, others to two decimals. */
export function semitoneText(semitones: number): string {
  return fixed(semitones, Number.isInteger(semitones) ? 0 : 2)
}
