import { describe, expect, it } from 'vitest'
import type { Bore } from '#shared/workbook/bore.ts'
import { openWorkbook } from '#shared/workbook/openWorkbook.ts'
import { brokenRule } from '#shared/workbook/rules.ts'
import { loosened, workbookWith } from '../../fixtures/workbooks.ts'

const wholeBore: Bore = {
  waveFronts: 'spherical',
  mouth: 'unflanged',
  bellTemperatureC: 22,
  sections: [
    { kind: 'cup', name: 'cup', volumeMm3: 9500 },
    { kind: 'cone', lengthMm: 520, startDiameterMm: 8, endDiameterMm: 17.2 },
    { kind: 'valves', diameterMm: 17.2 },
    { kind: 'cylinder', lengthMm: 150, diameterMm: 17.2 },
    {
      kind: 'profile',
      points: [
        [0, 17.2],
        [1400, 25],
      ],
    },
    { kind: 'bell', lengthMm: 1500, startDiameterMm: 25, endDiameterMm: 370, flare: 0.8 },
  ],
  targets: [{ mode: 2, cents: 3, weight: 2 }, { mode: 4 }],
  harmonicWeights: [1, 1, 0.5],
}

/** A plain four-valve design with every optional part filled in, so that each rule has something to break. */
function whole() {
  const value = loosened(
    workbookWith(
      'plain-4',
      {
        chosen: { '53': { pressed: ['3'], harmonic: 3 } },
        mainSlide: { outMm: 12, travelMm: 60 },
        tuning: { kind: 'open', harmonic: 4 },
        bore: wholeBore,
      },
      {
        fundamentalHz: 43.654,
        boreLengthMm: 3790,
        boreDiameterMm: 17.2,
        transposition: 0,
        harmonics: [2, 12],
        harmonicOffsetsCents: { '5': 3 },
      },
    ),
  )
  value.designs[0].loops[0].slide = { outMm: 5, travelMm: 30 }
  value.bench = {}
  return value
}

const number = (low: string, high: string, unit = '') => `a number from ${low} to ${high}${unit}`
const wholeNumber = (low: number, high: number) => `a whole number from ${low} to ${high}`
const length = 'a length of 0 mm or more'
const temperaments = 'a temperament: equal, just, pythagorean, meantone or custom'
const ofValves = 'one of 1, 2, 3, 4'
const repeat = <T>(count: number, item: (i: number) => T) => Array.from({ length: count }, (_, i) => item(i))

type Whole = ReturnType<typeof whole>
type Break = readonly [path: string, found: string, expected: string, breakIt: (file: Whole) => void]

