import { describe, expect, test } from 'vitest'
import { type ProfileUnit, readProfile } from '#shared/bore/readProfile.ts'
import { demand } from './bores.ts'

const points = (text: string, unit?: ProfileUnit) => demand(readProfile(text, unit)).section.points
const refusal = (text: string) => {
  const read = readProfile(text)
  return read.ok ? undefined : read.refusal
}

describe('a profile is read at the first try', () => {
  test.each([
    ['tabs, as a spreadsheet pastes them', '0\t11.66\n120\t13.2\n'],
    ['commas', '0,11.66\n120,13.2'],
    ['commas and spaces', '0, 11.66\n120, 13.2'],
    ['semicolons and decimal commas', '0;11,66\n120;13,2'],
    ['tabs and decimal commas', '0\t11,66\r\n120\t13,2\r\n'],
    ['spaces and decimal commas', '0,0 11,66\n120,0 13,2'],
    ['spaces in columns', '  0    11.66\n  120  13.2'],
    ['quoted cells', '"0";"11,66"\n"120";"13,2"'],
    ['empty columns at the end', '0;11.66;;\n120;13.2;;'],
    ['a heading', 'x;diameter\n0;11.66\n120;13.2'],
    [
      'two lines of heading, blank lines and a byte-order mark',
      '\uFEFFBell\nx (mm);d (mm)\n\n0;11.66\n\n120;13.2\n',
    ],
    ['remarks', '# measured with a gauge\n0 11.66\n120 13.2'],
    ['exponents', '0 1.166e1\n1.2E2 13.2'],
    ['the bell first', '120 13.2\n0 11.66'],
  ])('%s', (_, text) => {
    expect(points(text)).toEqual([
      [0, 11.66],
      [120, 13.2],
    ])
  })

  test('inches by the heading', () => {
    expect(points('x (in),dia (in)\n0,0.5\n10,1')).toEqual([
      [0, 12.7],
      [254, 25.4],
    ])
    expect(demand(readProfile('distance/inches\tbore\n0\t.5\n1\t.6'))).toMatchObject({
      unit: 'in',
      headerLines: 1,
    })
  })

  test.each([
    ['a title with the word in', 'Bass in F\nx;d\n0;17.2\n100;18', 'mm'],
    ['a title that ends with it', 'The bell as it came in\nx;d\n0;17.2\n100;18', 'mm'],
    ['a preposition before the unit', 'distance in mm;bore in mm\n0;17.2\n100;18', 'mm'],
    ['a title of another unit than the columns', 'Bell of 0.5 mm sheet\nx (in);d (in)\n0;1\n5;2', 'in'],
    ['columns that end with in', 'Bass in F\nx, in;d, in\n0;1\n5;2', 'in'],
    ['columns of inches parted by spaces', 'x in  d in\n0 1\n5 2', 'in'],
    ['marks in quoted cells', '"x (″)";"d (″)"\n0;1\n5;2', 'in'],
    ['quoted cells without a unit', '"x";"d"\n0;1\n5;2', 'mm'],
  ])('the unit of %s', (_, text, unit) => {
    expect(demand(readProfile(text)).unit).toBe(unit)
  })

  test('a unit that is asked for stands above the heading', () => {
    expect(points('x (in),dia (in)\n0,5\n10,6', 'cm')).toEqual([
      [0, 50],
      [100, 60],
    ])
  })

  test('radii by the heading', () => {
    expect(points('x;radius\n0;5\n10;6')).toEqual([
      [0, 10],
      [10, 12],
    ])
  })

  test('a step keeps both its points', () => {
    expect(points('0 10\n50 10\n50 14\n90 14')).toHaveLength(4)
  })
})

describe('what cannot be read is refused with its line', () => {
  test.each([
    ['nothing', '', 'text'],
    ['words', 'a bell\nof brass', 'text'],
    ['one point', '0;11', 'text'],
    ['one column', '0\n1\n2', 'line 1'],
    ['three columns', '0;11;12\n1;11;12', 'line 1'],
    ['a word among the numbers', 'x;d\n0;11\n1;wide', 'line 3'],
    ['decimal commas parted by commas', '0,5,11,6\n1,5,11,8', 'line 1'],
    ['a diameter of 0', '0;11\n5;0', 'line 2'],
    ['a thousands separator', '0;11\n1.000,5;12', 'line 2'],
    ['distances out of order', '0;11\n9;12\n5;13\n20;14', 'line 3'],
    ['a number that no memory holds', '0;11\n1e999;12', 'line 2'],
    ['a NUL among the numbers', '0;11\n1;1\u00002', 'line 2'],
    ['text in UTF-16', '\uFFFD\uFFFD0\u0000;\u00001\u0000', 'text'],
    ['a line of a million signs', `0;11\n1;${'1'.repeat(1e6)}`, 'line 2'],
    ['five million line ends and more', '\n'.repeat(5_000_001), 'text'],
    ['more lines than a bore has', '1 1\n'.repeat(100_001), 'text'],
  ])('%s', (_, text, path) => {
    expect(refusal(text)).toMatchObject({ path })
    expect(refusal(text)?.expected).not.toBe('')
    expect(refusal(text)?.found.length).toBeLessThan(80)
  })
})
