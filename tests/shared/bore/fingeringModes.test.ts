import { describe, expect, test } from 'vitest'
import { prepareBody } from '#shared/bore/body.ts'
import { type BoreFingering, describeFingerings, insertsOfLoops } from '#shared/bore/fingeringModes.ts'
import { groupLengths } from '#shared/bore/groupLength.ts'
import { resonancesOf } from '#shared/bore/resonances.ts'
import { centsBetween } from '#shared/pitch/cents.ts'
import { demand, highBore } from './bores.ts'

const body = demand(prepareBody(highBore, { temperatureC: 24 }))
const openLengthMm = 1480
const open: BoreFingering = { fingering: '0', semitones: 0, inserts: [], routeLengthMm: openLengthMm }
const first: BoreFingering = {
  fingering: '1',
  semitones: 2,
  inserts: insertsOfLoops([{ lengthMm: 169.5 }], 11.66),
  routeLengthMm: openLengthMm + 169.5,
}

describe('a fingering beside the length model', () => {
  const [openModes, firstModes] = demand(describeFingerings(body, open, [open, first]))

  test('the open route is its own target in both models', () => {
    const none = expect.closeTo(0, 9)
    for (const mode of openModes!.modes)
      expect(mode).toMatchObject({ errorCents: none, lengthModelErrorCents: none, differenceCents: none })
  })

  test('the length model lowers every mode alike, the bore does not', () => {
    const length = firstModes!.modes.map((mode) => mode.lengthModelErrorCents!)
    const bore = firstModes!.modes.slice(1, 8).map((mode) => mode.errorCents!)
    for (const cents of length) expect(cents).toBeCloseTo(length[0]!, 9)
    expect(Math.max(...bore) - Math.min(...bore)).toBeGreaterThan(15)
  })

  test('the difference is the one error less the other', () => {
    for (const mode of firstModes!.modes)
      expect(mode.differenceCents).toBeCloseTo(mode.errorCents! - mode.lengthModelErrorCents!, 9)
  })

  test('a loop without a bore of its own has the valves’', () => {
    expect(insertsOfLoops([{ lengthMm: 5 }, { lengthMm: 6, diameterMm: 12 }], 11.66)).toEqual([
      { lengthMm: 5, diameterMm: 11.66 },
      { lengthMm: 6, diameterMm: 12 },
    ])
  })

  test('a loop that cannot be reckoned is refused', () => {
    const broken = { ...first, inserts: [{ lengthMm: Number.NaN, diameterMm: 12 }] }
    expect(describeFingerings(body, open, [broken])).toMatchObject({
      ok: false,
      refusal: { path: 'inserts[0].lengthMm', found: 'NaN' },
    })
  })
})

describe('the group length of a mode', () => {
  test('of a plain cylinder is its length within three per cent, for every mode', () => {
    const tube = demand(
      prepareBody(
        [
          { kind: 'cylinder', lengthMm: 500, diameterMm: 12 },
          { kind: 'valves', diameterMm: 12 },
          { kind: 'cylinder', lengthMm: 900, diameterMm: 12 },
        ],
        { temperatureC: 24 },
      ),
    )
    const hz = demand(resonancesOf(tube, [])).peaks.map((peak) => peak.hz)
    for (const { groupLengthMm } of demand(groupLengths(tube, [], hz))) {
      expect(groupLengthMm).toBeGreaterThan(1360)
      expect(groupLengthMm).toBeLessThan(1440)
    }
  })

  test('says within two per cent what half a millimetre more and less does', () => {
    const inserts = [{ lengthMm: 100, diameterMm: 11.66 }]
    const hzWith = (lengthMm: number) =>
      demand(resonancesOf(body, [{ lengthMm, diameterMm: 11.66 }]))
        .peaks.slice(1, 9)
        .map(({ hz }) => hz)
    const longer = hzWith(100.5)
    const shorter = hzWith(99.5)
    const lengths = demand(groupLengths(body, inserts, hzWith(100)))
    for (const [i, { centsPerMm }] of lengths.entries())
      expect(Math.abs(centsBetween(shorter[i]!, longer[i]!) / centsPerMm - 1)).toBeLessThan(0.02)
  })

  test('differs from mode to mode by a fifth and more', () => {
    const hz = demand(resonancesOf(body, []))
      .peaks.slice(1, 9)
      .map((peak) => peak.hz)
    const lengths = demand(groupLengths(body, [], hz)).map(({ groupLengthMm }) => groupLengthMm)
    expect(Math.max(...lengths) / Math.min(...lengths)).toBeGreaterThan(1.2)
  })
})
