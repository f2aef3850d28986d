import { describe, expect, it } from 'vitest'
import { startingBores } from '#shared/bore/startingBores.ts'
import { boreWarnings } from '#shared/workbook/sanity/boreWarnings.ts'
import { tablesRecord } from '#shared/workbook/tablesRecord.ts'
import type { Design, InstrumentData } from '#shared/workbook/workbook.ts'
import { workbookWith } from '../../fixtures/workbooks.ts'

const low = startingBores.find(({ id }) => id === 'low')!
const bore = { sections: low.sections }
const fundamentalHz = low.fundamentalHz

function warningsOf(more: Partial<Design>, instrument: Partial<InstrumentData> = {}) {
  const { designs } = workbookWith('plain-3', { bore, ...more }, { fundamentalHz, ...instrument })
  return boreWarnings(designs[0]!, 3968.7, 'designs[0]')
}

describe('warnings of a bore', () => {
  it('are silent without a bore and on one that belongs to its design', () => {
    const { designs } = workbookWith('plain-3')
    expect(boreWarnings(designs[0]!, 3968.7, 'designs[0]')).toEqual([])
    expect(warningsOf({})).toEqual([])
    expect(warningsOf({}, { boreLengthMm: 3640, boreDiameterMm: 17.2 })).toEqual([])
    expect(warningsOf({}, { boreLengthMm: 3890, boreDiameterMm: 17 })).toEqual([])
  })

  it('ask about sections that do not add up to the bore length given', () => {
    expect(warningsOf({}, { boreLengthMm: 1860 })).toEqual([
      {
        path: 'designs[0].bore.sections',
        found: '3721 mm of sections',
        expected: '1860 mm, the bore length given',
        message:
          'Found 3721 mm of sections; expected 1860 mm, the bore length given: is it both ways counted twice?',
      },
    ])
  })

  it('ask about sections too short for the fundamental when no bore length is given', () => {
    const sections = low.sections.filter(({ kind }) => kind !== 'bell')
    expect(warningsOf({ bore: { sections } })).toMatchObject([
      { path: 'designs[0].bore.sections', found: '2172.0 mm for 43.65 Hz', expected: '3571.8 to 3968.7 mm' },
    ])
  })

  it('count the loops of the open route with the sections', () => {
    const loops = [{ id: 'in', lengthMm: 600, pressed: [] }]
    expect(warningsOf({ loops }, { boreLengthMm: 4321 })).toEqual([])
    expect(warningsOf({ loops }, { boreLengthMm: 3721 })).toMatchObject([{ found: '4321 mm of sections' }])
  })

  it('ask whether a bore at the valves that is half the one given is its radius', () => {
    const sections = low.sections.map((section) =>
      section.kind === 'valves' ? { ...section, diameterMm: 8.6 } : section,
    )
    expect(warningsOf({ bore: { sections } }, { boreDiameterMm: 17.2 })).toMatchObject([
      {
        path: 'designs[0].bore.sections[4].diameterMm',
        message: 'Found 8.6 mm; expected 17.2 mm, the bore at the valves given: is it the radius?',
      },
    ])
  })

  it('stand among the others of a workbook', () => {
    const workbook = workbookWith('compensating-3', { bore }, { fundamentalHz, boreDiameterMm: 20 })
    expect(tablesRecord(workbook).warnings.map(({ path }) => path)).toEqual([
      'designs[0].bore.sections[4].diameterMm',
    ])
  })
})
