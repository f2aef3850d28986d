import { describe, expect, it } from 'vitest'
import { prepareBody } from '#shared/bore/body.ts'
import type { BoreFingering } from '#shared/bore/fingeringModes.ts'
import { impedanceCurve } from '#shared/bore/inputImpedance.ts'
import type { BoreSection } from '#shared/bore/section.ts'
import { systems } from '#shared/valves/systems/systems.ts'
import { designFromSystem, emptyWorkbook } from '#shared/workbook/newWorkbook.ts'
import { drawnBore, movableJoints } from '../../src-renderer/bore/drawingScale.ts'
import { bodyLengthKey, freedomsOf } from '../../src-renderer/bore/fit/freedoms.ts'
import { changedKind, newSection } from '../../src-renderer/bore/newSection.ts'
import { largestDifference, modelsColumns } from '../../src-renderer/bore/pictures/modelsColumns.ts'
import { roomyRange, ticksWithin } from '../../src-renderer/bore/pictures/ticks.ts'
import { setMeasuredBore, usualValvesMm } from '../../src-renderer/bore/profileBore.ts'
import { type BoreQuestion, describeBore } from '../../src-renderer/worker/boreAnswer.ts'
import { sumBore } from '../../src-renderer/worker/sumAnswer.ts'
import { demand, highBore } from '../shared/bore/bores.ts'

const conditions = { temperatureC: 26.85 }
const body = prepareBody(highBore, conditions, { highestMode: 16 })
const open: BoreFingering = { fingering: '0', semitones: 0, inserts: [], routeLengthMm: 1400 }
const second = {
  fingering: '2',
  semitones: 1,
  inserts: [{ lengthMm: 82.3, diameterMm: 11.66 }],
  routeLengthMm: 1482.3,
}
const question: BoreQuestion = {
  bodyKey: '1',
  highestMode: 16,
  open,
  fingerings: [open, second],
  drawn: ['2'],
  points: 400,
}
const answer = demand(await describeBore(question, body, () => undefined))

describe('what the worker says of a bore', () => {
  it('has the modes of every fingering and the curves of those drawn, on common frequencies', () => {
    expect(answer.modes.map(({ fingering }) => fingering)).toEqual(['0', '2'])
    expect(answer.curves.map(({ fingering }) => fingering)).toEqual(['2'])
    expect(answer.hz).toHaveLength(400)
    expect(answer.curves[0]?.magnitude).toHaveLength(400)
  })

  // Nothing in a bore gives power, and between its resonances little is lost: almost a mass there, almost a spring.
  it('has a phase that comes near ±90° and never leaves them', () => {
    const phases = [...answer.curves[0]!.phaseDegrees]
    const [least, most] = [Math.min(...phases), Math.max(...phases)]
    expect(least).toBeGreaterThanOrEqual(-90)
    expect(least).toBeLessThan(-75)
    expect(most).toBeGreaterThan(75)
    expect(most).toBeLessThanOrEqual(90)
  })

  it('has magnitude in MPa·s/m³ and phase in degrees of the impedance', () => {
    const { re, im } = demand(impedanceCurve(demand(body), second.inserts, question.points))
    const [curve] = answer.curves
    for (const [i, degrees] of curve!.phaseDegrees.entries()) {
      const phase = (degrees * Math.PI) / 180
      expect((curve!.magnitude[i]! * Math.cos(phase)) / (re[i]! / 1e6)).toBeCloseTo(1, 6)
      expect(curve!.magnitude[i]! * Math.sin(phase)).toBeCloseTo(im[i]! / 1e6, 6)
    }
  })

  it('tells how many fingerings are done when there are many', async () => {
    const told: number[][] = []
    const many = Array.from({ length: 40 }, (_, i) => ({ ...second, fingering: `${i}` }))
    await describeBore({ ...question, fingerings: many }, body, (done, of) => told.push([done, of]))
    expect(told).toEqual([
      [0, 40],
      [16, 40],
      [32, 40],
      [40, 40],
    ])
  })

  it('passes a refusal on', async () => {
    const refused = prepareBody([], conditions)
    expect(await describeBore(question, refused, () => undefined)).toMatchObject({ ok: false })
    expect(sumBore({ ...question, weights: [1], firstMode: 2, lastMode: 4 }, refused)).toMatchObject({
      ok: false,
    })
  })

  it('gives a playing pitch for each mode drawn of the weighted sum', () => {
    const sums = demand(sumBore({ ...question, weights: [1, 1], firstMode: 2, lastMode: 6 }, body))
    expect(sums.curves.map(({ pitches }) => pitches.length)).toEqual([6, 6])
    // Mode 2 lies near 220 Hz with the second valve: the curve begins below it, and ends above mode 6.
    expect(sums.hz[0]).toBeGreaterThan(100)
    expect(sums.hz[0]).toBeLessThan(221)
    expect(sums.hz.at(-1)).toBeGreaterThan(660)
    expect(sums.openPitches).toEqual(sums.curves[0]?.pitches)
  })
})

