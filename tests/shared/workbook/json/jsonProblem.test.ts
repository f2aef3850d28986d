import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { deepestNesting, jsonProblem, mostKeys, mostValues } from '#shared/workbook/json/jsonProblem.ts'

function isParsed(text: string): boolean {
  try {
    JSON.parse(text)
    return true
  } catch {
    return false
  }
}

describe('a text is looked through before it is parsed', () => {
  it('and has a problem just when it cannot be parsed, as long as no key stands twice', () => {
    const almost = fc
      .tuple(fc.json(), fc.nat(), fc.constantFrom('', ...'{}[],:"\\0-.e+1 \n\ttn\0é'))
      .map(([text, at, sign]) => text.slice(0, at % text.length) + sign + text.slice((at % text.length) + 1))
    const pieces = fc
      .array(fc.constantFrom(...'{}[],:"\\01-.e+ \n', 'true', 'null', 'tru', '"a"', '1e5', '\\u00e9'))
      .map((all) => all.join(''))
    fc.assert(
      fc.property(fc.oneof(fc.json(), almost, pieces, fc.string()), (text) => {
        const problem = jsonProblem(text)
        fc.pre(problem?.expected !== 'each key once in an object')
        expect(problem === null).toBe(isParsed(text))
      }),
      { numRuns: 3000 },
    )
  }, 60_000)

  it.each([
    ['{"a":[1,}', 'a[1]', '"}" in line 1, column 9'],
    ['{"a":{"b":1.}}', 'a.b', '"1" in line 1, column 11'],
    ['{\n  "a" 1}', 'a', '"1" in line 2, column 7'],
    ['[1 2]', '[0]', '"2" in line 1, column 4'],
    ['[', '', 'the end too soon'],
    ['[}', '[0]', '"}" in line 1, column 2'],
    ['1 2', '', '"2" in line 1, column 3'],
    ['{"a":"\u0007"}', 'a', '""" in line 1, column 6'],
    ['\u202e', '', '"\\u202e" in line 1, column 1'],
  ])('%j is broken at %j', (text, path, found) => {
    expect(jsonProblem(text)).toMatchObject({ path, expected: 'a design file in JSON' })
    expect(jsonProblem(text)?.found.replace('"\\""', '"""')).toBe(found)
  })

  it.each([
    ['{"a":1,"a":1}', 'a'],
    ['{"a":1,"\\u0061":2}', 'a'],
    ['{"x":[{"b":1},{"b":1,"c":{},"b":2}]}', 'x[1].b'],
    ['{"__proto__":1,"__proto__":2}', '__proto__'],
  ])('%j has a key twice', (text, path) => {
    expect(jsonProblem(text)).toMatchObject({ path, found: 'the same key again' })
  })

  it('and may be nested as deeply as is read, and no deeper', () => {
    const nested = (levels: number) => '['.repeat(levels) + ']'.repeat(levels)
    expect(jsonProblem(nested(deepestNesting))).toBeNull()
    expect(jsonProblem(nested(deepestNesting + 1))?.path).toBe('[0][0][0]')
    expect(jsonProblem('{"a":'.repeat(100_000))?.path).toBe('a.a.a')
  })

  it('and may hold as many values and keys as are read, and no more', () => {
    const values = (count: number) =>
      `[${Array(count - 1)
        .fill('0')
        .join()}]`
    expect(jsonProblem(values(mostValues))).toBeNull()
    expect(jsonProblem(values(mostValues + 1))?.expected).toBe(`at most ${mostValues} in a file`)
    const keys = (count: number) => `{${Array.from({ length: count }, (_, i) => `"${i}":0`).join()}}`
    expect(jsonProblem(keys(mostKeys))).toBeNull()
    expect(jsonProblem(keys(mostKeys + 1))?.expected).toBe(`at most ${mostKeys} in an object`)
  }, 60_000)
})
