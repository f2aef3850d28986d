import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { changePitch, pitchChangeRecord } from '#shared/bench/pitchChange.ts'
import published from '../../fixtures/bench.published.json'

const valves = [
  { id: '1', semitones: 2 },
  { id: '2', semitones: 1 },
  { id: '3', semitones: 3 },
]
const exactLoops = valves.map(({ id, semitones }) => ({
  id: `L${id}`,
  lengthMm: 1400 * (2 ** (semitones / 12) - 1),
  pressed: [id],
}))
const down = {
  fromHz: 452.5,
  toHz: 440,
  openLengthMm: 1400,
  valves,
  loops: exactLoops,
  fingerings: [{ pressed: [] }, { pressed: ['2'] }, { pressed: ['1', '2', '3'] }],
}

describe('A change of pitch', () => {
  it('throws for a pitch or a length that is not above 0', () => {
    expect(() => changePitch({ ...down, toHz: 0 })).toThrow(RangeError)
    expect(() => changePitch({ ...down, openLengthMm: Number.NaN })).toThrow(RangeError)
  })

  it('throws for a fingering of a valve that does not exist', () => {
    expect(() => changePitch({ ...down, fingerings: [{ pressed: ['9'] }] })).toThrow('No valve 9')
  })

  // q = 452.5/440 = 1.028409; 0.028409 × 1400 = 39.77, × 83.25, 171.44, 264.89 = 2.37, 4.87, 7.53
  it('from 452.5 to 440 Hz with a 1.40 m body takes 39.8 mm there and 2.4, 4.9, 7.5 mm on the loops', () => {
    const { body, loops } = changePitch(down)
    expect(body.tubeMm).toBeCloseTo(39.773, 3)
    expect(body.perLegMm).toBeCloseTo(19.886, 3)
    expect(loops.L2?.tubeMm).toBeCloseTo(2.365, 3)
    expect(loops.L1?.tubeMm).toBeCloseTo(4.87, 2)
    expect(loops.L3?.tubeMm).toBeCloseTo(7.525, 3)
  })

  // before: 1200·log2(1.41421/1.37113) = 53.6; after, loops count for 1/1.02841: 1200·log2(1.41421/1.36088) = 66.6
  it('on the body alone sharpens 1-2-3 by some 13 cents', () => {
    const { beforeErrorsCents, ifOnlyBodyErrorsCents } = changePitch(down)
    expect(beforeErrorsCents['1-2-3']).toBeCloseTo(53.56, 1)
    expect(ifOnlyBodyErrorsCents['1-2-3']! - beforeErrorsCents['1-2-3']!).toBeCloseTo(13, 0)
    expect(ifOnlyBodyErrorsCents['0']).toBe(0)
  })

  // A whole tone of tube for a drop of three semitones is a semitone short.
  it('goes by the drop that a fingering is given', () => {
    const { beforeErrorsCents } = changePitch({ ...down, fingerings: [{ pressed: ['1'], semitones: 3 }] })
    expect(beforeErrorsCents['1']).toBeCloseTo(100, 9)
  })

  // 13 ft is 3962.4 mm; 3962.4 × (435/440 − 1) = −45.03 mm = −1.77 in of tube, −0.886 in on each leg
  it('of a 13 ft bass from 435 to 440 takes off 1.77 in of tube, 0.89 in a leg', () => {
    const { body } = changePitch({ ...down, fromHz: 435, toHz: 440, openLengthMm: 3962.4 })
    expect(body.tubeMm / 25.4).toBeCloseTo(-1.773, 3)
    expect(body.perLegMm / 25.4).toBeCloseTo(-0.886, 3)
  })

  it('agrees with a repair that was published', () => {
    const { fromHz, toHz, openLength, cents, tubeToRemove, tolerance } = published.bass13Feet
    const answer = changePitch({ ...down, fromHz, toHz, openLengthMm: openLength })
    expect(Math.abs(answer.cents - cents)).toBeLessThan(tolerance)
    expect(Math.abs(answer.body.tubeMm + tubeToRemove)).toBeLessThan(tolerance)
  })

  // 2^(−2/12) − 1 = −0.1091
  it('by a whole tone up takes off 10.91 per cent, not 12', () => {
    const { body } = changePitch({ ...down, fromHz: 1, toHz: 2 ** (2 / 12), openLengthMm: 100 })
    expect(body.tubeMm).toBeCloseTo(-10.91, 2)
  })

  // 1400 mm hold 300 of the ascending loop: 0.0284091 × 1400 = 39.77 in all, of which 8.52 on the loop and 31.25 left
  it('counts a loop that lies in the open route in the body’s change, once', () => {
    const up = { id: 'up', lengthMm: 300, pressed: [], released: ['2'] }
    const answer = changePitch({ ...down, loops: [...exactLoops, up] })
    expect(answer.body.tubeMm).toBeCloseTo(39.773, 3)
    expect(answer.loopsInBody).toEqual(['up'])
    expect(answer.loops.up?.tubeMm).toBeCloseTo(8.523, 3)
    expect(answer.bodyItself.tubeMm).toBeCloseTo(31.25, 3)
    expect(answer.bodyItself.perLegMm).toBeCloseTo(15.625, 3)
    expect(pitchChangeRecord(answer).loopsInBody).toEqual(['up'])
    expect(pitchChangeRecord(answer).bodyMm).toBeCloseTo(39.773, 3)
    expect(changePitch(down).bodyItself).toEqual(changePitch(down).body)
    expect(pitchChangeRecord(changePitch(down))).not.toHaveProperty('loopsInBody')
  })

  it('takes in compensating loops, in proportion', () => {
    const loops = [...exactLoops, { id: 'C1', lengthMm: 60, pressed: ['1', '3'] }]
    expect(changePitch({ ...down, loops }).loops.C1?.tubeMm).toBeCloseTo(60 * 0.0284091, 5)
  })

  it('carried out on body and loops leaves every combination as it was', () => {
    const pitch = fc.double({ min: 380, max: 480, noNaN: true })
    fc.assert(
      fc.property(pitch, pitch, (fromHz, toHz) => {
        const { body, loops, beforeErrorsCents } = changePitch({ ...down, fromHz, toHz })
        const changed = exactLoops.map((loop) => ({
          ...loop,
          lengthMm: loop.lengthMm + loops[loop.id]!.tubeMm,
        }))
        const after = changePitch({ ...down, openLengthMm: 1400 + body.tubeMm, loops: changed })
        expect(after.beforeErrorsCents['1-2-3']).toBeCloseTo(beforeErrorsCents['1-2-3']!, 8)
      }),
    )
  })

  it('is recorded in mm of tube', () => {
    const record = pitchChangeRecord(changePitch(down))
    expect(record.bodyMm).toBeCloseTo(39.773, 3)
    expect(record.loops.L3).toBeCloseTo(7.525, 3)
    expect(Object.keys(record.ifOnlyBodyErrorsCents)).toEqual(['0', '2', '1-2-3'])
  })
})
