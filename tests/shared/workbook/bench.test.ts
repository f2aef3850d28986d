import { describe, expect, it } from 'vitest'
import { openWorkbook } from '#shared/workbook/openWorkbook.ts'
import { writeWorkbook } from '#shared/workbook/writeWorkbook.ts'
import { benchWorkbook } from '../../fixtures/benchWorkbook.ts'
import { loosened } from '../../fixtures/workbooks.ts'

// biome-ignore lint/suspicious/noExplicitAny: broken files have no type
type Loose = any
type Break = readonly [path: string, found: string, expected: string, breakIt: (bench: Loose) => void]

const length = 'a length of 0 mm or more'
const a4 = 'a number from 380 to 480 Hz'

const breaks: readonly Break[] = [
  ['bench.slides', 'an object', 'a list of slides', (b) => (b.slides = {})],
  ['bench.slides[0]', '7', 'a slide', (b) => (b.slides[0] = 7)],
  ['bench.slides[0].id', '""', 'a name of the slide of 1 to 60 characters', (b) => (b.slides[0].id = '')],
  ['bench.slides[0].loop', 'nothing', 'an id of 1 to 60 characters', (b) => delete b.slides[0].loop],
  ['bench.slides[0].legSpacingMm', 'nothing', length, (b) => delete b.slides[0].legSpacingMm],
  ['bench.slides[0].outerLegMm', '-1', length, (b) => (b.slides[0].outerLegMm = -1)],
  ['bench.slides[0].wallMm', '"0.5"', length, (b) => (b.slides[0].wallMm = '0.5')],
  ['bench.slides[0].bendCorrection', '1', 'true or false', (b) => (b.slides[0].bendCorrection = 1)],
  [
    'bench.slides[0].quarterRadiiMm',
    'a list of 1',
    'two radii in mm',
    (b) => (b.slides[0].quarterRadiiMm = [19]),
  ],
  [
    'bench.slides[0].furtherPairs[0].returnSpacingMm',
    'nothing',
    length,
    (b) => (b.slides[0].furtherPairs = [{ legSpacingMm: 38 }]),
  ],
  ['bench.slides[1].id', '"third slide" again', 'an id used once', (b) => b.slides.push(b.slides[0])],
  ['bench.readings[0].a4Hz', '44', a4, (b) => (b.readings[0].a4Hz = 44)],
  ['bench.readings[0].rows', 'nothing', 'a list of readings', (b) => delete b.readings[0].rows],
  [
    'bench.readings[0].rows[1].harmonic',
    '0',
    'a whole number from 1 to 64',
    (b) => (b.readings[0].rows[1].harmonic = 0),
  ],
  [
    'bench.readings[0].rows[1].cents',
    'null',
    'a number from -1200 to 1200 cents',
    (b) => (b.readings[0].rows[1].cents = null),
  ],
  ['bench.readings[0].exactWanted', '"yes"', 'true or false', (b) => (b.readings[0].exactWanted = 'yes')],
  ['bench.readings[1].id', '"as found" again', 'an id used once', (b) => b.readings.push(b.readings[0])],
  ['bench.pitchChanges[0].toA4Hz', '481', a4, (b) => (b.pitchChanges[0].toA4Hz = 481)],
  [
    'bench.pitchChanges[1].id',
    '"down to 440" again',
    'an id used once',
    (b) => b.pitchChanges.push(b.pitchChanges[0]),
  ],
]

describe('the bench part of a file', () => {
  it.each(breaks)('is refused at %s: found %s, expected %s', (path, found, expected, breakIt) => {
    const file = loosened(benchWorkbook())
    breakIt(file.bench)
    const opened = openWorkbook(JSON.stringify(file))
    expect(opened.ok ? null : opened.failure).toMatchObject({ kind: 'brokenRule', path, found, expected })
  })

  it('may be empty, or have only some of its lists', () => {
    for (const bench of [{}, { slides: [] }, { pitchChanges: [] }])
      expect(openWorkbook(JSON.stringify(benchWorkbook(bench))).ok).toBe(true)
  })

  it('opens when it names a design or a loop that is not there', () => {
    const file = loosened(benchWorkbook())
    file.bench.slides[0].loop = 'L9'
    file.bench.readings[0].design = 'gone'
    expect(openWorkbook(JSON.stringify(file)).ok).toBe(true)
  })

  it('keeps keys that are not known, and is written in one order', () => {
    const file = loosened(benchWorkbook())
    const { id, ...slide } = file.bench.slides[0]
    file.bench = {
      ours: 1,
      pitchChanges: file.bench.pitchChanges,
      slides: [{ ...slide, ours: [1], id }],
      readings: file.bench.readings,
    }
    file.bench.readings[0].rows[0].ours = { deep: true }
    const opened = openWorkbook(JSON.stringify(file))
    if (!opened.ok) throw new Error(opened.failure.message)
    expect(opened.workbook).toEqual(file)
    const text = writeWorkbook(opened.workbook)
    const bare = text.replace(/,\s*"ours": (\[[^\]]*\]|\{[^}]*\}|1)/g, '')
    expect(bare).toBe(writeWorkbook(benchWorkbook()))
  })
})
