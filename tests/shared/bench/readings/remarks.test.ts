import { describe, expect, it } from 'vitest'
import type { ReadingsJob } from '#shared/bench/readings/reading.ts'
import { fitted, normalNoise, openMm, readingsJob, startLoops } from './bass.ts'

const exact = { openMm, loopsMm: startLoops.map(({ lengthMm }) => lengthMm) as [number, number, number] }
const ten = [
  ['', 4],
  ['', 6],
  ['2', 4],
  ['2', 6],
  ['1', 4],
  ['1', 6],
  ['3', 4],
  ['3', 6],
  ['12', 4],
  ['13', 4],
] as const

const remarks = (job: ReadingsJob) => fitted(job).remarks
const kinds = (job: ReadingsJob) => remarks(job).map(({ kind }) => kind)

/** The same cents for every reading. */
const alike = (job: ReadingsJob, cents: number): ReadingsJob => ({
  ...job,
  readings: job.readings.map((reading) => ({ ...reading, cents })),
})

describe('Readings that are off alike', () => {
  it('flat speak of a leak, the slide or the player before any length', () => {
    const [first] = remarks(alike(readingsJob(exact, ten), -25))
    expect(first?.kind).toBe('alike')
    expect(first?.message).toBe(
      'Every reading is off alike, about −25.0 cents. Look for a leak, the main slide or a low player before you cut any loop.',
    )
  })

  it('sharp speak of the slide, the air or the player', () => {
    expect(remarks(alike(readingsJob(exact, ten), 20))[0]?.message).toContain('warm air')
  })

  it('are seen against the pure harmonics too, as a fifth harmonic is flat by itself', () => {
    const job = readingsJob(
      {
        ...exact,
        openMm: exact.openMm * 1.01,
        loopsMm: exact.loopsMm.map((mm) => mm * 1.01) as [number, number, number],
      },
      [
        ['', 4],
        ['', 5],
        ['1', 4],
        ['1', 5],
      ],
    )
    expect(kinds(job)).toContain('alike')
  })

  // Exact loops make 1-2 +10.6, 2-3 +15.5, 1-3 +30.3 and 1-2-3 +53.6 by themselves: the tuner shows all that less 25.
  it('are seen in a full table, whose combinations are sharp by design', () => {
    const table = ['', '2', '1', '3', '12', '23', '13', '123'].map((fingering) => [fingering, 4] as const)
    const [first] = remarks(readingsJob(exact, table, () => -25))
    expect(first?.message).toMatch(
      /^Every reading is off alike, about −25\.0 cents counted from what the design itself would give\. Look for a leak/,
    )
    expect(first?.rows).toEqual([0, 1, 2, 3, 4, 5, 6, 7])
    expect(kinds(readingsJob(exact, table))).not.toContain('alike')
  })

  it('are seen through the scatter of a player', () => {
    const three = [
      ['', 4],
      ['2', 4],
      ['1', 4],
    ] as const
    const first = remarks(readingsJob(exact, three, (row) => [-20, -25, -30][row]!))[0]
    expect(first?.kind).toBe('alike')
    expect(first?.message).toContain('about −25.0 cents')
    let seen = 0
    for (let seed = 1; seed <= 100; seed += 1) {
      const noise = normalNoise(seed)
      if (kinds(readingsJob(exact, ten, () => 3 * noise() - 25)).includes('alike')) seen += 1
    }
    expect(seen).toBeGreaterThan(90)
  })

  it('are seen beside one slip, which is not counted among them', () => {
    const [first] = remarks(readingsJob(exact, ten, (row) => (row === 6 ? 40 : -25)))
    expect(first?.message).toMatch(
      /^Nearly every reading is off alike, about −25\.0 cents counted from what the design itself would give\./,
    )
    expect(first?.rows).toEqual([0, 1, 2, 3, 4, 5, 7, 8, 9])
  })

  it('are not those of loops alone, when the open instrument is in tune', () => {
    const single = [
      ['', 4],
      ...['1', '2', '3', '12', '13', '23', '123'].map((fingering) => [fingering, 4] as const),
    ] as const
    expect(kinds(readingsJob(exact, single, (row) => (row === 0 ? 0 : -25)))).not.toContain('alike')
    const third = [
      ['', 4],
      ['3', 4],
      ['3', 6],
    ] as const
    expect(kinds(readingsJob(exact, third, (row) => (row === 0 ? 0 : -25)))).not.toContain('alike')
  })

  it('by a few cents are nothing to speak of, nor is one reading alone', () => {
    expect(kinds(alike(readingsJob(exact, ten), -4))).not.toContain('alike')
    expect(kinds(alike(readingsJob(exact, [['', 4]]), -25))).not.toContain('alike')
  })

  it.each([
    [4, true],
    [6, false],
  ])(
    'by 10 cents are spoken of when that is twice the error of a reading: %d cents, %s',
    (error, isSpoken) => {
      const job = { ...alike(readingsJob(exact, ten), -10), readingErrorCents: error }
      expect(kinds(job).includes('alike')).toBe(isSpoken)
    },
  )

  it('are not those of a loop that is wrong by itself', () => {
    const wrong = readingsJob({ ...exact, loopsMm: [exact.loopsMm[0], exact.loopsMm[1], 600] }, ten)
    expect(kinds(wrong)).not.toContain('alike')
  })
})