describe('the picture of both models', () => {
  it('measures both from the open route, which has no error in either', () => {
    const [first] = modelsColumns(answer.modes, [2, 8], 'target')
    expect(first?.barCents).toBe(0)
    expect(first?.marks.map(({ mode }) => mode)).toEqual([2, 3, 4, 5, 6, 7, 8])
    expect(first?.marks.every(({ cents }) => Math.abs(cents) < 1e-9)).toBe(true)
  })

  it('has one bar for the length model and the same difference whatever it is drawn against', () => {
    const against = modelsColumns(answer.modes, [2, 8], 'target')[1]!
    const apart = modelsColumns(answer.modes, [2, 8], 'lengthModel')[1]!
    expect(apart.barCents).toBe(0)
    for (const [i, { cents }] of apart.marks.entries())
      expect(cents).toBeCloseTo(against.marks[i]!.cents - against.barCents!, 9)
    const most = largestDifference(answer.modes, [2, 8])
    expect(most?.fingering).toBe('2')
    expect(Math.abs(most!.cents)).toBe(Math.max(...apart.marks.map(({ cents }) => Math.abs(cents))))
  })
})

describe('where the models differ most', () => {
  const mode = (number: number, differenceCents: number | null) => ({
    ...answer.modes[0]!.modes[0]!,
    mode: number,
    differenceCents,
  })
  const modes = [{ ...answer.modes[0]!, modes: [mode(2, 3), mode(3, null), mode(4, -5), mode(9, 40)] }]

  it('is the farthest either way, among the modes that are shown', () => {
    expect(largestDifference(modes, [2, 8])).toMatchObject({ mode: 4, cents: -5 })
    expect(largestDifference(modes, [2, 3])).toMatchObject({ mode: 2, cents: 3 })
    expect(largestDifference(modes, [3, 3])).toBeNull()
  })
})

