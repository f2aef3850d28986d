import { centsBetween } from '../../pitch/cents.ts'
import { switchedBy } from '../../valves/gate.ts'
import type { Reading, ReadingsJob } from './reading.ts'

/** Something that readings are to find. */
export type Unknown =
  | { readonly kind: 'open' }
  | { readonly kind: 'loop'; readonly id: string }
  | { readonly kind: 'harmonic'; readonly harmonic: number }

/** How an unknown is called in a sentence. */
export function unknownName(unknown: Unknown): string {
  switch (unknown.kind) {
    case 'open':
      return 'the open length'
    case 'loop':
      return `loop ${unknown.id}`
    case 'harmonic':
      return `harmonic ${unknown.harmonic}`
  }
}

/** Readings that take part in the fit. */
export function usedReadings(job: ReadingsJob): readonly Reading[] {
  return job.readings.filter((reading) => !reading.leaveOut)
}

/**
 * The harmonic from which offsets are counted: length and a shift common to all harmonics cannot be told apart, so
 * one offset is taken as given. Of the harmonics read on the open instrument (or of all, when none is) the one
 * with most readings; of equals, the lowest. `null` where none need be: with the open length known, what is read on
 * the open instrument tells each offset by itself.
 */
export function referenceHarmonic(job: ReadingsJob): number | null {
  const used = usedReadings(job)
  const open = new Set(used.filter(({ pressed }) => pressed.length === 0).map(({ harmonic }) => harmonic))
  if (job.openHeld && open.size > 0) return null
  const harmonics = [...new Set(used.map(({ harmonic }) => harmonic))].sort((a, b) => a - b)
  const candidates = open.size === 0 ? harmonics : harmonics.filter((harmonic) => open.has(harmonic))
  const count = (harmonic: number) => used.filter((reading) => reading.harmonic === harmonic).length
  return candidates.reduce((best, harmonic) => (count(harmonic) > count(best) ? harmonic : best))
}

/** What is to be found: the open length, the loops that any reading switches, and the other harmonics' offsets. */
export function unknownsOf(job: ReadingsJob): readonly Unknown[] {
  const used = usedReadings(job)
  const loops = job.loops.filter(
    (loop) => !loop.held && used.some(({ pressed }) => switchedBy(loop, pressed) !== 0),
  )
  const reference = referenceHarmonic(job)
  const harmonics = job.offsetsHeld ? [] : [...new Set(used.map(({ harmonic }) => harmonic))]
  return [
    ...(job.openHeld ? [] : [{ kind: 'open' } as const]),
    ...loops.map(({ id }) => ({ kind: 'loop', id }) as const),
    ...harmonics
      .filter((harmonic) => harmonic !== reference)
      .sort((a, b) => a - b)
      .map((harmonic) => ({ kind: 'harmonic', harmonic }) as const),
  ]
}

/** Where the search starts, in the order of the unknowns. */
export function startValues(job: ReadingsJob, unknowns: readonly Unknown[]): readonly number[] {
  return unknowns.map((unknown) => {
    if (unknown.kind === 'open') return job.openLengthMm
    if (unknown.kind === 'harmonic') return knownOffsetCents(job, unknown.harmonic)
    return job.loops.find(({ id }) => id === unknown.id)!.lengthMm
  })
}

/** Route length of a reading for given values of the unknowns, mm. */
export function routeMm(
  job: ReadingsJob,
  unknowns: readonly Unknown[],
  values: readonly number[],
  { pressed }: Reading,
): number {
  const found = (match: (unknown: Unknown) => boolean, otherwise: number) =>
    values[unknowns.findIndex(match)] ?? otherwise
  return job.loops.reduce(
    (sum, loop) => {
      const times = switchedBy(loop, pressed)
      return (
        sum + times * found((unknown) => unknown.kind === 'loop' && unknown.id === loop.id, loop.lengthMm)
      )
    },
    found(({ kind }) => kind === 'open', job.openLengthMm),
  )
}

/** Cents that a tuner would show: `1200·log2(n·c / (2·route) / target) + h_n`. */
export function predictedCents(
  job: ReadingsJob,
  unknowns: readonly Unknown[],
  values: readonly number[],
  reading: Reading,
): number {
  const { harmonic, targetHz } = reading
  const soundingHz = (harmonic * 1000 * job.speedOfSoundMPerS) / (2 * routeMm(job, unknowns, values, reading))
  const at = unknowns.findIndex((unknown) => unknown.kind === 'harmonic' && unknown.harmonic === harmonic)
  return centsBetween(targetHz, soundingHz) + (values[at] ?? knownOffsetCents(job, harmonic))
}

/** How a prediction moves with each unknown: cents per mm of tube, or cents per cent of offset. */
export function slopes(
  job: ReadingsJob,
  unknowns: readonly Unknown[],
  values: readonly number[],
  reading: Reading,
): readonly number[] {
  const centsPerMm = -1200 / Math.LN2 / routeMm(job, unknowns, values, reading)
  return unknowns.map((unknown) => {
    if (unknown.kind === 'open') return centsPerMm
    if (unknown.kind === 'harmonic') return Number(unknown.harmonic === reading.harmonic)
    const loop = job.loops.find(({ id }) => id === unknown.id)!
    return centsPerMm * switchedBy(loop, reading.pressed)
  })
}

/** Offset that is taken as known for a harmonic, cents. */
export function knownOffsetCents(job: ReadingsJob, harmonic: number): number {
  return job.harmonicOffsetsCents?.[String(harmonic)] ?? 0
}
