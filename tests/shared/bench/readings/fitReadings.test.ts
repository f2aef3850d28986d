import { describe, expect, it } from 'vitest'
import { fitReadings } from '#shared/bench/readings/fitReadings.ts'
import type { ReadingsJob } from '#shared/bench/readings/reading.ts'
import { readingsRecord } from '#shared/bench/readings/readingsRecord.ts'
import { fitted, normalNoise, openMm, readingsJob, startLoops, type TrueBass } from './bass.ts'

const bass: TrueBass = { openMm: 3975, loopsMm: [480, 240, 730], offsetsCents: { 3: 4, 5: -6 } }
const everyFingering = ['', '2', '1', '12', '23', '13', '123']
const twoWays = everyFingering.flatMap((fingering) =>
  [3, 4, 5].map((harmonic) => [fingering, harmonic] as const),
)

describe('Readings that cannot be worked with', () => {
  const job = readingsJob(bass, [
    ['', 4],
    ['3', 4],
  ])
  const refused = (change: Partial<ReadingsJob>) => {
    const answer = fitReadings({ ...job, ...change })
    return answer.kind === 'refused' ? answer.findings.map(({ field }) => field) : []
  }
  const [first] = job.readings

  it('are refused by their field', () => {
    expect(refused({ readings: [] })).toEqual(['readings'])
    expect(refused({ readings: [{ ...first!, leaveOut: true }] })).toEqual(['readings'])
    expect(refused({ readings: [{ ...first!, cents: Number.NaN }] })).toEqual(['readings[0].cents'])
    expect(refused({ readings: [{ ...first!, harmonic: 2.5 }] })).toEqual(['readings[0].harmonic'])
    expect(refused({ readings: [{ ...first!, pressed: ['7'] }] })).toEqual(['readings[0].pressed'])
    for (const field of ['openLengthMm', 'openTargetMm', 'speedOfSoundMPerS', 'readingErrorCents'])
      expect(refused({ [field]: 0 })).toEqual([field])
  })

  it('are refused where an ascending valve would take more off than there is', () => {
    const loops = [{ id: 'up', lengthMm: openMm + 100, pressed: [], released: ['1'] }]
    expect(refused({ loops, readings: [{ ...first!, pressed: ['1'] }] })).toEqual(['readings[0].pressed'])
  })
})

describe('One loop and two readings at the same harmonic', () => {
  // open 0 at harmonic 4, third valve +12: loop = L(2^((300 − 12)/1200) − 1) = L × 0.180993, wanted L × 0.189207
  const row = (pressed: string[], targetHz: number, cents: number) => ({
    pressed,
    harmonic: 4,
    targetHz,
    cents,
  })
  const hz = (4 * 345_000) / (2 * openMm)
  const answer = fitted({
    ...readingsJob(bass, []),
    readings: [row([], hz, 0), row(['3'], hz / 2 ** (3 / 12), 12)],
  })

  it('give the loop, and how much longer it must be', () => {
    expect(answer.openLengthMm?.value).toBeCloseTo(openMm, 6)
    expect(answer.loops.L3?.value).toBeCloseTo(openMm * 0.180993, 1)
    expect(answer.loops.L3?.changeMm).toBeCloseTo(openMm * (2 ** 0.25 - 2 ** 0.24), 6)
    expect(answer.loops.L3?.movementMm).toBeCloseTo((openMm * (2 ** 0.25 - 2 ** 0.24)) / 2, 6)
  })

  // 3 cents of each reading: route 3951.6 × 1.181 × ln2/1200 × 3 = 8.087, open 6.848: together sqrt(8.087² + 6.848²) = 10.6
  it('say how sure that is', () => {
    expect(answer.openLengthMm?.standardError).toBeCloseTo(6.848, 2)
    expect(answer.loops.L3?.standardError).toBeCloseTo(10.596, 1)
    // the change is 2^(3/12)·open − route: sqrt((1.18921 × 6.848)² + 8.087²) = 11.476
    expect(answer.loops.L3?.changeStandardErrorMm).toBeCloseTo(11.4765, 3)
    expect(answer.degreesOfFreedom).toBe(0)
    expect(answer.remarks.map(({ kind }) => kind)).toContain('unchecked')
  })

  it('speak only of the loop that they use', () => {
    expect(Object.keys(answer.loops)).toEqual(['L3'])
    expect(answer.notToldApart).toEqual([])
  })
})

