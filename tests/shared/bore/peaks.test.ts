import fc from 'fast-check'
import { expect, test } from 'vitest'
import { prepareBody } from '#shared/bore/body.ts'
import { resonancesOf } from '#shared/bore/resonances.ts'
import type { BoreSection } from '#shared/bore/section.ts'
import { demand } from './bores.ts'

const within = (min: number, max: number) => fc.double({ min, max, noNaN: true })

/** A cup, a throat that does not meet the cone behind it, and a bell. */
const steppedBore = fc
  .record({
    volumeMm3: within(1000, 12_000),
    throatMm: within(3, 60),
    throatDiameterMm: within(3, 9),
    startDiameterMm: within(7, 14),
    coneMm: within(150, 2500),
    middleDiameterMm: within(11, 20),
    bellMm: within(300, 1600),
    rimMm: within(90, 380),
    flare: within(0.5, 0.9),
  })
  .map((bore): readonly BoreSection[] => [
    { kind: 'cup', volumeMm3: bore.volumeMm3 },
    { kind: 'cylinder', lengthMm: bore.throatMm, diameterMm: bore.throatDiameterMm },
    {
      kind: 'cone',
      lengthMm: bore.coneMm,
      startDiameterMm: bore.startDiameterMm,
      endDiameterMm: bore.middleDiameterMm,
    },
    {
      kind: 'bell',
      lengthMm: bore.bellMm,
      startDiameterMm: bore.middleDiameterMm,
      endDiameterMm: bore.rimMm,
      flare: bore.flare,
    },
  ])

test('no resonance is listed twice', () => {
  fc.assert(
    fc.property(steppedBore, (sections) => {
      const body = demand(prepareBody(sections, { temperatureC: 24 }))
      const peaks = demand(resonancesOf(body, [])).peaks.map(({ hz }) => hz)
      const apart = peaks.slice(1).map((hz, i) => hz - peaks[i]!)
      // Modes of these bores are tens of hertz apart.
      for (const hz of apart) expect(hz).toBeGreaterThan(1)
    }),
    { numRuns: 150, seed: 1 },
  )
})
