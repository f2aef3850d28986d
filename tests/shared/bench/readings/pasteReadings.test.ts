import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { readFingering } from '#shared/bench/readings/fingeringCell.ts'
import { pastedNumber, pastedTable } from '#shared/bench/readings/pastedTable.ts'
import { pasteReadings } from '#shared/bench/readings/pasteReadings.ts'

const valves = ['1', '2', '3']
const onHarmonic = (pressed: string[], harmonic: number, cents: number) => ({
  pressed,
  at: { kind: 'harmonic', harmonic },
  cents,
})
const rowsOf = (text: string, ids: string[] = valves) => {
  const answer = pasteReadings(text, ids)
  return answer.kind === 'rows' ? answer.rows : answer.message
}
const refused = (text: string) => {
  const answer = pasteReadings(text, valves)
  return answer.kind === 'refused' ? answer : null
}

describe('A paste', () => {
  it('of nothing, or of headings only, is refused', () => {
    expect(refused('')).toMatchObject({ row: 1, column: 1, found: '' })
    expect(refused('\n \r\n')).toMatchObject({ row: 1, column: 1 })
    expect(refused('fingering\tharmonic\tcents\n')?.expected).toContain('rows of fingering')
  })

  it.each([
    ['tabs and a decimal comma', '0\t4\t0\n1-3\t4\t-12,5'],
    ['semicolons and a decimal comma', '0;4;0\r\n1-3;4;−12,5\r\n'],
    ['commas and a point', '0,4,0\n1-3,4,-12.5'],
    ['quotes', '"0","4","0"\n"1-3","4","-12,5"'],
    ['a row of headings', 'Fingering\tHarmonic\tCents\n0\t4\t0\n\n1-3\t4\t-12.5 cents'],
    ['headings in another order', 'cents;valves;partial\n0;open;4\n-12,5;13;4'],
    ['a byte-order mark', '\uFEFF0;4;0\n3+1;4;-12,5'],
    ['empty cells behind', '0\t4\t0\t\t\n1 3\t4\t-12.5\t'],
  ])('with %s is read', (_, text) => {
    expect(rowsOf(text)).toEqual([onHarmonic([], 4, 0), onHarmonic(['1', '3'], 4, -12.5)])
  })

  it('may name notes', () => {
    expect(rowsOf('1\tEb3\t7')).toEqual([
      { pressed: ['1'], at: { kind: 'note', note: 'Eb3', midi: 51 }, cents: 7 },
    ])
  })

  it.each([
    ['a valve that there is not', '0\t4\t0\n1-4\t4\t3', 2, 1, '1-4'],
    ['a valve twice', '1-1\t4\t3', 1, 1, '1-1'],
    ['a harmonic that is none', '0\t4.5\t3', 1, 2, '4.5'],
    ['a harmonic beyond any', '0\t99\t3', 1, 2, '99'],
    ['cents that are words', '0\t4\tflat', 1, 3, 'flat'],
    ['cents that are missing', '0\t4', 1, 3, ''],
    ['cents with a point and a comma', '0\t4\t1.234,5', 1, 3, '1.234,5'],
    ['a fourth column', '0\t4\t1\t7', 1, 4, '7'],
  ])('with %s is refused by row, column and what was found', (_, text, row, column, found) => {
    expect(refused(text)).toMatchObject({ row, column, found })
  })

  it('counts rows as the text does, empty ones and headings too', () => {
    expect(refused('fingering;note;cents\n\n0;4;x')).toMatchObject({ row: 3, column: 3 })
  })

  it('with decimal commas between commas says how to separate columns', () => {
    expect(refused('1-3,4,-12,5')?.message).toBe(
      'Row 1, column 4: found “5”, expected three columns: fingering, harmonic or note, cents; with decimal commas, separate columns by tabs or semicolons.',
    )
  })

  it('of fingerings that a spreadsheet made dates of says so', () => {
    expect(refused('01-Mar\t4\t3')?.expected).toContain('into a date')
  })

  it('of any readings comes back, whatever separates them', () => {
    const row = fc.record({
      pressed: fc.subarray(valves),
      harmonic: fc.integer({ min: 1, max: 32 }),
      cents: fc.integer({ min: -9999, max: 9999 }).map((tenths) => tenths / 10),
    })
    fc.assert(
      fc.property(fc.array(row, { minLength: 1 }), fc.constantFrom('\t', ';', ','), (rows, separator) => {
        const lines = rows.map(({ pressed, harmonic, cents }) =>
          [pressed.join('-') || '0', harmonic, cents].join(separator),
        )
        expect(rowsOf(lines.join('\n'))).toEqual(
          rows.map((r) => onHarmonic(r.pressed, r.harmonic, r.cents + 0)),
        )
      }),
    )
  })

  it('of a hostile kind is refused with its cell, and in few words', () => {
    const blanks = '\u00a0'.repeat(200_000)
    for (const [text, row, column] of [
      [`0\t4\t1${'0'.repeat(400)}`, 1, 3],
      [`0\t4\t1\n1${blanks}x\t4\t1`, 2, 1],
      ['0\t4\t0\n'.repeat(170_000), 1, 1],
      [`0\t4\t0\n1\0\t4\t0`, 2, 1],
      [`0\t4\t0\n${'x"'.repeat(400_000)}\t4\t0`, 2, 1],
      ['\uFFFD\uFFFD0\0\t\x004\0\t\x001\0', 1, 1],
    ] as const) {
      const answer = pasteReadings(text, valves)
      expect(answer).toMatchObject({ kind: 'refused', row, column })
      expect(answer.kind === 'refused' && answer.message.length).toBeLessThan(300)
    }
  }, 60_000)

  it('of any text at all is read or refused', () => {
    fc.assert(
      fc.property(fc.string(), (text) => ['rows', 'refused'].includes(pasteReadings(text, valves).kind)),
    )
  })
})

describe('A cell', () => {
  it('of a fingering is taken apart only as far as the valves’ names go', () => {
    expect(readFingering('13', ['1', '13'])).toEqual(['13'])
    expect(readFingering('T12', ['1', '2', 'T'])).toEqual(['1', '2', 'T'])
    expect(readFingering('open', valves)).toEqual([])
    expect(typeof readFingering('', valves)).toBe('string')
  })

  it('in quotes may hold the separator, and quotes written twice', () => {
    expect(pastedTable('"a ""b"" c";"1;2"').rows).toEqual([{ row: 1, cells: ['a "b" c', '1;2'] }])
  })

  it('of a number has one sign and one point or comma', () => {
    expect(['+3', '−0,5', ',5', '12 ¢', '-0', '1,2,3', '--1', 'NaN', '1e3', ''].map(pastedNumber)).toEqual([
      3,
      -0.5,
      0.5,
      12,
      0,
      null,
      null,
      null,
      null,
      null,
    ])
  })
})
