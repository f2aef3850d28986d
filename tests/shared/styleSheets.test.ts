import { describe, expect, test } from 'vitest'
import { filesOf } from './imports/sources.ts'
import { classesDefinedTwice, classesOf, sharedSheets } from './imports/styleSheets.ts'

const sheets = filesOf('src-renderer', /\.css$/)

describe('the style sheets of the window', () => {
  test('are found, the shared ones among them', () => {
    expect(sheets.map(({ path }) => path)).toEqual(expect.arrayContaining(sharedSheets))
    expect(sheets.flatMap(classesOf).length).toBeGreaterThan(0)
  })

  test('define no class twice, as a sheet that is loaded with one page stays when another is shown', () => {
    expect(classesDefinedTwice(sheets)).toEqual([])
  })
})

describe('the look for classes defined twice', () => {
  const sheet = (path: string, text: string) => ({ path, text })

  test('finds classes on their own, in lists and within a condition of the screen', () => {
    const text =
      '/* .no { } */ .a { margin: 0 } .b, .c\n{ top: 0; } .d .no, .no:hover, .no > .no { } @media print { .e { } }'
    expect(classesOf(sheet('x.css', text))).toEqual(['.a', '.b', '.c', '.e'])
  })

  test('names the class and its places', () => {
    const found = classesDefinedTwice([sheet('x.css', '.a { }'), sheet('y.css', '.b { } .a { }')])
    expect(found).toEqual(['.a in x.css, y.css'])
  })

  test('lets a sheet define a class twice, and one add to a shared sheet', () => {
    const shared = sheet(sharedSheets[0]!, '.a { }')
    expect(classesDefinedTwice([sheet('x.css', '.a { } @media print { .a { } }'), shared])).toEqual([])
  })
})