/** Each rule of a bore broken once. */
function boreBreaks(): readonly Break[] {
  const at = 'designs[0].bore'
  const diameter = number('0.1', '2000', ' mm')
  // biome-ignore lint/suspicious/noExplicitAny: broken files have no type
  const broken = (path: string, found: string, expected: string, breakIt: (bore: any) => void): Break => [
    `${at}.${path}`,
    found,
    expected,
    (f) => breakIt(f.designs[0].bore),
  ]
  return [
    broken('waveFronts', '"round"', 'wave fronts: plane or spherical', (b) => (b.waveFronts = 'round')),
    broken('mouth', '"shut"', 'a mouth: unflanged or open', (b) => (b.mouth = 'shut')),
    broken('bellTemperatureC', '61', number('-30', '60', ' °C'), (b) => (b.bellTemperatureC = 61)),
    broken('sections', 'a list of 401', 'at most 400 sections', (b) => {
      b.sections = repeat(401, () => b.sections[0])
    }),
    broken('sections[1]', 'null', 'a section: cup, cylinder, cone, valves, bell or profile', (b) => {
      b.sections[1] = null
    }),
    broken('sections[1].kind', '"tube"', 'a section: cup, cylinder, cone, valves, bell or profile', (b) => {
      b.sections[1].kind = 'tube'
    }),
    broken('sections[0].name', '""', 'a section name of 1 to 60 characters', (b) => {
      b.sections[0].name = ''
    }),
    broken('sections[0].volumeMm3', '-1', number('0', '1000000000', ' mm³'), (b) => {
      b.sections[0].volumeMm3 = -1
    }),
    broken('sections[1].lengthMm', '-1', length, (b) => (b.sections[1].lengthMm = -1)),
    broken('sections[1].startDiameterMm', '0', diameter, (b) => (b.sections[1].startDiameterMm = 0)),
    broken('sections[1].endDiameterMm', '"8"', diameter, (b) => (b.sections[1].endDiameterMm = '8')),
    broken('sections[2].diameterMm', 'nothing', diameter, (b) => delete b.sections[2].diameterMm),
    broken('sections[3].lengthMm', '1000001', 'a length of at most 1000000 mm', (b) => {
      b.sections[3].lengthMm = 1_000_001
    }),
    broken('sections[3].diameterMm', '2001', diameter, (b) => (b.sections[3].diameterMm = 2001)),
    broken('sections[4].points', 'nothing', 'a list of points', (b) => delete b.sections[4].points),
    broken('sections[4].points', 'a list of 1', 'two points or more', (b) => b.sections[4].points.pop()),
    broken('sections[4].points', 'a list of 100001', 'at most 100000 points', (b) => {
      b.sections[4].points = repeat(100_001, (i) => [i, 12])
    }),
    broken('sections[4].points[1]', 'a list of 1', 'a distance and a diameter, mm', (b) => {
      b.sections[4].points[1] = [5]
    }),
    broken('sections[4].points[1][1]', '0', diameter, (b) => (b.sections[4].points[1][1] = 0)),
    broken('sections[4].points[1][0]', '-5', 'a distance of 0 mm or more', (b) => {
      b.sections[4].points[1][0] = -5
    }),
    broken('sections[5].flare', '0', number('0.05', '20'), (b) => (b.sections[5].flare = 0)),
    broken('sections[5].endDiameterMm', '20', '25 mm or more: a bell widens', (b) => {
      b.sections[5].endDiameterMm = 20
    }),
    broken('sections', 'no place for the valves', 'one place for the valves', (b) => b.sections.splice(2, 1)),
    broken('sections[6]', 'a second place for the valves', 'one place for the valves', (b) => {
      b.sections.push(b.sections[2])
    }),
    broken('sections', '0 mm of tube', 'tube of 1 mm or more', (b) => {
      b.sections = [b.sections[0], b.sections[2]]
    }),
    broken('targets', '2', 'a list of targets', (b) => (b.targets = 2)),
    broken('targets[0]', '2', 'a target: a mode, with cents and weight', (b) => (b.targets = [2])),
    broken('targets[0].mode', '65', wholeNumber(1, 64), (b) => (b.targets = [{ mode: 65 }])),
    broken('targets[1].mode', 'mode 2 again', 'each mode once', (b) => (b.targets[1].mode = 2)),
    broken('targets[0].cents', '1201', number('-1200', '1200', ' cents'), (b) => {
      b.targets[0].cents = 1201
    }),
    broken('targets[0].weight', '-1', number('0', '1000000'), (b) => (b.targets[0].weight = -1)),
    broken('targets', 'no weight above 0', 'one weight above 0', (b) => {
      b.targets = [{ mode: 2, weight: 0 }]
    }),
    broken('harmonicWeights', '"all"', 'a list of weights', (b) => (b.harmonicWeights = 'all')),
    broken('harmonicWeights', 'a list of 41', 'at most 40 weights', (b) => {
      b.harmonicWeights = repeat(41, () => 1)
    }),
    broken('harmonicWeights[1]', '-1', number('0', '1000000'), (b) => (b.harmonicWeights[1] = -1)),
    broken('harmonicWeights', 'no weight above 0', 'one weight above 0', (b) => {
      b.harmonicWeights = [0, 0]
    }),
  ]
}

