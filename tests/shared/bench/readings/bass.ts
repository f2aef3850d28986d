import { fitReadings } from '#shared/bench/readings/fitReadings.ts'
import type { ReadingsJob, ReadLoop } from '#shared/bench/readings/reading.ts'
import type { ReadingsFit } from '#shared/bench/readings/readingsFit.ts'
import { meantHz } from '#shared/bench/readings/target.ts'

/** A three-valve bass in F: 345 m/s, open length 345000 / (2 × 43.6535) = 3951.6 mm. */
export const open = { fundamentalHz: 43.6535, a4Hz: 440 } as const
export const openMm = 345_000 / (2 * 43.6535)
export const valves = [
  { id: '1', semitones: 2 },
  { id: '2', semitones: 1 },
  { id: '3', semitones: 3 },
] as const

/** What the bass really is, to make readings from. */
export interface TrueBass {
  readonly openMm: number
  readonly loopsMm: readonly [number, number, number]
  readonly offsetsCents?: Readonly<Record<number, number>>
}

/** Loops that start exact for the nominal open length. */
export const startLoops: readonly ReadLoop[] = valves.map(({ id, semitones }) => ({
  id: `L${id}`,
  lengthMm: openMm * (2 ** (semitones / 12) - 1),
  pressed: [id],
}))

/** Readings that a perfect tuner shows for a bass: `fingerings` are strings like '13', '' for open. */
export function readingsJob(
  bass: TrueBass,
  played: readonly (readonly [fingering: string, harmonic: number])[],
  noiseCents: (row: number) => number = () => 0,
): ReadingsJob {
  const readings = played.map(([fingering, harmonic], row) => {
    const pressed = [...fingering]
    const added = pressed.reduce(
      (sum, id) => sum + bass.loopsMm[valves.findIndex((valve) => valve.id === id)]!,
      0,
    )
    const drop = pressed.reduce((sum, id) => sum + valves.find((valve) => valve.id === id)!.semitones, 0)
    const targetHz = meantHz(open, drop, harmonic, 440)
    const hz = (harmonic * 345_000) / (2 * (bass.openMm + added))
    const cents = 1200 * Math.log2(hz / targetHz) + (bass.offsetsCents?.[harmonic] ?? 0) + noiseCents(row)
    return { pressed, harmonic, targetHz, cents }
  })
  return { valves, loops: startLoops, readings, openLengthMm: openMm, speedOfSoundMPerS: 345 }
}

/** What readings are fitted to; throws when they are refused. */
export function fitted(job: ReadingsJob): ReadingsFit {
  const answer = fitReadings(job)
  if (answer.kind !== 'fitted') throw new Error(answer.findings[0]?.message)
  return answer
}

/** Normal noise of standard deviation 1 from a seed: mulberry32 and the polar method of Box and Muller. */
export function normalNoise(seed: number): () => number {
  let state = seed >>> 0
  const uniform = () => {
    state = (state + 0x6d2b79f5) >>> 0
    let t = Math.imul(state ^ (state >>> 15), state | 1)
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61)
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296
  }
  return () => Math.sqrt(-2 * Math.log(1 - uniform())) * Math.cos(2 * Math.PI * uniform())
}
