import * as z from 'zod'

// Compiled checks would need a content policy that allows evaluated code.
z.config({ jitless: true })

/** Longest tube that a file may hold, mm: beyond it a length is a slip of the unit. */
export const longestMm = 1_000_000
/** Most valves in a design. */
export const mostValves = 12

/** A number within a range, both ends included. As in every schema, the message is what was expected. */
export function numberWithin(low: number, high: number, unit: string): z.ZodNumber {
  const expected = `a number from ${low} to ${high}${unit}`
  return z.number({ error: expected }).min(low, expected).max(high, expected)
}

/** A whole number within a range, both ends included. */
export function wholeWithin(low: number, high: number): z.ZodNumber {
  const expected = `a whole number from ${low} to ${high}`
  return z.number({ error: expected }).int(expected).min(low, expected).max(high, expected)
}

/** A length of tube, mm. */
export const lengthMm = z
  .number({ error: 'a length of 0 mm or more' })
  .min(0, 'a length of 0 mm or more')
  .max(longestMm, `a length of at most ${longestMm} mm`)
/** A diameter of tube, mm. */
export const diameterMm = numberWithin(0.1, 2000, ' mm')
/** Any text. */
export const text = z.string({ error: 'text' })

/** A short name that is not empty. */
export function named(what: string): z.ZodString {
  const expected = `${what} of 1 to 60 characters`
  return z.string({ error: expected }).min(1, expected).max(60, expected)
}

/** A valve's name. */
export const valveId = named('a valve name').regex(
  /^(?!0$)[^-\s]+$/,
  'a valve name without - or spaces, and not 0',
)
/** Names of valves. */
export const valveIds = z
  .array(z.string({ error: 'a valve name' }), { error: 'a list of valve names' })
  .max(mostValves, {
    error: `at most ${mostValves} valve names`,
  })

/** The number of a harmonic. */
export const harmonicNumber = wholeWithin(1, 64)

/** A reference pitch, Hz. */
export const a4Hz = numberWithin(380, 480, ' Hz')
