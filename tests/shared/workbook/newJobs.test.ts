import { describe, expect, it } from 'vitest'
import { benchRecord } from '#shared/workbook/benchRecord.ts'
import {
  freshJobName,
  nameGoingAlong,
  newPitchChange,
  newReadings,
  newSlide,
} from '#shared/workbook/newJobs.ts'
import { brokenRule } from '#shared/workbook/rules.ts'
import { workbookWith } from '../../fixtures/workbooks.ts'

describe('a new slide', () => {
  it.each([
    ['a bass in F', { fundamentalHz: 43.654, boreDiameterMm: 17.2 }],
    ['an alto', { fundamentalHz: 77.78, boreDiameterMm: 13 }],
    ['a cornet', { fundamentalHz: 116.54, boreDiameterMm: 11.7 }],
  ])('can be built as it stands, for the first and third loop of %s', (_, instrument) => {
    const workbook = workbookWith('plain-3', {}, instrument)
    const [design] = workbook.designs
    const loops = design!.loops.filter(({ id }) => id !== 'L2')
    const slides = loops.map((loop) => newSlide(loop.id, design!, loop))
    const filled = { ...workbook, bench: { slides } }
    expect(brokenRule(filled)).toBeNull()
    expect(benchRecord(filled).slides.flatMap(({ problems }) => problems)).toEqual([])
  })

  it('takes bore, position and travel from its loop', () => {
    const workbook = workbookWith('plain-3', {}, { fundamentalHz: 43.654, boreDiameterMm: 12 })
    const [design] = workbook.designs
    const loop = { ...design!.loops[0]!, diameterMm: 18, slide: { outMm: 9, travelMm: 25 } }
    expect(newSlide('first', design!, loop)).toMatchObject({
      boreDiameterMm: 18,
      outAtPitchMm: 9,
      travelMm: 25,
    })
  })

  it('is no farther out than its travel, though its loop says so', () => {
    const [design] = workbookWith('plain-3').designs
    const loop = { ...design!.loops[0]!, slide: { outMm: 20, travelMm: 10 } }
    expect(newSlide('first', design!, loop)).toMatchObject({ outAtPitchMm: 10, travelMm: 10 })
  })

  it('for a loop of nothing keeps every rule of the file', () => {
    const workbook = workbookWith('plain-3')
    const [design] = workbook.designs
    const slide = newSlide('nothing', design!, { ...design!.loops[0]!, lengthMm: 0 })
    expect(brokenRule({ ...workbook, bench: { slides: [slide] } })).toBeNull()
  })
})

describe('new readings and a new change of pitch', () => {
  it('start at the workbook’s A4', () => {
    const workbook = workbookWith('plain-3')
    const design = workbook.designs[0]!
    expect(newReadings('as found', workbook, design)).toMatchObject({ a4Hz: 440, rows: [] })
    expect(newPitchChange('down', workbook, design)).toMatchObject({ fromA4Hz: 452.5, toA4Hz: 440 })
  })
})

describe('a fresh name', () => {
  it('gets the first free number', () => {
    expect(freshJobName('third slide', [])).toBe('third slide')
    expect(freshJobName('third slide', ['third slide', 'third slide 2'])).toBe('third slide 3')
  })
})

describe('a name that only said what a job was of', () => {
  const jobs = ['to 440', 'to 440 2', 'to 442', 'mine']
  const called = (name: string) => nameGoingAlong(name, 'to 440', 'to 442', jobs)

  it('goes along, numbered or not, and is no other job’s', () => {
    expect(called('to 440')).toBe('to 442 2')
    expect(called('to 440 2')).toBe('to 442 2')
    expect(nameGoingAlong('to 442', 'to 442', 'to 442', jobs)).toBe('to 442')
  })

  it('stays where it says more', () => {
    expect(called('mine')).toBe('mine')
    expect(called('to 440 at last')).toBe('to 440 at last')
    expect(called('to 4402')).toBe('to 4402')
  })
})