describe('the drawing of a bore', () => {
  it('has the same scale along and across unless diameters are stretched', () => {
    const drawn = drawnBore(highBore, 600, false)
    expect(drawn.stretch).toBe(1)
    expect(2 * drawn.mouthHalfPx).toBeCloseTo(122 * drawn.pxPerMm, 9)
    expect(drawnBore(highBore, 600, true).stretch).toBeGreaterThan(1)
  })

  it('has no more points than an eye can tell apart, the last among them', () => {
    const points = Array.from({ length: 4001 }, (_, i) => [i / 4, i < 4000 ? 12 : 12.2] as const)
    const drawn = drawnBore([{ kind: 'profile', points }], 632, false)
    expect(drawn.mouthHalfPx).toBeCloseTo(6.1 * 0.6, 9)
    expect(drawn.upper).toMatch(/L616\.00 \d+\.\d+$/)
    expect(drawn.upper.split('L').length).toBeLessThan(1600)
  })

  it('has joints to move only between sections that have a length to give', () => {
    const drawn = drawnBore(highBore, 600, false)
    expect(movableJoints(highBore, drawn).map(({ index, next }) => [index, next])).toEqual([
      [1, 2],
      [2, 3],
      [3, 5],
      [5, 6],
    ])
    const profile: BoreSection = {
      kind: 'profile',
      points: [
        [0, 10],
        [500, 12],
      ],
    }
    const measured = [profile, ...highBore.slice(4)]
    expect(movableJoints(measured, drawnBore(measured, 600, false)).map(({ index }) => index)).toEqual([2])
  })

  it('has ticks at round values, and a range with room', () => {
    expect(ticksWithin(-31, 58, 6).values).toEqual([-20, 0, 20, 40])
    expect(ticksWithin(0.1, 0.37, 5)).toEqual({ values: [0.1, 0.2, 0.30000000000000004], digits: 1 })
    expect(roomyRange([], 20)).toEqual([-11.6, 11.6])
  })
})

describe('sections', () => {
  it('go on where the one before ends', () => {
    expect(newSection('cone', highBore[3])).toMatchObject({ startDiameterMm: 11.66, endDiameterMm: 11.66 })
    expect(newSection('bell', highBore[5])).toMatchObject({ startDiameterMm: 11.66, endDiameterMm: 23.32 })
  })

  it('keep length, ends and name when their kind changes', () => {
    const named = { kind: 'cone', lengthMm: 9, startDiameterMm: 4, endDiameterMm: 3, name: 'throat' } as const
    expect(changedKind(named, 'bell')).toEqual({ ...named, kind: 'bell', endDiameterMm: 4, flare: 0.7 })
    expect(changedKind(named, 'cylinder')).toEqual({
      kind: 'cylinder',
      lengthMm: 9,
      diameterMm: 4,
      name: 'throat',
    })
  })

  it('are free in lengths, flare and volume, the plain tube behind the valves first', () => {
    expect(freedomsOf(highBore).map(({ key }) => key)).toEqual([
      '0 volumeMm3',
      '1 lengthMm',
      '2 lengthMm',
      '3 lengthMm',
      '5 lengthMm',
      '6 lengthMm',
      '6 flare',
    ])
    expect(bodyLengthKey(highBore)).toBe('5 lengthMm')
    expect(bodyLengthKey([])).toBe(null)
    const tube = (lengthMm: number) => ({ kind: 'cylinder', lengthMm, diameterMm: 12 }) as const
    const valves = { kind: 'valves', diameterMm: 12 } as const
    expect(bodyLengthKey([tube(900), valves, tube(100), tube(200)])).toBe('3 lengthMm')
    expect(bodyLengthKey([tube(100), tube(900), valves])).toBe('1 lengthMm')
  })
})

describe('a measured profile as a whole bore', () => {
  const profile = {
    kind: 'profile',
    points: [
      [10, 10],
      [510, 12],
      [1010, 100],
    ],
  } as const

  it('is parted at the valves, which have its diameter there', () => {
    const empty = emptyWorkbook('bench')
    const design = designFromSystem(empty, systems[0]!, { fundamentalHz: 116 }, 'a')
    const command = setMeasuredBore('a', profile, 250)
    const measured = command.apply({ ...empty, designs: [design] })
    expect(command.undo).toBe('record')
    expect(measured.designs[0]?.bore?.sections).toEqual([
      {
        ...profile,
        points: [
          [10, 10],
          [260, 11],
        ],
      },
      { kind: 'valves', diameterMm: 11 },
      {
        ...profile,
        points: [
          [260, 11],
          [510, 12],
          [1010, 100],
        ],
      },
    ])
  })

  it('has its valves a fifth along unless told', () => {
    expect(usualValvesMm(profile)).toBe(200)
  })
})
