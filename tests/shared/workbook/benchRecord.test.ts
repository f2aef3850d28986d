import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { speedOfSound } from '#shared/air/speedOfSound.ts'
import type { BenchReading } from '#shared/workbook/bench.ts'
import {
  type Placed,
  pitchChangeOf,
  readingsJobOf,
  slideJobOf,
  type Unplaced,
} from '#shared/workbook/benchJobs.ts'
import { benchRecord } from '#shared/workbook/benchRecord.ts'
import { benchWarnings } from '#shared/workbook/sanity/benchWarnings.ts'
import type { Workbook } from '#shared/workbook/workbook.ts'
import { benchWorkbook, oneOfEach } from '../../fixtures/benchWorkbook.ts'
import { workbookWith } from '../../fixtures/workbooks.ts'

const [slide] = oneOfEach.slides
const [readings] = oneOfEach.readings
const [pitchChange] = oneOfEach.pitchChanges

/** The same design with its main slide set by harmonic 4 for A4 = 435 Hz, its open note 8 cents flat on purpose. */
function tunedWorkbook(): Workbook {
  const workbook = benchWorkbook()
  const tuning = { kind: 'open', harmonic: 4 } as const
  const designs = workbook.designs.map((design) => ({ ...design, tuning, openDetuningCents: -8 }))
  return { ...workbook, reference: { ...workbook.reference, a4Hz: 435 }, designs }
}

function jobOf<Job>(placed: Placed<Job> | Unplaced): Job {
  if (placed.kind !== 'placed') throw new Error(placed.message)
  return placed.job
}

describe('the record of a workbook without a bench', () => {
  it('is empty', () => {
    expect(benchRecord(workbookWith('plain-3'))).toEqual({ slides: [], readings: [], pitchChanges: [] })
  })
})

describe('a slide of the workbook', () => {
  it('has its loop’s length as its target, and the route with its valve down', () => {
    const placed = slideJobOf(benchWorkbook(), slide)
    expect(placed.kind === 'placed' && placed.job.targetMm).toBe(265)
    expect(placed.kind === 'placed' && placed.job.routeLengthMm).toBeCloseTo(1400 + 265, 9)
  })

  // 1400 mm give 123.749 Hz, harmonic 4 494.994 Hz, 23.675 cents above B4: 1400 × 2^(31.675/1200) + 265 = 1690.851
  it('is played in the route that the main slide is set to', () => {
    expect(jobOf(slideJobOf(tunedWorkbook(), slide)).routeLengthMm).toBeCloseTo(1690.8505, 4)
  })

  // 22 + 31 − 14 + 2·60 + 2·6 + π·38/2 = 230.690; (265 − 230.690)/2 = 17.155
  it('is sized by the formula of the file', () => {
    const [record] = benchRecord(benchWorkbook()).slides
    expect(record?.straightEndMm).toBeCloseTo(17.155, 3)
    expect(record?.bowMm).toBeCloseTo(59.69, 2)
    expect(record?.innerLegMm).toBe(59)
    expect(record?.engagedAtTravelMm).toBe(29)
    expect(record?.problems).toEqual([])
  })

  it('takes the habits of the trade for what it leaves out', () => {
    const { id, design, loop, legSpacingMm, outerLegMm, knucklesMm, passagesMm, straightPassageMm } = slide
    const bare = { id, design, loop, legSpacingMm, outerLegMm, knucklesMm, passagesMm, straightPassageMm }
    const workbook = benchWorkbook({ slides: [{ ...bare, boreDiameterMm: 17.2 }] })
    expect(benchRecord(workbook).slides).toEqual(benchRecord(benchWorkbook()).slides)
  })

  it('of a compensating loop is played with both valves down, their own loops in the route', () => {
    const workbook = workbookWith('compensating-4')
    const [design] = workbook.designs
    const loop = design!.loops.find(({ pressed }) => pressed.length === 2)!
    const placed = slideJobOf(workbook, { ...slide, design: 'design', loop: loop.id })
    if (placed.kind !== 'placed') throw new Error(placed.message)
    const own = design!.loops.filter(({ pressed }) => pressed.every((id) => loop.pressed.includes(id)))
    const openMm = readingsJobOf(workbook, readings)
    if (openMm.kind !== 'placed') throw new Error(openMm.message)
    const tubeMm = own.reduce((sum, { lengthMm }) => sum + lengthMm, 0)
    expect(placed.job.routeLengthMm).toBeCloseTo(openMm.job.openLengthMm + tubeMm, 6)
  })

  it.each([
    ['design', { ...slide, design: 'gone' }, '“gone” is no design of this workbook; expected one of design.'],
    ['loop', { ...slide, loop: 'L9' }, '“L9” is no loop of Plain, three valves; expected one of L1, L2, L3.'],
  ])('whose %s is not there has no figures, a problem and a warning', (field, lost, message) => {
    const workbook = benchWorkbook({ slides: [lost] })
    const [record] = benchRecord(workbook).slides
    expect(record).toMatchObject({ targetMm: null, straightEndMm: null, cuts: [], rangeCents: null })
    expect(record?.problems).toEqual([{ kind: 'unplaced', message }])
    expect(benchWarnings(workbook)).toMatchObject([{ path: `bench.slides[0].${field}`, message }])
  })

  it('with a value that no slide can have says which', () => {
    const [record] = benchRecord(benchWorkbook({ slides: [{ ...slide, legSpacingMm: 0 }] })).slides
    expect(record?.problems).toMatchObject([{ kind: 'refused' }])
    expect(record?.problems[0]?.message).toContain('legSpacingMm')
  })

  it('with a likely slip is warned about and calculated as typed', () => {
    const workbook = benchWorkbook({ slides: [{ ...slide, wallMm: 18.2 }] })
    expect(benchWarnings(workbook)[0]).toMatchObject({ path: 'bench.slides[0].wallMm', found: '18.2 mm' })
    expect(benchRecord(workbook).slides[0]?.bowMm).toBeCloseTo(59.69, 2)
  })
})