describe('Readings without noise', () => {
  const answer = fitted(readingsJob(bass, twoWays))

  // From 12 m the first step would be 12000·ln(12000/3975), more than there is.
  it('give back what they were made from, from a start that is far off, short or long', () => {
    const far = {
      ...readingsJob(bass, twoWays),
      openLengthMm: 3000,
      loops: startLoops.map((loop) => ({ ...loop, lengthMm: 10 })),
    }
    for (const found of [answer, fitted(far), fitted({ ...far, openLengthMm: 12_000 })]) {
      expect(found.converged).toBe(true)
      // The reference is harmonic 3, the lowest of equals, so its 4 cents count as length.
      expect(found.openLengthMm?.value).toBeCloseTo(3975 * 2 ** (-4 / 1200), 5)
      expect(found.loops.L1?.value).toBeCloseTo(480 * 2 ** (-4 / 1200), 5)
      expect(found.harmonicOffsetsCents['5']?.value).toBeCloseTo(-10, 6)
    }
  })

  it('leave no residuals', () => {
    expect(Math.max(...answer.residualsCents.map(Math.abs))).toBeLessThan(1e-6)
  })

  it('with the reference’s offset given, give the lengths themselves', () => {
    const given = fitted({ ...readingsJob(bass, twoWays), harmonicOffsetsCents: { 3: 4 } })
    expect(given.openLengthMm?.value).toBeCloseTo(3975, 5)
    expect(given.loops.L3?.value).toBeCloseTo(730, 5)
    expect(given.harmonicOffsetsCents['5']?.value).toBeCloseTo(-6, 6)
  })
})

describe('Readings with noise', () => {
  it('come back within their standard errors: two in three within one, nineteen in twenty within two', () => {
    const seeds = 400
    const away: number[] = []
    for (let seed = 1; seed <= seeds; seed += 1) {
      const noise = normalNoise(seed)
      const found = fitted({
        ...readingsJob(bass, twoWays, () => 2 * noise()),
        harmonicOffsetsCents: { 3: 4 },
        readingErrorCents: 2,
      })
      const [first, second, third] = bass.loopsMm
      const pairs = [
        [found.openLengthMm!, bass.openMm],
        [found.loops.L1!, first],
        [found.loops.L2!, second],
        [found.loops.L3!, third],
        [found.harmonicOffsetsCents['5']!, -6],
      ] as const
      away.push(...pairs.map(([{ value, standardError }, truth]) => Math.abs(value - truth) / standardError))
    }
    const share = (errors: number) => away.filter((z) => z <= errors).length / away.length
    // 68.3 and 95.4 per cent of a normal law; a little more, since scatter widens the errors and never narrows them
    expect(share(1)).toBeGreaterThan(0.66)
    expect(share(1)).toBeLessThan(0.78)
    expect(share(2)).toBeGreaterThan(0.945)
    expect(share(2)).toBeLessThan(0.985)
  })

  const thrice = (readingErrorCents: number) => ({
    ...readingsJob(
      bass,
      ['', '', ''].map((open) => [open, 4] as const),
      (row) => [9, -9, 0][row]!,
    ),
    readingErrorCents,
  })

  // sqrt((9² + 9²)/(3 − 1)) = 9 cents, by √3 and × 3975 × ln2/1200: 11.931 mm; of 20 cents 26.513
  it('widen the standard errors when they scatter more than was stated', () => {
    const found = fitted(thrice(2))
    expect(found.readingErrorCents).toBeCloseTo(9, 9)
    expect(found.openLengthMm?.standardError).toBeCloseTo(11.931, 3)
    expect(fitted(thrice(20)).readingErrorCents).toBe(20)
    expect(fitted(thrice(20)).openLengthMm?.standardError).toBeCloseTo(26.5125, 3)
  })

  it('widen nothing by one that is left out', () => {
    const job = thrice(2)
    const readings = [...job.readings, { ...job.readings[0]!, cents: 50, leaveOut: true }]
    expect(fitted({ ...job, readings }).readingErrorCents).toBeCloseTo(9, 9)
  })
})

