import { expect, test } from 'vitest'
import { keefeAir } from '#shared/air/keefeAir.ts'
import { prepareBody } from '#shared/bore/body.ts'
import { resonancesOf } from '#shared/bore/resonances.ts'
import type { BoreConditions, BoreSection } from '#shared/bore/section.ts'
import { demand } from './bores.ts'

const ideal: BoreConditions = { temperatureC: 26.85, losses: 'none', mouth: 'open', waveFronts: 'plane' }
const speed = keefeAir(26.85).speedMPerS

function peaksOf(sections: readonly BoreSection[], highestMode = 12): number[] {
  const body = demand(prepareBody(sections, ideal, { highestMode, sliceErrorHz: 0.001 }))
  return demand(resonancesOf(body, [])).peaks.map(({ hz }) => hz)
}

test('a lossless open cylinder has its maxima at odd multiples of c/4L', () => {
  const peaks = peaksOf([{ kind: 'cylinder', lengthMm: 1000, diameterMm: 20 }])
  expect(peaks).toHaveLength(12)
  for (const [i, hz] of peaks.entries()) expect(hz).toBeCloseTo(((2 * i + 1) * speed) / 4, 2)
})

test('a lossless open cone has its maxima where tan kL = −k·x1', () => {
  const x1 = (10 * 2) / (90 - 10)
  const peaks = peaksOf([{ kind: 'cone', lengthMm: 2000, startDiameterMm: 10, endDiameterMm: 90 }])
  for (const [i, hz] of peaks.entries()) {
    const k = (2 * Math.PI * hz) / speed
    // kL lies between (i + ½)π and (i + 1)π, where tan runs from −∞ to 0.
    const wanted = rootBetween(
      (i + 0.5) * Math.PI + 1e-9,
      (i + 1) * Math.PI,
      (kL) => Math.sin(kL) + (kL / 2) * x1 * Math.cos(kL),
    )
    expect((k * 2 * speed) / (4 * Math.PI)).toBeCloseTo((wanted * speed) / (4 * Math.PI), 2)
  }
  expect(peaks).toHaveLength(12)
})

test('a lossless Bessel horn of flare 1 is the reciprocal of a cone: its closed forms hold', () => {
  // r = b/X: the horn equation's solutions are √X·J±3/2(kX), so p = d/dX (sin kX/X) and its companion.
  const lengthM = 1.5
  const ratio = 6
  const mouthM = lengthM / (ratio - 1)
  const peaks = peaksOf(
    [{ kind: 'bell', lengthMm: 1500, startDiameterMm: 20, endDiameterMm: 20 * ratio, flare: 1 }],
    8,
  )
  // p ∝ X^(1+½)·[J_{3/2}(kX) …]: with S ∝ X^(−2), p″ − (2/X)p′ + k²p = 0 is solved by sin kX − kX cos kX and
  // cos kX + kX sin kX, whose slopes are k²X sin kX and k²X cos kX.
  const a = (kx: number) => Math.sin(kx) - kx * Math.cos(kx)
  const b = (kx: number) => Math.cos(kx) + kx * Math.sin(kx)
  const condition = (hz: number) => {
    const k = (2 * Math.PI * hz) / speed
    const near = k * mouthM
    const far = k * (mouthM + lengthM)
    return a(near) * Math.cos(far) - b(near) * Math.sin(far)
  }
  expect(peaks).toHaveLength(8)
  for (const hz of peaks) expect(rootBetween(hz - 5, hz + 5, condition)).toBeCloseTo(hz, 2)
})

function rootBetween(from: number, to: number, f: (x: number) => number): number {
  let [low, high] = [from, to]
  if (f(low) * f(high) > 0) throw new Error('no root between')
  for (let i = 0; i < 100; i++) {
    const middle = (low + high) / 2
    if (f(low) * f(middle) <= 0) high = middle
    else low = middle
  }
  return (low + high) / 2
}