describe('readings of the workbook', () => {
  // third valve +12: loop = L(2^(288/1200) − 1), wanted the design's 265 of 1400 mm in proportion; both over one L
  it('find the loop against the design’s own, in proportion to the open length found', () => {
    const [record] = benchRecord(benchWorkbook()).readings
    const openMm = record?.openLengthMm?.value ?? 0
    const changeMm = openMm * (265 / 1400 + 1 - 2 ** 0.24)
    expect(record?.loops.L3?.value).toBeCloseTo(openMm * (2 ** 0.24 - 1), 6)
    expect(record?.loops.L3?.changeMm).toBeCloseTo(changeMm, 6)
    expect(record?.loops.L3?.movementMm).toBeCloseTo(changeMm / 2, 6)
  })

  it('find the loop against the exact length where that is wanted', () => {
    const [record] = benchRecord(benchWorkbook({ readings: [{ ...readings, exactWanted: true }] })).readings
    const openMm = record?.openLengthMm?.value ?? 0
    expect(record?.loops.L3?.changeMm).toBeCloseTo(openMm * (2 ** 0.25 - 2 ** 0.24), 6)
  })

  // The fifth valve is made for the fourth’s company, L(2^(7/12) − 2^(5/12)); alone, L(2^(2/12) − 1) is a quarter less.
  it('of an instrument that is as designed ask for no change, its long fifth valve neither', () => {
    const workbook = workbookWith('plain-5')
    const [design] = workbook.designs
    const openMm = (1000 * speedOfSound(workbook.air)) / (2 * 43.654)
    const asDesigned = (pressed: readonly string[]): BenchReading => {
      const loops = design!.loops.filter((loop) => pressed.includes(loop.pressed[0]!))
      const lengthMm = loops.reduce((sum, loop) => sum + loop.lengthMm, openMm)
      const valves = design!.valves.filter(({ id }) => pressed.includes(id))
      const midi = valves.reduce((sum, { semitones }) => sum - semitones, 53)
      const soundingHz = (4 * 43.654 * openMm) / lengthMm
      return { pressed, harmonic: 4, cents: 1200 * Math.log2(soundingHz / (440 * 2 ** ((midi - 69) / 12))) }
    }
    const rows = [[], ['4'], ['4', '5'], ['1']].map(asDesigned)
    const [record] = benchRecord({
      ...workbook,
      bench: { readings: [{ ...readings, rows }] },
    }).readings
    expect(Object.keys(record?.loops ?? {})).toEqual(['L1', 'L4', 'L5'])
    const changesMm = Object.values(record?.loops ?? {}).map(({ changeMm }) => changeMm)
    expect(changesMm).toEqual([0, 0, 0].map((none) => expect.closeTo(none, 4)))
  })

  // 1400 × 2^(8/1200) = 1406.484
  it('start from the open length with its flat note, the main slide where it stands', () => {
    expect(jobOf(readingsJobOf(tunedWorkbook(), readings)).openLengthMm).toBeCloseTo(1406.4843, 4)
  })

  // Cramer at 30 °C, 50 %, 101325 Pa and 0.0004 of CO2
  it('are taken in the air that is played, with the design’s offsets', () => {
    const workbook = benchWorkbook()
    const [design] = workbook.designs
    const instrument = { ...design!.instrument, harmonicOffsetsCents: { 4: 6 } }
    const warm = { ...workbook, air: { ...workbook.air, playingTemperatureC: 30 } }
    const job = jobOf(readingsJobOf({ ...warm, designs: [{ ...design!, instrument }] }, readings))
    expect(job.speedOfSoundMPerS).toBeCloseTo(350.3102, 4)
    expect(job.harmonicOffsetsCents).toEqual({ 4: 6 })
  })

  it('may name valves in any order', () => {
    const rows: readonly BenchReading[] = [
      { pressed: [], harmonic: 4, cents: 0 },
      { pressed: ['3', '1'], harmonic: 4, cents: 30 },
    ]
    const placed = readingsJobOf(benchWorkbook(), { ...readings, rows })
    expect(placed.kind === 'placed' && placed.job.readings[1]?.pressed).toEqual(['1', '3'])
  })

  // Valves of 2, 1 and 4 semitones; 1-3 is meant for 5, so F3 goes down to C3, 440 × 2^(−21/12) Hz
  it('go by the drop that the design gives their fingering', () => {
    const fingerings = [{ pressed: [] }, { pressed: ['1', '3'], semitones: 5 }]
    const valves = [2, 1, 4].map((semitones, i) => ({ id: String(i + 1), semitones }))
    const workbook = workbookWith('plain-3', { valves, fingerings })
    const rows: readonly BenchReading[] = [{ pressed: ['3', '1'], harmonic: 4, cents: 0 }]
    const placed = readingsJobOf(workbook, { ...readings, rows })
    expect(placed.kind === 'placed' && placed.job.readings[0]?.targetHz).toBeCloseTo(440 * 2 ** (-21 / 12), 9)
    expect(placed.kind === 'placed' && placed.job.fingerings).toEqual(fingerings)
  })

  it.each([
    ['design', { ...readings, design: 'gone' }, 'unplaced'],
    ['valve', { ...readings, rows: [{ pressed: ['7'], harmonic: 4, cents: 0 }] }, 'refused'],
    ['row', { ...readings, rows: [] }, 'refused'],
  ])('without a known %s have a remark instead of figures', (_, lost, kind) => {
    const [record] = benchRecord(benchWorkbook({ readings: [lost] })).readings
    expect(record).toMatchObject({ openLengthMm: null, loops: {}, residualsCents: [] })
    expect(record?.remarks[0]).toMatchObject({ kind, rows: [] })
  })

  it('are warned about: an unknown valve, hertz for cents, one figure for all', () => {
    const rows: readonly BenchReading[] = [
      { pressed: ['7'], harmonic: 4, cents: 100 },
      { pressed: ['3'], harmonic: 4, cents: 100 },
    ]
    const paths = benchWarnings(benchWorkbook({ readings: [{ ...readings, rows }] })).map(({ path }) => path)
    const at = 'bench.readings[0].rows'
    expect(paths).toEqual([`${at}[0].pressed`, `${at}[0].cents`, `${at}[1].cents`, at])
  })

  it('are warned about when all that count are one figure, whatever is left out', () => {
    const rows: readonly BenchReading[] = [
      { pressed: [], harmonic: 4, cents: -25 },
      { pressed: ['1'], harmonic: 4, cents: 3, leaveOut: true },
      { pressed: ['3'], harmonic: 4, cents: -25 },
    ]
    expect(benchWarnings(benchWorkbook({ readings: [{ ...readings, rows }] }))).toMatchObject([
      { path: 'bench.readings[0].rows', found: '2 times −25.0 cents' },
    ])
  })
})

