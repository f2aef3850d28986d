import { describe, expect, it } from 'vitest'
import { equalWeights } from '#shared/bore/harmonicSum.ts'
import { startingBores } from '#shared/bore/startingBores.ts'
import { defaultTargets } from '#shared/workbook/bore.ts'
import { boreConditions, boreInput, refusalInFile } from '#shared/workbook/boreInput.ts'
import { designModes } from '#shared/workbook/boreRecord.ts'
import type { Design } from '#shared/workbook/workbook.ts'
import { workbookWith } from '../../fixtures/workbooks.ts'

const low = startingBores.find(({ id }) => id === 'low')!.sections

function inputOf(more: Partial<Design>, systemId = 'plain-3') {
  const workbook = workbookWith(systemId, { bore: { sections: low }, ...more })
  return boreInput(workbook, workbook.designs[0]!)!
}

describe('the bore of a design, unpacked', () => {
  it('is nothing for a design without one', () => {
    const workbook = workbookWith('plain-3')
    expect(boreInput(workbook, workbook.designs[0]!)).toBeNull()
  })

  it('has every default filled in', () => {
    expect(inputOf({})).toMatchObject({
      sections: low,
      conditions: { waveFronts: 'spherical', mouth: 'unflanged', temperatureC: 24 },
      fundamentalHz: 43.654,
      targets: defaultTargets,
      harmonicWeights: equalWeights,
    })
  })

  it('can be sent to a worker', () => {
    expect(structuredClone(inputOf({}))).toEqual(inputOf({}))
  })

  it('has the loops of each fingering with the valves’ bore, or their own, and their bows', () => {
    const loops = [
      { id: 'L1', lengthMm: 480, pressed: ['1'] },
      { id: 'L2', lengthMm: 235, pressed: ['2'], diameterMm: 18, bendRadiusMm: 30 },
      { id: 'L3', lengthMm: 740, pressed: ['3'] },
    ]
    const { open, fingerings } = inputOf({ loops })
    expect(open).toMatchObject({ fingering: '0', semitones: 0, inserts: [] })
    expect(fingerings.map(({ fingering }) => fingering)).toEqual([
      '0',
      '1',
      '2',
      '3',
      '1-2',
      '1-3',
      '2-3',
      '1-2-3',
    ])
    expect(fingerings[4]).toMatchObject({
      semitones: 3,
      inserts: [
        { lengthMm: 480, diameterMm: 17.2 },
        { lengthMm: 235, diameterMm: 18, bendRadiusMm: 30 },
      ],
    })
    expect(fingerings[4]!.routeLengthMm).toBeCloseTo(open.routeLengthMm + 715, 9)
  })

  it('has the loops in the order of the valves, whatever order the file lists them in', () => {
    const loops = [
      { id: 'L3', lengthMm: 740, pressed: ['3'] },
      { id: 'C', lengthMm: 60, pressed: ['3', '1'] },
      { id: 'L1', lengthMm: 480, pressed: ['1'] },
      { id: 'in', lengthMm: 5, pressed: [] },
    ]
    const { open, fingerings } = inputOf({ loops })
    const lengthsOf = (name: string) =>
      fingerings.find(({ fingering }) => fingering === name)!.inserts.map(({ lengthMm }) => lengthMm)
    expect(lengthsOf('1-3')).toEqual([5, 60, 480, 740])
    expect(open.inserts).toEqual([{ lengthMm: 5, diameterMm: 17.2 }])
  })

  it('has an ascending valve’s loop at that valve', () => {
    const loops = [
      { id: 'A', lengthMm: 100, pressed: [], released: ['3'] },
      { id: 'L1', lengthMm: 480, pressed: ['1'] },
    ]
    const { inserts } = inputOf({ loops }).fingerings.find(({ fingering }) => fingering === '1')!
    expect(inserts.map(({ lengthMm }) => lengthMm)).toEqual([480, 100])
  })

  it('has an ascending valve’s loop in the open route', () => {
    const loops = [{ id: 'A', lengthMm: 100, pressed: [], released: ['1'] }]
    const { open, fingerings } = inputOf({ loops })
    expect(open.inserts).toHaveLength(1)
    expect(fingerings.find(({ fingering }) => fingering === '1')!.inserts).toEqual([])
  })
})

describe('the air of a bore', () => {
  const { air } = workbookWith('plain-3')
  const bore = { sections: low }

  it('is as warm as the instrument is played', () => {
    expect(boreConditions({ ...air, playingTemperatureC: 30 }, bore).temperatureC).toBe(30)
  })

  it('that cools towards the bell keeps the workbook’s temperature as its mean', () => {
    expect(boreConditions(air, { ...bore, bellTemperatureC: 20 })).toMatchObject({
      temperatureC: 28,
      bellTemperatureC: 20,
    })
  })
})

describe('a refusal of the bore’s calculations', () => {
  const { air } = workbookWith('plain-3')
  const bore = { sections: low }
  const pathOf = (path: string, more = {}) =>
    refusalInFile({ path, found: '', expected: '' }, { ...air, ...more }, bore, 'designs[1]').path

  it('names the value as the file has it', () => {
    expect(pathOf('sections[3].lengthMm')).toBe('designs[1].bore.sections[3].lengthMm')
    expect(pathOf('inserts')).toBe('designs[1].loops')
    expect(pathOf('bellTemperatureC')).toBe('designs[1].bore.bellTemperatureC')
    expect(pathOf('temperatureC')).toBe('air.temperatureC')
    expect(pathOf('temperatureC', { playingTemperatureC: 70 })).toBe('air.playingTemperatureC')
  })

  it('names the temperature that the file has where the air at the lips is out of range', () => {
    const refusalOf = (air: { temperatureC: number }, bellTemperatureC: number) => {
      const workbook = workbookWith('plain-3', { bore: { ...bore, bellTemperatureC } })
      const modes = designModes({ ...workbook, air: { ...workbook.air, ...air } }, 0, '0')
      return modes.ok ? null : modes.refusal
    }
    expect(refusalOf({ temperatureC: 24 }, -20)).toEqual({
      path: 'designs[0].bore.bellTemperatureC',
      found: '-20',
      expected: 'a temperature from -12 to 60 °C: the air at the lips is as far from the mean of 24 °C',
    })
    expect(refusalOf({ temperatureC: 24 }, -12)).toBeNull()
    // 2·0 + 30 is the warmest; 2·24.004 − 60 = −11.992, and 2·−24.004 + 30 = −18.008, each brought inwards.
    expect(refusalOf({ temperatureC: 0 }, 40)?.expected).toMatch(/^a temperature from -30 to 30 °C:/)
    expect(refusalOf({ temperatureC: 24.004 }, -20)?.expected).toMatch(/^a temperature from -11.99 to 60 °C:/)
    expect(refusalOf({ temperatureC: -24.004 }, 10)?.expected).toMatch(
      /^a temperature from -30 to -18.01 °C:/,
    )
    expect(refusalOf({ temperatureC: 70 }, 60)).toEqual({
      path: 'air.temperatureC',
      found: '70',
      expected: 'a temperature from -30 to 60 °C',
    })
  })
})
