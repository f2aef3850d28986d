import { describe, expect, it } from 'vitest'
import { systemOf } from '#shared/valves/systems/systems.ts'
import { designFromSystem, emptyWorkbook } from '#shared/workbook/newWorkbook.ts'
import { curvesByFingering, curvesByNote, placeOfSelection } from '../../src-renderer/curves/curveModels.ts'
import { derive } from '../../src-renderer/state/derived.ts'
import { workbookWith } from '../fixtures/workbooks.ts'

const empty = emptyWorkbook('Systems')

function derivedOf(...systems: readonly string[]) {
  const designs = systems.map((id) =>
    designFromSystem(empty, systemOf(id)!, { fundamentalHz: 43.654, harmonics: [1, 12] }, id),
  )
  const workbook = { ...empty, designs }
  return { designs, derived: designs.map((design, series) => derive(workbook, design, series)) }
}

/** The curves by fingering, one a step, of designs of some systems. */
function curvesOf(...systems: readonly string[]) {
  return curvesByFingering(derivedOf(...systems).derived, systems[0]!, 'usual', 15)
}

describe('curves by fingering, one a step', () => {
  it('stand over the fingerings where every design has the same for a step', () => {
    const { heading, categories } = curvesOf('plain-3', 'compensating-3')
    expect(heading).toBe('step')
    expect(categories.map(({ label }) => label)).toEqual(['0', '2', '1', '1-2', '2-3', '1-3', '1-2-3'])
  })

  it('stand over semitones where they have not, each design with its own fingering', () => {
    const { heading, categories, series } = curvesOf('early-2', 'cut-off')
    expect(heading).toBe('semitones')
    const labels = categories.map(({ label }) => label)
    expect(labels).toEqual(['+6', '+5', '+4', '+3', '+2', '+1', '0', '−1', '−2', '−3'])
    expect(series[0]?.notes.slice(6)).toEqual(['0', '1', '2', '1-2'])
    expect(series[1]?.notes.slice(0, 7)).toEqual(['1', '2', '3', '4', '5', '6', '0'])
  })

  it('give each design the error that its table has for the fingering', () => {
    const workbook = {
      ...empty,
      designs: [designFromSystem(empty, systemOf('plain-4')!, { fundamentalHz: 43.654 }, 'four')],
    }
    const derived = derive(workbook, workbook.designs[0]!, 0)
    const { series, cells } = curvesByFingering([derived], 'four', 'usual', 15)
    const errors = new Map(derived.tables.combinations.map((row) => [row.fingering, row.errorCents]))
    expect(series[0]?.values).toEqual(derived.tables.usual.map(({ name }) => errors.get(name)))
    expect(cells[0]?.[0]).toEqual({ kind: 'fingering', designId: 'four', fingering: '0' })
  })
})

describe('curves by note', () => {
  it('keep a place for a note that nothing comes near, and say which', () => {
    const { designs, derived } = derivedOf('early-2')
    const { categories, series, unreached } = curvesByNote(derived, designs[0]!.id, 'flats', 15)
    const at = categories.map(({ label }) => label).indexOf('C2')
    expect(categories[at]).toMatchObject({ label: 'C2', short: 'C2' })
    expect(categories[at + 1]).toMatchObject({ label: 'D♭2', short: 'D♭' })
    expect(series[0]?.values[categories.findIndex(({ label }) => label === 'F2')]).toEqual(expect.any(Number))
    for (const name of unreached[0]!.notes) {
      const place = categories.findIndex(({ label }) => label === name)
      expect(place).toBeGreaterThanOrEqual(0)
      expect(series[0]?.values[place]).toBeNull()
    }
    expect(unreached[0]!.notes.length).toBe(series[0]!.values.filter((value) => value === null).length)
  })
})

describe('what is selected', () => {
  it('has its place in the curves, by its design, note, valves and harmonic', () => {
    const model = curvesByNote(derivedOf('plain-3', 'plain-4').derived, 'plain-3', 'flats', 15)
    for (const [series, category] of [
      [0, 20],
      [1, 20],
      [1, 21],
    ] as const) {
      const selection = model.cells[series]![category]!
      expect(placeOfSelection(model, selection)).toEqual({ series, category })
      if (selection.kind !== 'note') throw new Error(selection.kind)
      expect(placeOfSelection(model, { ...selection, midi: 0 })).toBeNull()
      expect(placeOfSelection(model, { ...selection, harmonic: 99 })).toBeNull()
      expect(placeOfSelection(model, { ...selection, pressed: ['1', '2', '3', '4'] })).toBeNull()
    }
    const byFingering = curvesOf('plain-3', 'compensating-3')
    expect(placeOfSelection(byFingering, byFingering.cells[1]![3]!)).toEqual({ series: 1, category: 3 })
    expect(placeOfSelection(byFingering, null)).toBeNull()
  })
})

describe('more fingerings than a chart can hold', () => {
  // Nine valves have 2^9 = 512 fingerings, 1 + 9 + 36 + 84 + 126 = 256 of them with four valves or fewer.
  it('are left out and counted, those of the most valves first', () => {
    const valves = Array.from({ length: 9 }, (_, i) => ({ id: `${i + 1}`, semitones: i + 1 }))
    const workbook = workbookWith('plain-3', { valves })
    const derived = derive(workbook, workbook.designs[0]!, 0)
    const { categories, leftOut } = curvesByFingering([derived], 'design', 'all', 15)
    expect([categories.length, leftOut]).toEqual([256, 256])
    expect(Math.max(...categories.map(({ label }) => label.split('-').length))).toBe(4)
  })
})