const breaks: readonly Break[] = [
  ['version', '0', '1, the first version', (f) => (f.version = 0)],
  ['version', '1.5', 'a whole number up to 1', (f) => (f.version = 1.5)],
  ['version', 'nothing', 'a whole number up to 1', (f) => delete f.version],
  ['name', 'nothing', 'text', (f) => delete f.name],
  ['notes', '7', 'text', (f) => (f.notes = 7)],
  ['reference', 'nothing', 'a reference pitch', (f) => delete f.reference],
  ['reference.a4Hz', '379.9', number('380', '480', ' Hz'), (f) => (f.reference.a4Hz = 379.9)],
  ['reference.a4Hz', '480.1', number('380', '480', ' Hz'), (f) => (f.reference.a4Hz = 480.1)],
  ['reference.a4Hz', '"440"', number('380', '480', ' Hz'), (f) => (f.reference.a4Hz = '440')],
  ['reference.temperament', 'nothing', temperaments, (f) => delete f.reference.temperament],
  ['reference.temperament.kind', '"odd"', temperaments, (f) => (f.reference.temperament.kind = 'odd')],
  [
    'reference.temperament.key',
    '"H"',
    'a key note, C to B, with ♯ or ♭ if need be',
    (f) => (f.reference.temperament = { kind: 'just', key: 'H' }),
  ],
  [
    'reference.temperament.cents',
    'a list of 11',
    'a list of 12 cents values',
    (f) => (f.reference.temperament = { kind: 'custom', cents: repeat(11, () => 0) }),
  ],
  [
    'reference.temperament.cents[3]',
    '101',
    number('-100', '100', ' cents'),
    (f) => (f.reference.temperament = { kind: 'custom', cents: repeat(12, (i) => (i === 3 ? 101 : 0)) }),
  ],
  ['air', 'a list of 0', 'the air', (f) => (f.air = [])],
  ['air.temperatureC', '81', number('-40', '80', ' °C'), (f) => (f.air.temperatureC = 81)],
  ['air.playingTemperatureC', '-41', number('-40', '80', ' °C'), (f) => (f.air.playingTemperatureC = -41)],
  ['air.relativeHumidity', '50', number('0', '1'), (f) => (f.air.relativeHumidity = 50)],
  ['air.co2Fraction', '0.3', number('0', '0.2'), (f) => (f.air.co2Fraction = 0.3)],
  ['air.pressurePa', '1013', number('20000', '200000', ' Pa'), (f) => (f.air.pressurePa = 1013)],
  ['designs', 'an object', 'a list of designs', (f) => (f.designs = {})],
  ['designs', 'a list of 101', 'at most 100 designs', (f) => (f.designs = repeat(101, () => f.designs[0]))],
  ['designs[0]', 'null', 'a design', (f) => (f.designs[0] = null)],
  ['designs[0].id', '""', 'a design id of 1 to 60 characters', (f) => (f.designs[0].id = '')],
  ['designs[1].id', '"design" again', 'an id used once', (f) => f.designs.push(f.designs[0])],
  ['designs[0].name', 'nothing', 'text', (f) => delete f.designs[0].name],
  ['designs[0].instrument', 'nothing', 'an instrument', (f) => delete f.designs[0].instrument],
  [
    'designs[0].instrument.fundamentalHz',
    '9.9',
    number('10', '2000', ' Hz'),
    (f) => (f.designs[0].instrument.fundamentalHz = 9.9),
  ],
  [
    'designs[0].instrument.fundamentalHz',
    '2001',
    number('10', '2000', ' Hz'),
    (f) => (f.designs[0].instrument.fundamentalHz = 2001),
  ],
  ['designs[0].instrument.boreLengthMm', '-1', length, (f) => (f.designs[0].instrument.boreLengthMm = -1)],
  [
    'designs[0].instrument.boreDiameterMm',
    '0',
    number('0.1', '2000', ' mm'),
    (f) => (f.designs[0].instrument.boreDiameterMm = 0),
  ],
  [
    'designs[0].instrument.transposition',
    '1.5',
    wholeNumber(-60, 60),
    (f) => (f.designs[0].instrument.transposition = 1.5),
  ],
  [
    'designs[0].instrument.harmonics',
    'a list of 1',
    'two harmonic numbers, the first and the last',
    (f) => (f.designs[0].instrument.harmonics = [2]),
  ],
  [
    'designs[0].instrument.harmonics',
    '[12, 2]',
    'the first harmonic not above the last',
    (f) => (f.designs[0].instrument.harmonics = [12, 2]),
  ],
  [
    'designs[0].instrument.harmonics[1]',
    '65',
    wholeNumber(1, 64),
    (f) => (f.designs[0].instrument.harmonics = [2, 65]),
  ],
  [
    'designs[0].instrument.harmonicOffsetsCents.fifth',
    '"fifth"',
    'a harmonic number from 1 to 99',
    (f) => (f.designs[0].instrument.harmonicOffsetsCents = { fifth: 3 }),
  ],
  [
    'designs[0].instrument.harmonicOffsetsCents["5"]',
    '1201',
    number('-1200', '1200', ' cents'),
    (f) => (f.designs[0].instrument.harmonicOffsetsCents = { '5': 1201 }),
  ],
  [
    'designs[0].valves',
    'a list of 13',
    'at most 12 valves',
    (f) => (f.designs[0].valves = repeat(13, (i) => ({ id: `v${i}`, semitones: 1 }))),
  ],
  ['designs[0].valves[0]', '2', 'a valve', (f) => (f.designs[0].valves[0] = 2)],
  [
    'designs[0].valves[0].id',
    '"0"',
    'a valve name without - or spaces, and not 0',
    (f) => (f.designs[0].valves[0].id = '0'),
  ],
  [
    'designs[0].valves[0].id',
    '"1-2"',
    'a valve name without - or spaces, and not 0',
    (f) => (f.designs[0].valves[0].id = '1-2'),
  ],
  [
    'designs[0].valves[1].id',
    '"1" again',
    'a valve name used once',
    (f) => (f.designs[0].valves[1].id = '1'),
  ],
  [
    'designs[0].valves[2].semitones',
    '"3"',
    number('-48', '48', ' semitones'),
    (f) => (f.designs[0].valves[2].semitones = '3'),
  ],
  [
    'designs[0].loops',
    'a list of 201',
    'at most 200 loops',
    (f) => (f.designs[0].loops = repeat(201, (i) => ({ id: `l${i}`, lengthMm: 1, pressed: [] }))),
  ],
  ['designs[0].loops[0]', '"L1"', 'a loop', (f) => (f.designs[0].loops[0] = 'L1')],
  ['designs[0].loops[3].id', '"L1" again', 'an id used once', (f) => (f.designs[0].loops[3].id = 'L1')],
  ['designs[0].loops[3].lengthMm', '-0.1', length, (f) => (f.designs[0].loops[3].lengthMm = -0.1)],
  ['designs[0].loops[3].lengthMm', 'null', length, (f) => (f.designs[0].loops[3].lengthMm = null)],
  [
    'designs[0].loops[3].lengthMm',
    '1000001',
    'a length of at most 1000000 mm',
    (f) => (f.designs[0].loops[3].lengthMm = 1_000_001),
  ],
  ['designs[0].loops[3].name', '4', 'text', (f) => (f.designs[0].loops[3].name = 4)],
  [
    'designs[0].loops[3].pressed',
    'nothing',
    'a list of valve names',
    (f) => delete f.designs[0].loops[3].pressed,
  ],
  ['designs[0].loops[3].pressed[0]', '"5"', ofValves, (f) => (f.designs[0].loops[3].pressed = ['5'])],
  [
    'designs[0].loops[3].pressed[1]',
    '"4" again',
    'each once',
    (f) => (f.designs[0].loops[3].pressed = ['4', '4']),
  ],
  ['designs[0].loops[3].released[0]', '"T"', ofValves, (f) => (f.designs[0].loops[3].released = ['T'])],
  [
    'designs[0].loops[3].pressed[0]',
    '"4" in released too',
    'down or up, not both',
    (f) => (f.designs[0].loops[3].released = ['4']),
  ],
  [
    'designs[0].loops[3].diameterMm',
    '2001',
    number('0.1', '2000', ' mm'),
    (f) => (f.designs[0].loops[3].diameterMm = 2001),
  ],
  ['designs[0].loops[0].slide', '5', 'a slide: outMm and travelMm', (f) => (f.designs[0].loops[0].slide = 5)],
  [
    'designs[0].loops[0].slide.travelMm',
    'nothing',
    length,
    (f) => delete f.designs[0].loops[0].slide.travelMm,
  ],
  [
    'designs[0].loops',
    '3600.0 mm of loops in the open route',
    'at most 3571 mm of the open length 3968.7 mm',
    (f) => f.designs[0].loops.push({ id: 'in', lengthMm: 3600, pressed: [] }),
  ],
  [
    'designs[0].loops',
    '3500.0 mm of loops in the open route',
    'at most 3371 mm of the open length 3745.9 mm',
    (f) => {
      f.designs[0].tuning = { kind: 'none' }
      f.designs[0].openDetuningCents = 100
      f.designs[0].loops.push({ id: 'in', lengthMm: 3500, pressed: [] })
    },
  ],
  [
    'designs[0].chosen.F',
    '"F"',
    'a midi note number from 0 to 127',
    (f) => (f.designs[0].chosen = { F: {} }),
  ],
  [
    'designs[0].chosen["128"]',
    '"128"',
    'a midi note number from 0 to 127',
    (f) => (f.designs[0].chosen = { 128: {} }),
  ],
  [
    'designs[0].chosen["53"].harmonic',
    '0',
    wholeNumber(1, 64),
    (f) => (f.designs[0].chosen['53'].harmonic = 0),
  ],
  ['designs[0].chosen["53"].pressed[0]', '"9"', ofValves, (f) => (f.designs[0].chosen['53'].pressed = ['9'])],
  [
    'designs[0].fingerings',
    '"some"',
    '"all" or a list of fingerings',
    (f) => (f.designs[0].fingerings = 'some'),
  ],
  [
    'designs[0].fingerings[1].pressed[0]',
    '"9"',
    ofValves,
    (f) => (f.designs[0].fingerings = [{ pressed: [] }, { pressed: ['9'] }]),
  ],
  [
    'designs[0].fingerings[2].pressed',
    '"1-2" again',
    'each fingering once',
    (f) =>
      (f.designs[0].fingerings = [
        { pressed: [] },
        { pressed: ['1', '2'] },
        { pressed: ['2', '1'], semitones: 4 },
      ]),
  ],
  [
    'designs[0].fingerings[0].semitones',
    '121',
    number('-120', '120', ' semitones'),
    (f) => (f.designs[0].fingerings = [{ pressed: ['1'], semitones: 121 }]),
  ],
  ['designs[0].mainSlide.outMm', '-1', length, (f) => (f.designs[0].mainSlide.outMm = -1)],
  [
    'designs[0].tuning.kind',
    '"shut"',
    'a tuning: none, or open with a harmonic',
    (f) => (f.designs[0].tuning.kind = 'shut'),
  ],
  ['designs[0].tuning.harmonic', 'nothing', wholeNumber(1, 64), (f) => delete f.designs[0].tuning.harmonic],
  ['designs[0].bore', '"wide"', 'a bore', (f) => (f.designs[0].bore = 'wide')],
  ['designs[0].bore.sections', 'nothing', 'a list of sections', (f) => delete f.designs[0].bore.sections],
  ...boreBreaks(),
  ['designs[0].loops[2].bendRadiusMm', '-1', length, (f) => (f.designs[0].loops[2].bendRadiusMm = -1)],
  [
    'designs[0].loops[2].bendRadiusMm',
    '8.5',
    'at least half the bore, mm',
    (f) => (f.designs[0].loops[2].bendRadiusMm = 8.5),
  ],
  ['bench', 'a list of 0', 'the bench part', (f) => (f.bench = [])],
]

