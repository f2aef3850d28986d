import { isDeepStrictEqual } from 'node:util'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { differences } from '#shared/workbook/differences/differences.ts'
import { shortened } from '#shared/workbook/differences/placeWords.ts'
import type { Workbook } from '#shared/workbook/workbook.ts'
import { anyWorkbook } from '../../../fixtures/anyWorkbook.ts'
import { loosened, workbookWith } from '../../../fixtures/workbooks.ts'

const workbook = workbookWith('plain-3')

/** The workbook with something in it changed by hand. */
// biome-ignore lint/suspicious/noExplicitAny: changed by hand, whatever the types say
function changed(by: (loose: any) => void, from: Workbook = workbook): Workbook {
  const loose = loosened(from)
  by(loose)
  return loose
}

describe('two versions that hold the same', () => {
  it('have no differences', () => {
    expect(differences(workbook, loosened(workbook))).toEqual([])
  })

  it('have none when only the order of keys is another', () => {
    const turned = Object.fromEntries(Object.entries(workbook).toReversed()) as unknown as Workbook
    expect(differences(workbook, turned)).toEqual([])
  })
})

describe('any two versions', () => {
  it('have differences exactly when they do not hold the same', () => {
    fc.assert(
      fc.property(anyWorkbook, anyWorkbook, (one, other) => {
        expect(differences(one, structuredClone(one))).toEqual([])
        expect(differences(one, other).length === 0).toBe(isDeepStrictEqual(one, other))
      }),
    )
  })

  it('have the same number of differences seen from either side, with before and after exchanged', () => {
    fc.assert(
      fc.property(anyWorkbook, anyWorkbook, (one, other) => {
        const texts = (found: ReturnType<typeof differences>, turned: boolean): readonly string[] =>
          found.map(({ before, after }) => JSON.stringify(turned ? [after, before] : [before, after])).sort()
        expect(texts(differences(other, one), true)).toEqual(texts(differences(one, other), false))
      }),
    )
  })

  it('are told in whole words and never as a figure that is none', () => {
    fc.assert(
      fc.property(anyWorkbook, anyWorkbook, (one, other) => {
        // Whoever names a design “NaN” reads it, too.
        fc.pre(!/undefined|NaN|\[object/.test(JSON.stringify([one, other])))
        for (const { place, before, after } of differences(one, other)) {
          expect(place).not.toBe('')
          expect(before === null && after === null).toBe(false)
          for (const text of [before, after]) expect(text ?? '').not.toMatch(/undefined|NaN|\[object/)
        }
      }),
    )
  })
})

describe('a difference', () => {
  it('of a length is told with its place, its unit and every digit', () => {
    const name = workbook.designs[0]!.name
    const { id, lengthMm } = workbook.designs[0]!.loops[2]!
    const later = changed((loose) => {
      loose.designs[0].loops[2].lengthMm = 712.000000000001
    })
    expect(differences(workbook, later)).toEqual([
      {
        path: 'designs[0].loops[2].lengthMm',
        place: `design “${name}” › loop “${workbook.designs[0]!.loops[2]!.name ?? id}” › length`,
        before: `${lengthMm} mm`,
        after: '712.000000000001 mm',
      },
    ])
  })

  it('of a gate is told by the valves', () => {
    const later = changed((loose) => {
      loose.designs[0].loops[0].pressed = ['1', '2']
      loose.designs[0].loops[0].released = ['3']
    })
    expect(differences(workbook, later).map(({ place, before, after }) => [place, before, after])).toEqual([
      [expect.stringMatching(/› valves down$/), '1', '1-2'],
      [expect.stringMatching(/› valves up$/), null, '3'],
    ])
  })

  it('is one when a loop was added, and its values are named', () => {
    const later = changed((loose) => {
      loose.designs[0].loops.unshift({ id: 'new', lengthMm: 5, pressed: ['1'] })
    })
    expect(differences(workbook, later)).toEqual([
      {
        path: 'designs[0].loops[0]',
        place: `design “${workbook.designs[0]!.name}” › loop “new”`,
        before: null,
        after: 'length 5 mm, valves down 1',
      },
    ])
  })

  it('is one when a design has gone, at its place before', () => {
    const two = changed((loose) => {
      loose.designs.push({ ...loose.designs[0], id: 'second', name: 'Second' })
    })
    expect(differences(two, workbook)).toMatchObject([
      { path: 'designs[1]', place: 'design “Second”', after: null },
    ])
  })

  it('is the order alone when designs were only moved', () => {
    const two = changed((loose) => {
      loose.designs.push({ ...loose.designs[0], id: 'second', name: 'Second' })
    })
    const turned = changed((loose) => {
      loose.designs.reverse()
    }, two)
    expect(differences(two, turned)).toEqual([
      { path: 'designs', place: 'order of designs', before: 'design, second', after: 'second, design' },
    ])
  })

  it('is one when a reading was taken out of the middle', () => {
    const rows = [0, 3, -2, 1].map((cents, i) => ({ pressed: ['1'], harmonic: i + 2, cents }))
    const withRows = (kept: readonly object[]): Workbook =>
      changed((loose) => {
        loose.bench = { readings: [{ id: 'first', design: 'design', a4Hz: 440, rows: kept }] }
      })
    expect(differences(withRows(rows), withRows(rows.toSpliced(1, 1)))).toEqual([
      {
        path: 'bench.readings[0].rows[1]',
        place: 'bench › readings “first” › reading 2',
        before: 'valves down 1, harmonic 3, cents 3',
        after: null,
      },
    ])
  })

  it('is one when a reading was taken twice, the same both times', () => {
    const row = { pressed: ['1'], harmonic: 4, cents: 3 }
    const withRows = (rows: readonly object[]): Workbook =>
      changed((loose) => {
        loose.bench = { readings: [{ id: 'first', design: 'design', a4Hz: 440, rows }] }
      })
    expect(differences(withRows([row]), withRows([row, row]))).toMatchObject([
      { path: 'bench.readings[0].rows[1]', before: null, after: 'valves down 1, harmonic 4, cents 3' },
    ])
  })

  it('of a measured offset has the unit of the offsets', () => {
    const later = changed((loose) => {
      loose.designs[0].instrument.harmonicOffsetsCents = { 5: -3 }
    })
    const last = changed((loose) => {
      loose.designs[0].instrument.harmonicOffsetsCents = { 5: -4 }
    })
    expect(differences(later, last)).toMatchObject([
      {
        path: 'designs[0].instrument.harmonicOffsetsCents["5"]',
        place: expect.stringMatching(/harmonic offsets › 5$/),
        before: '−3 cents',
        after: '−4 cents',
      },
    ])
  })

  it('far inside long notes is shown where they part', () => {
    const long = 'The third slide was short. '.repeat(20)
    const [found] = differences(
      { ...workbook, notes: `${long}Sent on Monday.` },
      { ...workbook, notes: `${long}Sent on Friday.` },
    )
    expect(found?.before).toMatch(/^….*Monday/)
    expect(found?.after).toMatch(/^….*Friday/)
    expect(found?.before?.length).toBeLessThan(70)
  })

  it.each([
    ['as many are whole', 'a'.repeat(60), 0, 'a'.repeat(60)],
    ['the rest is left out', 'a'.repeat(61), 0, `${'a'.repeat(60)}…`],
    ['a trumpet is one', '🎺'.repeat(61), 0, `${'🎺'.repeat(60)}…`],
    [
      'from 15 before what must be seen',
      `${'a'.repeat(50)}${'b'.repeat(50)}`,
      50,
      `…${'a'.repeat(15)}${'b'.repeat(45)}…`,
    ],
    [
      'to the end where it is near',
      `${'a'.repeat(90)}${'b'.repeat(10)}`,
      90,
      `…${'a'.repeat(15)}${'b'.repeat(10)}`,
    ],
  ])('has its text cut to 60 signs: %s', (_, text, from, expected) => {
    expect(shortened(text, from)).toBe(expected)
  })

  it('of a key that this version does not know is told too', () => {
    const later = changed((loose) => {
      loose['x-other'] = { kept: true }
    })
    expect(differences(workbook, later)).toEqual([
      { path: '["x-other"]', place: 'x-other', before: null, after: 'kept yes' },
    ])
  })
})