describe('a change of pitch of the workbook', () => {
  it('takes 39.8 mm of body and 1, 2, 3 semitones of loop 2.4, 4.9, 7.5 from 452.5 to 440', () => {
    const [record] = benchRecord(benchWorkbook()).pitchChanges
    expect(record?.bodyMm).toBeCloseTo(39.77, 2)
    expect(record?.loops.L2).toBeCloseTo(2.365, 3)
    expect(record?.loops.L1).toBeCloseTo(4.871, 3)
    expect(record?.loops.L3).toBeCloseTo((452.5 / 440 - 1) * 265, 9)
  })

  it('starts from the open length as designed, whatever the main slide does', () => {
    expect(jobOf(pitchChangeOf(tunedWorkbook(), pitchChange)).openLengthMm).toBeCloseTo(1400, 9)
  })

  it('of a design that is gone has no figures, and a warning', () => {
    const workbook = benchWorkbook({ pitchChanges: [{ ...pitchChange, design: 'gone' }] })
    expect(benchRecord(workbook).pitchChanges[0]).toEqual({
      id: 'down to 440',
      bodyMm: null,
      loops: {},
      ifOnlyBodyErrorsCents: {},
    })
    expect(benchWarnings(workbook)[0]?.path).toBe('bench.pitchChanges[0].design')
  })
})

