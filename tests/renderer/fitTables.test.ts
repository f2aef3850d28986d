import { describe, expect, it } from 'vitest'
import type { FingeredMode } from '#shared/bore/fingeringModes.ts'
import { headingText } from '#shared/table/table.ts'
import { freedomsOf } from '../../src-renderer/bore/fit/freedoms.ts'
import { targetRows } from '../../src-renderer/bore/fit/targetRows.ts'
import { fitTable, targetsTable } from '../../src-renderer/tables/fitTables.ts'

const modes = [{ hz: 70 }, { hz: 202 }] as unknown as readonly FingeredMode[]

describe('the targets of a fit', () => {
  const rows = targetRows(
    [
      { mode: 2, cents: 10 },
      { mode: 3, weight: 0 },
    ],
    100,
    modes,
  )

  it('are harmonics with their offsets, twelve of them, beside the modes of the bore', () => {
    expect(rows).toHaveLength(12)
    expect(rows[1]).toEqual({
      mode: 2,
      counts: true,
      offsetCents: 10,
      targetHz: expect.closeTo(200 * 2 ** (10 / 1200), 9),
      hz: 202,
      errorCents: expect.closeTo(1200 * Math.log2(1.01) - 10, 9),
    })
    expect(rows[2]).toMatchObject({ counts: false, targetHz: 300, hz: null, errorCents: null })
  })

  it('are a table of plain values', () => {
    const table = targetsTable('Horn', rows)
    expect(table.columns.map(headingText)).toEqual([
      'mode',
      'aimed at',
      'offset from the harmonic (cents)',
      'target (Hz)',
      'frequency (Hz)',
      'against the target (cents)',
    ])
    expect(table.rows[2]).toEqual([3, 0, 0, 300, null, null])
    expect(table.rows[0]?.slice(0, 5)).toEqual([1, 0, 0, 100, 70])
  })
})

describe('what a fit would change', () => {
  const sections = [
    { kind: 'cup' as const, volumeMm3: 9500 },
    { kind: 'cylinder' as const, name: 'main slide', lengthMm: 508, diameterMm: 12 },
    { kind: 'bell' as const, lengthMm: 600, startDiameterMm: 12, endDiameterMm: 120, flare: 0.7 },
  ]
  const present = freedomsOf(sections)
  const values = present.map(({ presentValue }) => 2 * presentValue)

  it('is a row for each dimension, in its own unit', () => {
    expect(fitTable('Horn', sections, present, present, { values }, 'mm').rows).toEqual([
      ['cup 1', 'volume', 'mm³', 9500, 19_000],
      ['main slide', 'length', 'mm', 508, 1016],
      ['bell 3', 'length', 'mm', 600, 1200],
      ['bell 3', 'flare', null, 0.7, 1.4],
    ])
  })

  it('has lengths in inches when these are shown, and nothing else', () => {
    const table = fitTable('Horn', sections, present, present.slice(0, 2), { values }, 'in')
    expect(table.rows[0]?.slice(2)).toEqual(['mm³', 9500, 19_000])
    expect(table.rows[1]?.slice(2)).toEqual(['in', 20, 40])
  })
})
