import { expect, test } from 'vitest'
import { prepareBody } from '#shared/bore/body.ts'
import { impedanceAt } from '#shared/bore/inputImpedance.ts'
import { resonancesOf } from '#shared/bore/resonances.ts'
import type { BoreMouth, BoreSection, Insert, WaveFronts } from '#shared/bore/section.ts'
import reference from '../../fixtures/acoustics.json' with { type: 'json' }
import { demand } from './bores.ts'

test.each(reference.cases)('$name: peaks within 0.05 Hz, impedance within 0.2 per cent', (given) => {
  const body = demand(
    prepareBody(given.sections as BoreSection[], {
      waveFronts: given.waveFronts as WaveFronts,
      mouth: given.load as BoreMouth,
      temperatureC: 26.85,
    }),
  )
  const inserts: Insert[] = given.inserts
  const { peaks } = demand(resonancesOf(body, inserts))
  expect(given.peaksHz.length).toBeGreaterThan(7)
  const worstHz = given.peaksHz.map((hz, i) => Math.abs(hz - peaks[i]!.hz))
  expect(Math.max(...worstHz)).toBeLessThan(0.05)
  const curve = demand(
    impedanceAt(
      body,
      inserts,
      given.impedance.map(({ hz }) => hz),
    ),
  )
  for (const [i, { re, im }] of given.impedance.entries())
    expect(Math.hypot(curve.re[i]! - re, curve.im[i]! - im) / Math.hypot(re, im)).toBeLessThan(0.002)
})