describe('any bench', () => {
  const mm = fc.double({ min: 0, max: 1e6, noNaN: true })
  const anySlide = fc.record({
    legSpacingMm: mm,
    outerLegMm: mm,
    knucklesMm: mm,
    passagesMm: mm,
    straightPassageMm: mm,
    boreDiameterMm: mm,
    travelMm: mm,
    toleranceMm: mm,
    loop: fc.constantFrom('L1', 'L3', 'L9'),
  })
  const anyRow = fc.record({
    pressed: fc.subarray(['1', '2', '3', '7']),
    harmonic: fc.integer({ min: 1, max: 64 }),
    cents: fc.double({ min: -1200, max: 1200, noNaN: true }),
  })

  it('comes to finite figures and whole messages', () => {
    fc.assert(
      fc.property(anySlide, fc.array(anyRow, { maxLength: 6 }), (parts, rows) => {
        const workbook = benchWorkbook({
          slides: [{ ...slide, ...parts }],
          readings: [{ ...readings, rows }],
        })
        const text = JSON.stringify([benchRecord(workbook), benchWarnings(workbook)], (_, value) =>
          typeof value === 'number' && !Number.isFinite(value) ? 'NOT FINITE' : value,
        )
        expect(text).not.toMatch(/NOT FINITE|NaN|Infinity|undefined/)
      }),
      { numRuns: 200 },
    )
  })
})

describe('keys that the file is not known to have', () => {
  const plain = workbookWith('plain-3')
  const [design] = plain.designs
  const withKeys = (loopKeys: object, slideKeys: object) => {
    const loops = design!.loops.map((loop) => ({ ...loop, ...loopKeys }))
    const slides = [{ ...slide, ...slideKeys }]
    return { ...benchWorkbook({ ...oneOfEach, slides }), designs: [{ ...design!, loops }] }
  }
  const known = benchRecord(withKeys({}, {}))

  it.each([
    { held: true },
    { targetMm: 'x' },
    { targetMm: null },
    { targetMm: 900 },
    { wantedFraction: 0.5 },
  ])('change nothing on a loop: %o', (keys) => expect(benchRecord(withKeys(keys, {}))).toEqual(known))

  it.each([
    { partTolerancesMm: null },
    { partTolerancesMm: 'abc' },
    { partTolerancesMm: { straightEndMm: 1e6 } },
    { routeLengthMm: 1 },
    { targetMm: 1 },
  ])('change nothing on a slide: %o', (keys) => expect(benchRecord(withKeys({}, keys))).toEqual(known))
})
