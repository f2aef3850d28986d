import { describe, expect, test } from 'vitest'
import { prepareBody } from '#shared/bore/body.ts'
import { cutBore } from '#shared/bore/cutBore.ts'
import { impedanceAt } from '#shared/bore/inputImpedance.ts'
import { resonancesOf } from '#shared/bore/resonances.ts'
import type { BoreSection } from '#shared/bore/section.ts'
import { demand } from './bores.ts'

const air = { temperatureC: 24 }
const tube: BoreSection = { kind: 'cylinder', lengthMm: 1000, diameterMm: 12 }
const peaksOf = (sections: readonly BoreSection[]) =>
  demand(resonancesOf(demand(prepareBody(sections, air)), [])).peaks
const refusalOf = (sections: readonly BoreSection[]) => {
  const body = prepareBody(sections, air)
  return body.ok ? undefined : body.refusal
}

describe('a bore that is odd but sound gives a result', () => {
  test('sections of length 0 change nothing', () => {
    const padded: BoreSection[] = [
      { kind: 'cylinder', lengthMm: 0, diameterMm: 12 },
      { kind: 'cone', lengthMm: 0, startDiameterMm: 12, endDiameterMm: 12 },
      tube,
    ]
    expect(peaksOf(padded)).toEqual(peaksOf([tube]))
  })

  test('a cone or a bell of equal diameters is a cylinder', () => {
    const plain = peaksOf([tube])
    const cone = peaksOf([{ kind: 'cone', lengthMm: 1000, startDiameterMm: 12, endDiameterMm: 12 }])
    const bell = peaksOf([
      { kind: 'bell', lengthMm: 1000, startDiameterMm: 12, endDiameterMm: 12, flare: 0.7 },
    ])
    for (const [i, { hz }] of plain.entries()) {
      expect(cone[i]!.hz).toBeCloseTo(hz, 6)
      expect(bell[i]!.hz).toBeCloseTo(hz, 6)
    }
  })

  test('a bore that ends at its valves has their mouth', () => {
    expect(cutBore([tube, { kind: 'valves', diameterMm: 16 }], 0, 36).mouthRadiusM).toBe(0.008)
  })

  test('a converging cone has peaks', () => {
    expect(peaksOf([{ kind: 'cone', lengthMm: 900, startDiameterMm: 40, endDiameterMm: 12 }])).toHaveLength(
      16,
    )
  })

  test('a profile of 10 000 points is the cone that its points lie on', () => {
    const points = Array.from({ length: 10_000 }, (_, i) => [i * 0.1, 10 + i * 0.002] as const)
    const measured = peaksOf([{ kind: 'profile', points }])
    const cone = peaksOf([{ kind: 'cone', lengthMm: 999.9, startDiameterMm: 10, endDiameterMm: 29.998 }])
    for (const [i, { hz }] of measured.entries()) expect(Math.abs(hz - cone[i]!.hz)).toBeLessThan(0.02)
  })

  test('a step in a profile is a step', () => {
    const step = peaksOf([
      {
        kind: 'profile',
        points: [
          [0, 10],
          [500, 10],
          [500, 14],
          [900, 14],
        ],
      },
    ])
    const tubes = peaksOf([
      { kind: 'cylinder', lengthMm: 500, diameterMm: 10 },
      { kind: 'cylinder', lengthMm: 400, diameterMm: 14 },
    ])
    expect(step).toEqual(tubes)
  })

  test('a fundamental of 3 Hz has its sixteen modes', () => {
    const peaks = peaksOf([{ kind: 'cone', lengthMm: 57_000, startDiameterMm: 20, endDiameterMm: 900 }])
    expect(peaks).toHaveLength(16)
    expect(peaks[0]!.hz).toBeGreaterThan(2)
    expect(peaks[0]!.hz).toBeLessThan(4)
  })

  test('a tube so wide that no wave turns back at its mouth has few resonances, and says so', () => {
    const body = demand(prepareBody([{ kind: 'cylinder', lengthMm: 300, diameterMm: 300 }], air))
    const found = demand(resonancesOf(body, []))
    expect(found.status).toBe('fewer')
    expect(found.peaks.length).toBeLessThan(16)
  })

  test('a tube so narrow that its waves hardly come back has no invented peaks', () => {
    const body = demand(prepareBody([{ kind: 'cylinder', lengthMm: 4000, diameterMm: 0.8 }], air))
    const found = demand(resonancesOf(body, []))
    expect(found.status).not.toBe('complete')
  })

  test('the impedance can be asked for far outside the sampled range', () => {
    const { re } = demand(impedanceAt(demand(prepareBody([tube], air)), [], [0.01, 20_000]))
    for (const value of re) expect(value).toBeGreaterThan(0)
  })
})

