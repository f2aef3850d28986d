import { describe, expect, it } from 'vitest'
import { prepareBody } from '#shared/bore/body.ts'
import { describeFingerings, type FingeringModes } from '#shared/bore/fingeringModes.ts'
import { headingText, type Table } from '#shared/table/table.ts'
import { settledPitches } from '../../src-renderer/bore/pictures/settledPitches.ts'
import {
  fundamentalTable,
  groupLengthTable,
  modelsTable,
  peaksTable,
  sectionsTable,
  settledPitchesTable,
} from '../../src-renderer/tables/boreTables.ts'
import { demand, highBore } from '../shared/bore/bores.ts'

const body = demand(prepareBody(highBore, { temperatureC: 26.85 }, { highestMode: 8 }))
const open = { fingering: '0', semitones: 0, inserts: [], routeLengthMm: 1400 }
const first = {
  fingering: '1',
  semitones: 2,
  inserts: [{ lengthMm: 169.5, diameterMm: 11.66 }],
  routeLengthMm: 1569.5,
}
const all: readonly FingeringModes[] = demand(describeFingerings(body, open, [open, first]))

function headings({ columns }: Table): readonly string[] {
  return columns.map(headingText)
}

/** Every row of a table has a cell for each of its columns. */
function expectWhole(table: Table): void {
  for (const row of table.rows) expect(row).toHaveLength(table.columns.length)
}

describe('The tables of a bore', () => {
  it('have both models against the target, and their difference, mode by mode', () => {
    const table = modelsTable('Horn', all, [2, 3])
    expect(table.title).toBe('Length model and bore of Horn')
    expect(headings(table)).toEqual([
      'fingering',
      'length model (cents)',
      'bore, mode 2 (cents)',
      'bore less length model, mode 2 (cents)',
      'bore, mode 3 (cents)',
      'bore less length model, mode 3 (cents)',
    ])
    expectWhole(table)
    const [fingering, model, ofSecond, difference] = table.rows[1] as [string, number, number, number]
    expect(fingering).toBe('1')
    // 1200·log2(1400/1569.5) + 200
    expect(model).toBeCloseTo(200 - 1200 * Math.log2(1569.5 / 1400), 9)
    expect(ofSecond).toBe(all[1]!.modes[1]!.errorCents)
    expect(difference).toBeCloseTo(ofSecond - model, 9)
    expect(Math.abs(difference)).toBeGreaterThan(0.01)
  })

  it('leave out what a mode beyond the last would say', () => {
    const few = [{ ...all[1]!, modes: all[1]!.modes.slice(0, 2) }]
    const table = modelsTable('Horn', few, [2, 3])
    expectWhole(table)
    expect(table.rows[0]!.slice(4)).toEqual([null, null])
  })

  it('have the peaks of the fingerings shown, unrounded, a row a mode; a shallow one has no width', () => {
    const [mode] = all[1]!.modes
    const shallow = [{ ...all[1]!, modes: [{ ...mode!, widthHz: null }] }]
    const table = peaksTable('Horn', all, [first, { fingering: 'none such' }])
    expect(headings(table)).toEqual([
      'fingering',
      'mode',
      'frequency (Hz)',
      'height (MPa·s/m³)',
      'width at half power (Hz)',
    ])
    expect(table.rows).toHaveLength(all[1]!.modes.length)
    expect(table.rows[0]).toEqual(['1', 1, mode!.hz, mode!.heightPaSPerM3 / 1e6, mode!.widthHz])
    expect(peaksTable('Horn', shallow, [first]).rows[0]?.at(-1)).toBeNull()
  })

  it('have equivalent fundamentals, whose cents follow from the two frequencies beside them', () => {
    const table = fundamentalTable('Horn', all, [open, first])
    expect(headings(table).slice(3)).toEqual([
      'equivalent fundamental (Hz)',
      'fundamental that suits best (Hz)',
      'against the one that suits best (cents)',
    ])
    expect(table.rows).toHaveLength(all[0]!.modes.length + all[1]!.modes.length)
    for (const [, mode, hz, equivalentHz, bestHz, cents] of table.rows as [string, ...number[]][]) {
      expect(equivalentHz).toBeCloseTo(hz! / mode!, 9)
      expect(cents).toBeCloseTo(1200 * Math.log2(equivalentHz! / bestHz!), 9)
    }
  })

  it('have group lengths in the unit of the settings, and the cents of one more millimetre in either', () => {
    const [mm, inches] = (['mm', 'in'] as const).map((unit) => groupLengthTable('Horn', all, [first], unit))
    expect(headings(mm!).slice(3)).toEqual(['group length (mm)', 'one more mm of tube (cents)'])
    expect(headings(inches!)[3]).toBe('group length (in)')
    const [row, inchRow] = [mm!.rows[2], inches!.rows[2]] as [number[], number[]]
    expect(row[3]).toBe(all[1]!.modes[2]!.groupLength.groupLengthMm)
    expect(inchRow[3]).toBeCloseTo(row[3]! / 25.4, 9)
    expect(inchRow[4]).toBe(row[4])
    expect(row[4]).toBeLessThan(0)
  })

  it('have where notes settle, against their peak and the open route; nothing where there is no maximum', () => {
    const answer = {
      openPitches: [
        { peakHz: 100, hz: 101 },
        { peakHz: 200, hz: null },
        { peakHz: 300, hz: 300 },
      ],
      curves: [
        {
          fingering: '1',
          sum: new Float64Array(),
          pitches: [
            { peakHz: 90, hz: 91 },
            { peakHz: 180, hz: 180 },
            { peakHz: 270, hz: null },
          ],
        },
      ],
    }
    const table = settledPitchesTable('Horn', settledPitches(answer, [first]))
    expect(headings(table).slice(2)).toEqual([
      'settles at (Hz)',
      'peak (Hz)',
      'above its peak (cents)',
      'against the open route’s (cents)',
    ])
    const cents = (from: number, to: number): number => 1200 * Math.log2(to / from)
    expect(table.rows).toEqual([
      ['1', 1, 91, 90, expect.closeTo(cents(90, 91), 9), expect.closeTo(cents(101, 91) + 200, 9)],
      ['1', 2, 180, 180, 0, null],
      ['1', 3, null, 270, null, null],
    ])
  })

  it('have the sections with what each kind has', () => {
    const profile = {
      kind: 'profile' as const,
      name: 'measured',
      points: [
        [5, 10],
        [25, 12],
      ] as const,
    }
    const table = sectionsTable('Horn', [...highBore, profile], 'mm')
    expect(headings(table)).toEqual([
      'number',
      'kind',
      'name',
      'length (mm)',
      'diameter (mm)',
      'diameter at its end (mm)',
      'volume (mm³)',
      'flare',
      'points',
    ])
    expect(table.rows).toEqual([
      [1, 'cup', null, null, null, null, 1200, null, null],
      [2, 'cylinder', null, 3, 3.66, null, null, null, null],
      [3, 'cone', null, 70, 3.66, 8.8, null, null, null],
      [4, 'cone', null, 240, 8.8, 11.66, null, null, null],
      [5, 'valves', null, null, 11.66, null, null, null, null],
      [6, 'cylinder', null, 532, 11.66, null, null, null, null],
      [7, 'bell', null, 550, 11.66, 122, null, 0.7, null],
      [8, 'measured profile', 'measured', 20, 10, 12, null, null, 2],
    ])
    expect(sectionsTable('Horn', highBore, 'in').rows[5]?.[3]).toBeCloseTo(532 / 25.4, 9)
  })
})
