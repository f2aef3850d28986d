import type { Fingering } from '../../valves/fingering.ts'
import type { Loop } from '../../valves/loop.ts'
import { tubeInRouteMm } from '../../valves/route.ts'
import type { Valve } from '../../valves/valve.ts'
import type { Finding } from '../finding.ts'

/** What a tuner showed: a fingering, the harmonic it was played on, and cents against the note wanted. */
export interface Reading {
  readonly pressed: readonly string[]
  readonly harmonic: number
  /** Sharp positive. */
  readonly cents: number
  /** Frequency of the note wanted, at the A4 that the tuner was set to, Hz. */
  readonly targetHz: number
  /** Keep the reading in the table but out of the fit. */
  readonly leaveOut?: boolean
}

/** A loop that readings can speak of; `lengthMm` is where the search starts, and stays when the loop is held. */
export interface ReadLoop extends Loop {
  /** Known, not asked for. */
  readonly held?: boolean
  /** Length wanted, mm of tube, whatever the open length comes out as. */
  readonly targetMm?: number
  /**
   * Length wanted over the open length that it is to go with, when `targetMm` is absent. When both are, the loop is
   * wanted so that its own fingering is in tune with the open route.
   */
  readonly wantedFraction?: number
}

/** Readings of one instrument. */
export interface ReadingsJob {
  readonly valves: readonly Valve[]
  /** Fingerings that may have a nominal drop of their own; all have the valves' sum when absent. */
  readonly fingerings?: 'all' | readonly Fingering[]
  readonly loops: readonly ReadLoop[]
  readonly readings: readonly Reading[]
  /** Where the search for the open route's length starts, mm. */
  readonly openLengthMm: number
  /** The open length is known, not asked for. */
  readonly openHeld?: boolean
  /** Open length that the loops are to be in tune with, mm; the fitted one when absent. */
  readonly openTargetMm?: number
  readonly speedOfSoundMPerS: number
  /** Offsets known or taken as known, cents by harmonic; 0 when absent. */
  readonly harmonicOffsetsCents?: Readonly<Record<string, number>>
  /** Take every offset as given instead of looking for it. */
  readonly offsetsHeld?: boolean
  /** Standard error of one reading, cents; 3 when absent. */
  readonly readingErrorCents?: number
}

/** Standard error of a reading by a good player with a good tuner, cents: a habit of the bench, not a fact. */
export const usualReadingErrorCents = 3

/** A fitted value and its standard error, both in the value's unit. */
export interface Estimate {
  readonly value: number
  readonly standardError: number
}

/**
 * What in a job cannot be worked with. Empty when readings can be fitted.
 *
 * @example checkReadings({ ...job, readings: [] })[0]?.field // 'readings'
 */
export function checkReadings(job: ReadingsJob): readonly Finding[] {
  const findings = job.readings.flatMap((reading, index) => checkReading(job, reading, `readings[${index}]`))
  if (!job.readings.some((reading) => !reading.leaveOut))
    findings.push(finding('readings', '0', 'at least one reading'))
  for (const [index, { lengthMm }] of job.loops.entries())
    if (!(Number.isFinite(lengthMm) && lengthMm >= 0))
      findings.push(finding(`loops[${index}].lengthMm`, lengthMm, 'at least 0'))
  for (const field of ['openLengthMm', 'speedOfSoundMPerS', 'openTargetMm', 'readingErrorCents'] as const) {
    const value = job[field] ?? 1
    if (!(Number.isFinite(value) && value > 0)) findings.push(finding(field, value, 'above 0'))
  }
  return findings
}

function checkReading(job: ReadingsJob, reading: Reading, path: string): Finding[] {
  const stranger = reading.pressed.find((id) => !job.valves.some((valve) => valve.id === id))
  const { harmonic, cents, targetHz } = reading
  const startMm = job.openLengthMm + tubeInRouteMm(job.loops, reading.pressed)
  const routeFits = startMm > 0 || !(job.openLengthMm > 0)
  const known = `one of ${job.valves.map((valve) => valve.id).join(', ')}`
  return [
    ...(stranger === undefined ? [] : [finding(`${path}.pressed`, stranger, known)]),
    ...(Number.isInteger(harmonic) && harmonic >= 1
      ? []
      : [finding(`${path}.harmonic`, harmonic, 'a whole number from 1')]),
    ...(routeFits ? [] : [finding(`${path}.pressed`, startMm, 'a route of more than 0 mm')]),
    ...(Number.isFinite(cents) ? [] : [finding(`${path}.cents`, cents, 'a number of cents')]),
    ...(Number.isFinite(targetHz) && targetHz > 0 ? [] : [finding(`${path}.targetHz`, targetHz, 'above 0')]),
  ]
}

function finding(field: string, found: string | number, expected: string): Finding {
  return { field, found: String(found), expected, message: `${field} is ${found}; expected ${expected}.` }
}