describe('a bore that cannot be reckoned is refused with path, found and expected', () => {
  test.each<[string, string, readonly BoreSection[]]>([
    ['no sections', 'sections', []],
    ['a cup alone', 'sections', [{ kind: 'cup', volumeMm3: 1200 }]],
    ['less than a millimetre of tube', 'sections', [{ ...tube, lengthMm: 0.2 }]],
    ['a negative length', 'sections[1].lengthMm', [tube, { ...tube, lengthMm: -1 }]],
    ['a length that is no number', 'sections[0].lengthMm', [{ ...tube, lengthMm: Number.NaN }]],
    ['an endless length', 'sections[0].lengthMm', [{ ...tube, lengthMm: Number.POSITIVE_INFINITY }]],
    ['a diameter of 0', 'sections[0].diameterMm', [{ ...tube, diameterMm: 0 }]],
    [
      'a bell that narrows',
      'sections[0].endDiameterMm',
      [{ kind: 'bell', lengthMm: 500, startDiameterMm: 12, endDiameterMm: 11, flare: 0.7 }],
    ],
    [
      'a flare of 0',
      'sections[0].flare',
      [{ kind: 'bell', lengthMm: 500, startDiameterMm: 12, endDiameterMm: 110, flare: 0 }],
    ],
    ['a profile of one point', 'sections[0].points', [{ kind: 'profile', points: [[0, 12]] }]],
    [
      'a profile that goes back',
      'sections[0].points[2][0]',
      [
        {
          kind: 'profile',
          points: [
            [0, 12],
            [9, 12],
            [8, 12],
          ],
        },
      ],
    ],
    [
      'a profile with a hole',
      'sections[0].points[1][1]',
      [
        {
          kind: 'profile',
          points: [
            [0, 12],
            [9, Number.NaN],
          ],
        },
      ],
    ],
    [
      'two places for the valves',
      'sections[2]',
      [{ kind: 'valves', diameterMm: 12 }, tube, { kind: 'valves', diameterMm: 12 }],
    ],
    ['a hair of a tube', 'sections', [{ kind: 'cylinder', lengthMm: 20_000, diameterMm: 0.5 }]],
    ['a thread of a tube', 'sections', [{ kind: 'cylinder', lengthMm: 1_000_000, diameterMm: 0.1 }]],
  ])('%s', (_, path, sections) => {
    const refusal = refusalOf(sections)
    expect(refusal?.path).toBe(path)
    expect(refusal?.found).not.toBe('')
    expect(refusal?.expected).not.toBe('')
  })

  test('a temperature that is no number', () => {
    expect(prepareBody([tube], { temperatureC: Number.NaN })).toMatchObject({
      ok: false,
      refusal: { path: 'temperatureC', found: 'NaN' },
    })
  })

  test('half a mode', () => {
    expect(prepareBody([tube], air, { highestMode: 2.5 })).toMatchObject({ refusal: { path: 'highestMode' } })
  })

  test.each([
    ['loops without a place for them', [tube], [{ lengthMm: 80, diameterMm: 12 }], 'inserts'],
    [
      'a loop of ten bodies',
      [{ kind: 'valves', diameterMm: 12 }, tube],
      [{ lengthMm: 10_000, diameterMm: 12 }],
      'inserts',
    ],
    [
      'a loop of negative length',
      [{ kind: 'valves', diameterMm: 12 }, tube],
      [{ lengthMm: -1, diameterMm: 12 }],
      'inserts[0].lengthMm',
    ],
    [
      'a bow tighter than its bore',
      [{ kind: 'valves', diameterMm: 12 }, tube],
      [{ lengthMm: 80, diameterMm: 12, bendRadiusMm: 5 }],
      'inserts[0].bendRadiusMm',
    ],
  ] as const)('%s', (_, sections, inserts, path) => {
    const found = resonancesOf(demand(prepareBody(sections, air)), inserts)
    expect(found).toMatchObject({ ok: false, refusal: { path } })
  })
})