describe('One reading that is far off', () => {
  it('is named among ten, whichever it is, with what the others say of it', () => {
    // The last two are each the only combination of their kind, but the single valves check them.
    for (let slip = 0; slip < 10; slip += 1) {
      const noise = normalNoise(slip + 1)
      const job = readingsJob(exact, ten, (row) => 1.5 * noise() + (row === slip ? 40 : 0))
      const found = remarks(job).find(({ kind }) => kind === 'farOff')
      expect(found?.rows).toEqual([slip])
      expect(found?.message).toContain(`Reading ${slip + 1} `)
    }
  })

  it('goes away when it is left out, and keeps its residual', () => {
    const job = readingsJob(exact, ten, (row) => (row === 3 ? 40 : 0))
    const readings = job.readings.map((reading, row) =>
      row === 3 ? { ...reading, leaveOut: true } : reading,
    )
    const answer = fitted({ ...job, readings })
    expect(answer.remarks.map(({ kind }) => kind)).not.toContain('farOff')
    expect(answer.residualsCents[3]).toBeCloseTo(40, 6)
  })

  it('is named beside one that alone settles something', () => {
    const job = readingsJob(exact, [...ten, ['1', 9]], (row) => (row === 3 ? 40 : 0))
    expect(remarks(job).find(({ kind }) => kind === 'farOff')?.rows).toEqual([3])
  })

  // Four others of ±10 scatter by sqrt(400/3) = 11.547: 48·sqrt(4/5)/11.547 = 3.72 errors away, 56 makes 4.34
  it.each([
    [48, []],
    [56, [[4]]],
  ])('is judged by the scatter of the others: beside four of ±10 cents, %d', (cents, rows) => {
    const open = Array.from({ length: 5 }, () => ['', 4] as const)
    const found = remarks(readingsJob(exact, open, (row) => [10, -10, 10, -10, cents][row]!))
    expect(found.filter(({ kind }) => kind === 'farOff').map((each) => each.rows)).toEqual(rows)
  })

  it('is not named when either of two could be wrong', () => {
    const job = readingsJob(
      exact,
      [
        ['', 4],
        ['3', 4],
        ['3', 4],
      ],
      (row) => (row === 2 ? 40 : 0),
    )
    const found = remarks(job).find(({ kind }) => kind === 'disagree')
    expect(found?.rows).toEqual([1, 2])
    expect(kinds(job)).not.toContain('farOff')
  })

  it('is not seen in ordinary scatter, save once in a long while', () => {
    let alarms = 0
    for (let seed = 1; seed <= 200; seed += 1) {
      const noise = normalNoise(seed)
      if (kinds(readingsJob(exact, ten, () => 3 * noise())).includes('farOff')) alarms += 1
    }
    expect(alarms).toBeLessThan(10)
  })
})

describe('A change', () => {
  it('that may be nothing is said to be so', () => {
    const found = remarks(readingsJob(exact, ten)).filter(({ kind }) => kind === 'withinDoubt')
    expect(found).toHaveLength(3)
  })

  // L3 is known to 10.64 mm, sqrt(6.848² + 8.144²) of 3 cents on 3951.6 and 4699.3 mm: twice that is 21.28
  it.each([
    [21, 'Loop L3 asks for 21.0 ± 10.6 mm of tube, which may be nothing. Take more readings before you cut.'],
    [22, undefined],
  ])('may be nothing within two standard errors, and not beyond: %d mm', (moreMm, message) => {
    const job = readingsJob(exact, [
      ['', 4],
      ['3', 4],
    ])
    const loops = job.loops.map((loop) => ({ ...loop, targetMm: loop.lengthMm + moreMm }))
    const found = remarks({ ...job, loops }).find(({ kind }) => kind === 'withinDoubt')
    expect(found?.message).toBe(message)
  })

  it('to a loop that comes out shorter than nothing asks for the slip', () => {
    const job = readingsJob(exact, [
      ['', 4],
      ['1', 4],
    ])
    const readings = job.readings.map((reading, row) => (row === 1 ? { ...reading, cents: 260 } : reading))
    expect(kinds({ ...job, readings })).toContain('negativeLength')
  })
})
