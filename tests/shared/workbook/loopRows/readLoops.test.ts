import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { csvText } from '#shared/table/csv.ts'
import { strangers, takeLoops } from '#shared/workbook/commands/takeLoops.ts'
import { examples } from '#shared/workbook/examples/examples.ts'
import { type LoopsRead, readLoops } from '#shared/workbook/loopRows/readLoops.ts'
import { brokenRule } from '#shared/workbook/rules.ts'
import { loopsTable } from '../../../../src-renderer/tables/loopsTable.ts'
import { exampleWorkbook } from '../../../fixtures/exampleFiles.ts'

const exampleWorkbooks = examples.map(exampleWorkbook)
const valveIds = ['1', '2', '3', '4']
const read = (text: string, unit: 'mm' | 'in' = 'mm'): LoopsRead => readLoops(text, { valveIds, unit })
const loops = (text: string, unit: 'mm' | 'in' = 'mm') => {
  const { rows, refusals } = read(text, unit)
  expect(refusals).toEqual([])
  return rows
}
const refused = (text: string) => {
  const { refusals } = read(text)
  return refusals.map(({ line, column, found, expected }) => `${line} ${column}: ${found} / ${expected}`)
}

describe('A table of loops', () => {
  it('of nothing is refused', () => {
    for (const text of ['', '\n\n', 'name,length,valves\n'])
      expect(refused(text)).toEqual(['1 line:  / a line a loop: name, length, valves down'])
  })

  it('without headings is name, length and valves down, parted by tabs, semicolons or commas', () => {
    const first = { line: 1, name: 'first', lengthMm: 486.5, pressed: ['1'] }
    expect(loops('first\t486,5\t1')).toEqual([first])
    expect(loops('first;486,5;1')).toEqual([first])
    expect(loops('first,486.5,1')).toEqual([first])
    expect(loops('"first","486,5","1"')).toEqual([first])
  })

  it('takes unit, bore and valves up between and behind them', () => {
    expect(loops('a;171,4;mm;1')[0]).toMatchObject({ lengthMm: 171.4, pressed: ['1'] })
    expect(loops('a;171,4;17,2;1-4')[0]).toMatchObject({ diameterMm: 17.2, pressed: ['1', '4'] })
    expect(loops('a;6.75;in;0.5;1;4')[0]).toEqual({
      line: 1,
      name: 'a',
      lengthMm: 171.45,
      diameterMm: 12.7,
      pressed: ['1'],
      released: ['4'],
    })
  })

  it('takes inches, with fractions and marks, and the unit of the settings for bare numbers', () => {
    expect(loops('a\t6 3/4 in\t1')[0]?.lengthMm).toBeCloseTo(171.45, 9)
    expect(loops('a\t6 3/4"\t1')[0]?.lengthMm).toBeCloseTo(171.45, 9)
    expect(loops('a\t6 3/4\t"\t1')[0]?.lengthMm).toBeCloseTo(171.45, 9)
    expect(loops('a\t6,75\t1', 'in')[0]?.lengthMm).toBeCloseTo(171.45, 9)
    expect(loops('a\t17.1\tcm\t1')[0]?.lengthMm).toBeCloseTo(171, 9)
  })

  it('with headings may have its columns in any order, and units over them', () => {
    const text = 'valves;loop;bore (mm);tube, in;colour\n1-2;pair;17,2;10;red'
    expect(loops(text)).toEqual([
      { line: 2, name: 'pair', lengthMm: 254, diameterMm: 17.2, pressed: ['1', '2'] },
    ])
    expect(read(text).unread).toEqual(['colour'])
  })

  it('takes the first of two columns that could be the length', () => {
    const text = 'name,length (mm),slide length (mm)\nfirst,100,7'
    expect(loops(text)).toEqual([{ line: 2, name: 'first', lengthMm: 100 }])
    expect(read(text).unread).toEqual(['slide length (mm)'])
  })

  it('takes the unit of a heading, not the word before it', () => {
    const lengthUnder = (heading: string, unit: 'mm' | 'in' = 'mm') =>
      loops(`loop;${heading};valves down\na;486.5;1`, unit)[0]?.lengthMm
    for (const heading of ['length in mm', 'length (in mm)', 'Length in millimetres', 'length of tube'])
      expect(lengthUnder(heading), heading).toBe(486.5)
    for (const heading of ['length let in, of tube', 'length (in the tube)'])
      expect(lengthUnder(heading), heading).toBe(486.5)
    expect(lengthUnder('length in mm', 'in')).toBe(486.5)
    for (const heading of ['tube in cm', 'length in centimeters'])
      expect(lengthUnder(heading), heading).toBeCloseTo(4865, 9)
    for (const heading of ['length (in)', 'length [in.]', 'length in inches', 'tube, in', 'length in'])
      expect(lengthUnder(heading), heading).toBeCloseTo(12357.1, 9)
  })

  it('refuses every line that cannot be read, each with what was found and expected', () => {
    const text = 'first;abc;1\nsecond;83,2;7\n;100;1\nthird;-5;3\nfourth;353;4\nfourth;353;4\nx;1;2;3;4;5;6;7'
    expect(refused(text)).toEqual([
      expect.stringMatching(/^1 length: abc \/ /),
      '2 pressed: 7 / 0, or valves of 1, 2, 3, 4 joined with -',
      '3 name:  / a name of 1 to 60 characters',
      '4 length: -5 / at least 0 mm',
      '6 name: fourth / a name used once; line 5 has it',
      expect.stringMatching(/^7 line: /),
    ])
  })

  it('never takes a decimal comma between commas for the next column', () => {
    expect(refused('first,171,4,1')[0]).toMatch(/^1 length: 171,4 \/ a decimal point, or columns parted/)
    expect(refused('first,171,12,1')).toHaveLength(1)
  })

  it('refuses a length of two meanings and one of two units', () => {
    expect(refused('a\t1,000\t1')).toHaveLength(1)
    expect(refused('a\t171 mm\tin\t1')).toEqual([
      '1 length: 171 mm in / a length in the one unit that its heading or its line says',
    ])
    expect(loops('a\t171 mm\tmm\t1')[0]?.lengthMm).toBe(171)
  })

  it('refuses a valve that is to be down and up', () => {
    expect(refused('a;171;12;1-2;2')).toEqual(['1 released: 2 / valve 2 down or up, not both'])
  })

  it('whatever the text, is rows of finite lengths or refusals that say something', () => {
    const cells = fc.oneof(fc.string(), fc.constantFrom('first', '171,4', 'mm', '1-3', '"', '1/0', '9e999'))
    const text = fc
      .array(fc.array(cells, { maxLength: 7 }).map((row) => row.join(';')))
      .map((rows) => rows.join('\n'))
    fc.assert(
      fc.property(text, (any) => {
        const { rows, refusals } = read(any)
        expect(rows.every(({ lengthMm }) => Number.isFinite(lengthMm) && lengthMm >= 0)).toBe(true)
        expect(refusals.every(({ expected }) => expected !== '')).toBe(true)
        expect(rows.length + refusals.length).toBeGreaterThan(0)
      }),
    )
  })
})