describe('a file that breaks a rule', () => {
  it('is sound before it is broken', () => {
    expect(openWorkbook(JSON.stringify(whole())).ok).toBe(true)
  })

  it('is sound with targets of a bore that say no weight, which is then 1', () => {
    const file = whole()
    file.designs[0].bore.targets = [{ mode: 2 }, { mode: 4 }]
    expect(openWorkbook(JSON.stringify(file)).ok).toBe(true)
  })

  it.each(breaks)('is refused: %s is %s, not %s', (path, found, expected, breakIt) => {
    const file = whole()
    breakIt(file)
    expect(openWorkbook(JSON.stringify(file))).toEqual({
      ok: false,
      failure: {
        kind: 'brokenRule',
        path,
        found,
        expected,
        message: `${path}: found ${found}, expected ${expected}.`,
      },
    })
  })

  it('is refused for a key named __proto__ where keys are numbers', () => {
    const text = (part: string) => JSON.stringify(whole()).replace(part, `${part}"__proto__":5,`)
    expect(openWorkbook(text('"chosen":{'))).toMatchObject({
      failure: { path: 'designs[0].chosen.__proto__', expected: 'a midi note number from 0 to 127' },
    })
    expect(openWorkbook(text('"harmonicOffsetsCents":{'))).toMatchObject({
      failure: { path: 'designs[0].instrument.harmonicOffsetsCents.__proto__' },
    })
  })

  it('is refused for a number too big to hold, in a known key or in one it does not know', () => {
    const length = JSON.stringify(whole()).replace('"lengthMm":', '"lengthMm":1e999,"was":')
    expect(openWorkbook(length)).toMatchObject({
      failure: { path: 'designs[0].loops[0].lengthMm', found: 'Infinity' },
    })
    const unknown = JSON.stringify(whole()).replace('"bench":{}', '"bench":{"ours":[1,-1e999]}')
    expect(openWorkbook(unknown)).toMatchObject({
      failure: { path: 'bench.ours[1]', found: '-Infinity', expected: 'a number that can be held' },
    })
  })

  it('is refused for a design found sound before, where another pitch leaves its loops no room', () => {
    const inOpen = { id: 'in', lengthMm: 3500, pressed: [] }
    const workbook = workbookWith('plain-4', { loops: [inOpen], tuning: { kind: 'open', harmonic: 4 } })
    const sharper = { ...workbook, reference: { ...workbook.reference, a4Hz: 450 } }
    expect(brokenRule(workbook)).toBeNull()
    expect(brokenRule(sharper)).toMatchObject({
      path: 'designs[0].loops',
      found: expect.stringContaining('3500.0 mm'),
    })
    expect(brokenRule(workbook)).toBeNull()
  })
})