describe('What readings cannot tell apart', () => {
  it('is named and given no value: a loop read only where no other fingering was', () => {
    const found = fitted(
      readingsJob(bass, [
        ['', 4],
        ['1', 4],
        ['3', 6],
      ]),
    )
    expect(found.notToldApart).toEqual([['loop L3', 'harmonic 6']])
    expect(found.loops.L3).toBeUndefined()
    expect(found.harmonicOffsetsCents['6']).toBeUndefined()
    expect(found.loops.L1?.value).toBeCloseTo(480, 6)
    expect(found.remarks.find(({ kind }) => kind === 'notToldApart')?.message).toContain(
      'loop L3 from harmonic 6',
    )
  })

  it('is told when the offsets are taken as given', () => {
    const found = fitted({
      ...readingsJob(bass, [
        ['', 4],
        ['1', 4],
        ['3', 6],
      ]),
      offsetsHeld: true,
    })
    expect(found.notToldApart).toEqual([])
    expect(found.loops.L3?.value).toBeCloseTo(730, 6)
  })

  it('is the open length from a loop when the open instrument was not read', () => {
    const found = fitted(readingsJob(bass, [['1', 4]]))
    expect(found.openLengthMm).toBeNull()
    expect(found.notToldApart).toEqual([['the open length', 'loop L1']])
    expect(readingsRecord(found)).toMatchObject({ openLengthMm: null, loops: {} })
  })

  it('is never the open length when the open instrument was read, though on a harmonic of its own', () => {
    const found = fitted(
      readingsJob(bass, [
        ['', 4],
        ['1', 3],
        ['2', 3],
        ['3', 3],
      ]),
    )
    expect(found.referenceHarmonic).toBe(4)
    expect(found.openLengthMm?.value).toBeCloseTo(3975, 5)
  })

  it('is nothing when the combinations give the open length away', () => {
    const found = fitted(
      readingsJob({ openMm: 3975, loopsMm: [480, 240, 730] }, [
        ['1', 4],
        ['2', 4],
        ['12', 4],
      ]),
    )
    expect(found.openLengthMm?.value).toBeCloseTo(3975, 4)
    expect(found.openLengthMm!.standardError).toBeGreaterThan(10)
  })

  it('are two groups when two things are hidden', () => {
    const found = fitted(
      readingsJob(bass, [
        ['', 4],
        ['1', 5],
        ['3', 6],
      ]),
    )
    expect(found.notToldApart).toEqual([
      ['loop L1', 'harmonic 5'],
      ['loop L3', 'harmonic 6'],
    ])
  })
})

