/**
 * What samples say by themselves: nothing here knows how they were made.
 */

export interface Samples {
  readonly values: Float32Array
  readonly sampleHz: number
}

interface Phasor {
  readonly re: number
  readonly im: number
}

/** Slow values taken from samples, evenly spaced. */
interface Slow {
  readonly phasors: readonly Phasor[]
  readonly everyS: number
}

const slowHz = 100

/** What lies near `carrierHz`, moved down to zero and smoothed over `smoothS`, from `fromS` to `toS`. */
function around(
  { values, sampleHz }: Samples,
  carrierHz: number,
  smoothS: number,
  fromS: number,
  toS: number,
): Slow {
  const half = Math.round((smoothS * sampleHz) / 2)
  const window = Array.from({ length: 2 * half + 1 }, (_, i) => 1 - Math.cos((Math.PI * i) / half))
  const phasors: Phasor[] = []
  for (let atS = fromS + smoothS; atS < toS - smoothS; atS += 1 / slowHz) {
    const centre = Math.round(atS * sampleHz)
    let re = 0
    let im = 0
    for (const [i, weight] of window.entries()) {
      const at = centre - half + i
      const angle = (2 * Math.PI * carrierHz * at) / sampleHz
      re += weight * values[at]! * Math.cos(angle)
      im -= weight * values[at]! * Math.sin(angle)
    }
    phasors.push({ re: re / half, im: im / half })
  }
  return { phasors, everyS: 1 / slowHz }
}

/** How often what lies near `carrierHz` swells, Hz: the highest place of the spectrum of its squared envelope. */
export function swellHz(
  samples: Samples,
  carrierHz: number,
  spacingHz: number,
  fromS: number,
  toS: number,
): number {
  const { phasors, everyS } = around(samples, carrierHz, 4 / spacingHz, fromS, toS)
  const squares = phasors.map(({ re, im }) => re * re + im * im)
  const mean = squares.reduce((sum, value) => sum + value, 0) / squares.length
  const windowed = squares.map(
    (value, i) => (value - mean) * (1 - Math.cos((2 * Math.PI * (i + 0.5)) / squares.length)),
  )
  let best = { hz: 0, power: 0 }
  for (let hz = 0.15; hz < 12; hz += 0.002) {
    const power = powerAt(windowed, everyS, hz)
    if (power > best.power) best = { hz, power }
  }
  return best.hz
}

function powerAt(values: readonly number[], everyS: number, hz: number): number {
  let re = 0
  let im = 0
  for (const [i, value] of values.entries()) {
    const angle = 2 * Math.PI * hz * i * everyS
    re += value * Math.cos(angle)
    im += value * Math.sin(angle)
  }
  return re * re + im * im
}

/** The frequency of a single steady tone near `carrierHz`, from the slope of its phase. */
export function toneHz(samples: Samples, carrierHz: number, fromS: number, toS: number): number {
  const { phasors, everyS } = around(samples, carrierHz, 8 / carrierHz, fromS, toS)
  const first = phasors[0]!
  const last = phasors.at(-1)!
  let turned = 0
  for (const [i, now] of phasors.slice(1).entries()) {
    const before = phasors[i]!
    turned += Math.atan2(now.im * before.re - now.re * before.im, now.re * before.re + now.im * before.im)
  }
  if (first.re === 0 && last.re === 0) return Number.NaN
  return carrierHz + turned / (2 * Math.PI * everyS * (phasors.length - 1))
}

/** The largest sample, whatever its sign, from `fromS` to `toS`. */
export function peak({ values, sampleHz }: Samples, fromS = 0, toS = Number.POSITIVE_INFINITY): number {
  let most = 0
  const end = Math.min(values.length, Math.floor(toS * sampleHz))
  for (let i = Math.ceil(fromS * sampleHz); i < end; i++) most = Math.max(most, Math.abs(values[i]!))
  return most
}

/** The largest change from one sample to the next. */
export function largestStep({ values }: Samples): number {
  let most = Math.abs(values[0]!)
  for (let i = 1; i < values.length; i++) most = Math.max(most, Math.abs(values[i]! - values[i - 1]!))
  return most
}