describe('Loops taken into a design', () => {
  const workbook = exampleWorkbooks.find(({ name }) => /^Bass in F/.test(name))!
  const design = workbook.designs[0]!

  it('that were exported are the same loops, in millimetres and in inches, for every design of every example', () => {
    for (const book of exampleWorkbooks)
      for (const each of book.designs)
        for (const unit of ['mm', 'in'] as const) {
          const ids = each.valves.map(({ id }) => id)
          const { rows, refusals } = readLoops(csvText(loopsTable(each, unit)), { valveIds: ids, unit: 'mm' })
          expect(refusals).toEqual([])
          const taken = takeLoops(each.id, rows, 'replaced').apply(book)
          const back = taken.designs.find(({ id }) => id === each.id)!
          expect(back.loops).toEqual(
            each.loops.map((loop) => ({
              ...loop,
              lengthMm: expect.closeTo(loop.lengthMm, 9),
              ...(loop.diameterMm === undefined ? {} : { diameterMm: expect.closeTo(loop.diameterMm, 9) }),
            })),
          )
        }
  })

  it('keep their id and slide where the name is known; new ones are added, and the others stay', () => {
    const [first] = design.loops
    const { rows } = read(`${first!.name};480;1\nfifth;900;1-2`)
    const { loops: after } = takeLoops(design.id, rows, 'added').apply(workbook).designs[0]!
    expect(after[0]).toEqual({ ...first, lengthMm: 480, pressed: ['1'] })
    expect(after.slice(1, -1)).toEqual(design.loops.slice(1))
    expect(after.at(-1)).toMatchObject({ name: 'fifth', lengthMm: 900, pressed: ['1', '2'] })
    expect(brokenRule(takeLoops(design.id, rows, 'replaced').apply(workbook))).toBeNull()
  })

  it('are meant by their name before their id', () => {
    const [first, second] = design.loops
    const named = [
      { ...first!, id: 'second', name: 'other' },
      { ...second!, id: 'L2', name: 'second' },
    ]
    const book = { ...workbook, designs: [{ ...design, loops: named }] }
    const { rows } = read('second;480;1')
    const { loops: after } = takeLoops(design.id, rows, 'added').apply(book).designs[0]!
    expect(after.map(({ id }) => id)).toEqual(['second', 'L2'])
    expect(after.map(({ lengthMm }) => lengthMm)).toEqual([first!.lengthMm, 480])
  })

  it('get ids of their own where the valve’s is taken', () => {
    const { rows } = read('a;480;1\nb;490;1')
    const { loops: after } = takeLoops(design.id, rows, 'added').apply(workbook).designs[0]!
    expect(after.slice(-2).map(({ id }) => id)).toEqual(['L1 2', 'L1 3'])
  })

  it('without valves only change loops that are there; others are refused by their line', () => {
    const { rows } = read('name;length\nfirst;480\nnobody;1')
    expect(strangers(design, rows)).toEqual([
      {
        line: 3,
        column: 'name',
        found: 'nobody',
        expected: expect.stringContaining('its valves, or one of first'),
      },
    ])
    const { loops: after } = takeLoops(design.id, rows.slice(0, 1), 'added').apply(workbook).designs[0]!
    expect(after).toEqual(
      design.loops.map((loop) => (loop.name === 'first' ? { ...loop, lengthMm: 480 } : loop)),
    )
  })
})
