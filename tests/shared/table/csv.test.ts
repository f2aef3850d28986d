import fc from 'fast-check'
import Papa from 'papaparse'
import { describe, expect, it } from 'vitest'
import { markupText, tabText } from '#shared/table/clipboard.ts'
import { csvText } from '#shared/table/csv.ts'
import { type Cell, numberText, type Table } from '#shared/table/table.ts'

const loops: Table = {
  title: 'Loops',
  columns: [{ heading: 'name' }, { heading: 'length', unit: 'mm' }, { heading: 'valves down' }],
  rows: [
    ['first', 171.42857142857142, '1'],
    ['first, compensating', -0, '1-4'],
    ['B♭ “long”; "old"', null, ''],
  ],
}

/** The cells as a spreadsheet's reader finds them, the mark of UTF-8 taken away by it. */
function readBack(text: string, delimiter: string): readonly (readonly string[])[] {
  return Papa.parse<string[]>(text, { delimiter, skipEmptyLines: true }).data
}

describe('A table as CSV', () => {
  it('has headings with their units, then a line a row, each ended as the standard has it', () => {
    expect(csvText(loops)).toBe(
      '\uFEFFname,length (mm),valves down\r\n' +
        'first,171.42857142857142,1\r\n' +
        '"first, compensating",0,1-4\r\n' +
        '"B♭ “long”; ""old""",,\r\n',
    )
  })

  it('keeps the spaces around a word in quotes', () => {
    expect(csvText({ ...loops, rows: [[' x ', 1, 'y ']] })).toMatch(/\r\n" x ",1,"y "\r\n$/)
  })

  it('without rows is its headings', () => {
    expect(readBack(csvText({ ...loops, rows: [] }), ',')).toEqual([['name', 'length (mm)', 'valves down']])
  })

  it('of no country: a point in numbers, no marks of thousands, a sign of the keyboard', () => {
    expect([12.5, 1234567.25, -0.5, 0, -0].map(numberText)).toEqual(['12.5', '1234567.25', '-0.5', '0', '0'])
  })

  it('refuses to hold what is not finite', () => {
    for (const value of [Number.NaN, Number.POSITIVE_INFINITY])
      expect(() => csvText({ ...loops, rows: [['', value, '']] })).toThrow(RangeError)
  })

  it('read back by another library is the table, whatever the words and numbers', () => {
    // What begins like a formula is changed on purpose, and has its own test below.
    const letters = fc.constantFrom('a', '7', '"', ',', ';', '\n', '\r', '\t', ' ', '=', '♭', '𝄞')
    const words = fc.string({ unit: letters }).filter((text) => !/^[=+\-@\t\r\n]/.test(text))
    const cell: fc.Arbitrary<Cell> = fc.oneof(words, fc.double({ noNaN: true, noDefaultInfinity: true }))
    const row = fc.tuple(fc.constant('row'), cell, cell)
    const written = (each: Cell) => (typeof each === 'number' ? numberText(each) : each)
    fc.assert(
      fc.property(fc.array(row, { maxLength: 8 }), (rows) => {
        const found = readBack(csvText({ ...loops, rows }), ',').slice(1)
        const numbers = rows.flatMap((cells) => cells.filter((each) => typeof each === 'number'))
        expect(found).toEqual(rows.map((cells) => cells.map(written)))
        expect(numbers.every((each) => Number(numberText(each)) === each)).toBe(true)
      }),
      { numRuns: 60 },
    )
  })

  it('has no cell that a spreadsheet would run, heading or row, while a negative number stays one', () => {
    const names = ['=1+1', '+49', '-2', '@SUM(A1)', '\t=1', '\r=1']
    const table = {
      title: '',
      columns: [{ heading: '=cmd' }, { heading: 'x' }],
      rows: names.map((name) => [name, -2]),
    }
    const found = readBack(csvText(table), ',')
    expect(found.map(([name]) => name)).toEqual(["'=cmd", ...names.map((name) => `'${name}`)])
    expect(found.slice(1).every(([, value]) => value === '-2')).toBe(true)
  })
})

describe('A table for the clipboard', () => {
  it('as text has tabs between cells and a line a row, whatever is in the cells', () => {
    const rows = [...loops.rows, ['a\tb\nc', 1, '"x"']]
    const found = readBack(tabText({ ...loops, rows }), '\t')
    expect(found[0]).toEqual(['name', 'length (mm)', 'valves down'])
    expect(found[1]).toEqual(['first', '171.42857142857142', '1'])
    expect(found.at(-1)).toEqual(['a b c', '1', '"x"'])
    expect(found.every((cells) => cells.length === 3)).toBe(true)
  })

  it('as markup says which cells are words and what the numbers are', () => {
    const markup = markupText({ ...loops, rows: [['1-3 <b>&', -12.5, null]] })
    expect(markup).toContain(`sdnum="1033;0;@" style="mso-number-format:'\\@'">1-3 &lt;b&gt;&amp;</td>`)
    expect(markup).toContain('<td x:num="-12.5" sdval="-12.5" sdnum="1033;">-12.5</td>')
    expect(markup).toContain('<td></td>')
  })

  it('as markup has no cell that a spreadsheet would run', () => {
    expect(markupText({ ...loops, rows: [['=1+1', 1, '']] })).toContain(`>'=1+1</td>`)
  })
})