describe('What is known beforehand', () => {
  const answerOf = (readingErrorCents: number) =>
    fitted({ ...readingsJob(bass, twoWays), readingErrorCents }).loops
  it('is not asked for', () => {
    const job = readingsJob({ openMm, loopsMm: [480, 240, 730] }, [
      ['13', 4],
      ['23', 4],
    ])
    const loops = job.loops.map((loop) => (loop.id === 'L3' ? { ...loop, lengthMm: 730, held: true } : loop))
    const found = fitted({ ...job, loops, openHeld: true })
    expect(found.openLengthMm).toEqual({ value: openMm, standardError: 0 })
    expect(Object.keys(found.loops)).toEqual(['L1', 'L2'])
    expect(found.loops.L2?.value).toBeCloseTo(240, 6)
  })

  it('leaves no offset as given where the open length is known: each is read by itself', () => {
    const ways = ['', '3'].flatMap((fingering) => [4, 6].map((harmonic) => [fingering, harmonic] as const))
    const job = readingsJob({ openMm, loopsMm: [480, 240, 730] }, ways)
    const readings = job.readings.map((reading) => ({ ...reading, cents: reading.cents + 10 }))
    const found = fitted({ ...job, readings, openHeld: true })
    expect(found.loops.L3?.value).toBeCloseTo(730, 6)
    expect(found.harmonicOffsetsCents).toMatchObject({
      4: { value: expect.closeTo(10, 6) },
      6: { value: expect.closeTo(10, 6) },
    })
    expect(found.residualsCents.every((cents) => Math.abs(cents) < 1e-6)).toBe(true)
    expect(found.remarks.map(({ kind }) => kind)).not.toContain('reference')
  })

  it('can be a target: the change is target less found, and as uncertain as what was found', () => {
    const job = readingsJob(bass, twoWays)
    const loops = job.loops.map((loop) => ({ ...loop, targetMm: 500 }))
    const { L1 } = fitted({ ...job, loops }).loops
    expect(L1?.changeMm).toBe(500 - L1!.value)
    expect(L1?.changeStandardErrorMm).toBeCloseTo(L1!.standardError, 12)
  })

  it('can be a share of the open length found, told beside the length that is exact', () => {
    const job = readingsJob(bass, twoWays)
    const loops = job.loops.map((loop) => ({ ...loop, wantedFraction: 0.2 }))
    const found = fitted({ ...job, loops })
    const openMm = found.openLengthMm!.value
    expect(found.loops.L1?.targetMm).toBeCloseTo(0.2 * openMm, 9)
    expect(found.loops.L1?.exactMm).toBeCloseTo((2 ** (2 / 12) - 1) * openMm, 6)
    expect(fitted({ ...job, loops, openTargetMm: 4000 }).loops.L1?.targetMm).toBeCloseTo(800, 9)
  })

  it('is cut to at first with two standard errors to spare, and never less than the bench leaves over', () => {
    const { L3 } = answerOf(3)
    expect(L3?.firstCutMm).toBeCloseTo(L3!.targetMm! + 2 * L3!.changeStandardErrorMm!, 9)
    const sure = answerOf(0.1).L3
    expect(sure?.changeStandardErrorMm).toBeLessThan(1)
    expect(sure?.firstCutMm).toBeCloseTo(sure!.targetMm! + 2, 9)
  })

  it('gives a loop that would have to be shorter than nothing no length to be exact at', () => {
    const job = readingsJob(bass, twoWays)
    const { L2 } = fitted({ ...job, fingerings: [{ pressed: ['2'], semitones: -1 }] }).loops
    expect(L2).toMatchObject({ exactMm: null, targetMm: null, changeMm: null })
  })

  it('can be the open length that the loops are to go with', () => {
    const { L2 } = fitted({ ...readingsJob(bass, twoWays), openTargetMm: 4000 }).loops
    expect(L2?.targetMm).toBeCloseTo(4000 * (2 ** (1 / 12) - 1), 9)
  })
})

it('An ascending valve’s loop, which lies in the open route, is found too', () => {
  const [third] = startLoops.slice(2)
  const job = readingsJob(bass, [])
  const loops = [{ id: 'up', lengthMm: 200, pressed: [], released: ['1'] }, third!]
  const valvesUp = [{ id: '1', semitones: -1 }, ...job.valves.slice(1)]
  const row = (pressed: string[], routeMm: number) => ({
    pressed,
    harmonic: 4,
    targetHz: 174,
    cents: 1200 * Math.log2(690_000 / routeMm / 174),
  })
  const found = fitted({ ...job, valves: valvesUp, loops, readings: [row([], 3950), row(['1'], 3750)] })
  expect(found.loops.up?.value).toBeCloseTo(200, 6)
  expect(found.loops.up?.targetMm).toBeCloseTo(3950 * (1 - 2 ** (-1 / 12)), 6)
})
