import { isDeepStrictEqual } from 'node:util'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type Opened, openValue, openWorkbook } from '#shared/workbook/openWorkbook.ts'
import { tablesRecord } from '#shared/workbook/tablesRecord.ts'
import type { Workbook } from '#shared/workbook/workbook.ts'
import { writeWorkbook } from '#shared/workbook/writeWorkbook.ts'
import { anyWorkbook } from '../../fixtures/anyWorkbook.ts'
import { loosened, workbookWith } from '../../fixtures/workbooks.ts'

function workbookOf(opened: Opened): Workbook {
  if (!opened.ok) throw new Error(opened.failure.message)
  return opened.workbook
}

const failureOf = (text: string) => {
  const opened = openWorkbook(text)
  return opened.ok ? null : opened.failure
}

describe('any sound workbook', () => {
  it('is the same after it was written and opened, unknown keys and all', () => {
    fc.assert(
      fc.property(anyWorkbook, (workbook) => {
        const text = writeWorkbook(workbook)
        const opened = workbookOf(openWorkbook(text))
        expect(isDeepStrictEqual(opened, workbook)).toBe(true)
        expect(writeWorkbook(opened)).toBe(text)
      }),
    )
  })

  it('has only finite figures and whole messages', () => {
    fc.assert(
      fc.property(anyWorkbook, (workbook) => {
        const text = JSON.stringify(tablesRecord(workbook), (_, value) =>
          typeof value === 'number' && !Number.isFinite(value) ? 'NOT FINITE' : value,
        )
        expect(text).not.toMatch(/NOT FINITE|NaN|Infinity|undefined/)
      }),
      { numRuns: 60 },
    )
  })

  it('is not changed by being opened', () => {
    fc.assert(
      fc.property(anyWorkbook, (workbook) => {
        const frozen = deepFrozen(workbook)
        expect(workbookOf(openValue(frozen))).toBe(frozen)
      }),
    )
  })
})

describe('a written workbook', () => {
  it('has its known keys in one order, whatever order they came in, and unknown ones after them', () => {
    const workbook = workbookWith('plain-3', { mainSlide: { outMm: 1, travelMm: 2 } })
    const turned = turnedRound({ ...workbook, ours: { b: 1, a: 2 } })
    const text = writeWorkbook(turned as Workbook)
    expect(text.replace(/,\n {2}"ours": \{[^}]*\}/, '')).toBe(writeWorkbook(workbook))
    expect(text.endsWith('  "ours": {\n    "a": 2,\n    "b": 1\n  }\n}\n')).toBe(true)
  })

  it('is indented by two spaces and ends with a line end', () => {
    expect(writeWorkbook(workbookWith('plain-3')).split('\n').slice(0, 3)).toEqual([
      '{',
      '  "format": "ferrule",',
      '  "version": 1,',
    ])
    expect(writeWorkbook(workbookWith('plain-3')).endsWith('\n}\n')).toBe(true)
  })

  it('keeps a key named __proto__ at every level', () => {
    const text = JSON.stringify(workbookWith('plain-3'))
      .replace('{"format"', '{"__proto__":{"a":1},"format"')
      .replace('"instrument":{', '"instrument":{"__proto__":[2],')
      .replace('"loops":[{', '"loops":[{"__proto__":"three",')
    const written = writeWorkbook(workbookOf(openWorkbook(text)))
    expect(JSON.parse(written)).toStrictEqual(JSON.parse(text))
    expect(written.match(/"__proto__"/g)).toHaveLength(3)
    expect(({} as { a?: number }).a).toBeUndefined()
  })
})

describe('what is not a design file is refused', () => {
  it.each([
    ['', 'notJson', '', 'nothing in it'],
    ['  \n', 'notJson', '', 'nothing in it'],
    ['null', 'notFerrule', 'format', 'nothing'],
    ['[]', 'notFerrule', 'format', 'nothing'],
    ['"ferrule"', 'notFerrule', 'format', 'nothing'],
    ['{}', 'notFerrule', 'format', 'nothing'],
    ['{"format":"elsewhere"}', 'notFerrule', 'format', '"elsewhere"'],
    ['{"format":["ferrule"]}', 'notFerrule', 'format', 'a list of 1'],
  ])('%j', (text, kind, path, found) => {
    expect(failureOf(text)).toMatchObject({ kind, path, found })
  })

  it.each(['{', '\0', '{"format":"ferrule",}', "{'format':'ferrule'}", '{"a":NaN}'])(
    '%j: not JSON',
    (text) => {
      expect(failureOf(text)).toMatchObject({ kind: 'notJson', expected: 'a design file in JSON' })
    },
  )

  it('a file of more than 20 MB, and no smaller one for its size', () => {
    const limit = 20 * 1024 * 1024
    const text = JSON.stringify(workbookWith('plain-3'))
    expect(openWorkbook(text.padEnd(limit)).ok).toBe(true)
    expect(failureOf(text.padEnd(limit + 1))).toMatchObject({ kind: 'tooLarge', expected: 'at most 20 MB' })
  })

  it('one nested too deeply to be read, but not brackets inside text', () => {
    for (const deep of ['['.repeat(200_000), '{"a":'.repeat(200_000), '['.repeat(65) + ']'.repeat(65)]) {
      expect(failureOf(deep)).toMatchObject({ kind: 'notJson', expected: 'at most 64 levels' })
    }
    const workbook = { ...workbookWith('plain-3'), notes: `\\"${'[{'.repeat(500)}` }
    expect(openWorkbook(JSON.stringify(workbook)).ok).toBe(true)
  })

  it('a newer version, in words of its own', () => {
    expect(failureOf(JSON.stringify({ ...workbookWith('plain-3'), version: 7 }))).toEqual({
      kind: 'newerVersion',
      path: 'version',
      found: '7',
      expected: 'at most 1',
      message: 'This file is of version 7; this program reads up to version 1. Open it with a newer Ferrule.',
    })
  })
})

describe('odd text', () => {
  it.each([
    ['a byte order mark', (text: string) => `\uFEFF${text}`],
    ['line ends of another system', (text: string) => text.replaceAll('\n', '\r\n')],
  ])('%s before or in the file is passed over', (_, changed) => {
    const text = writeWorkbook(workbookWith('plain-3'))
    expect(writeWorkbook(workbookOf(openWorkbook(changed(text))))).toBe(text)
  })

  it.each(['\0', '\ud800', '\u202e\u05e9\u05dc\u05d5\u05dd', '\u2028', '"\\', '𝄞'])(
    '%j is kept in names',
    (name) => {
      const workbook = workbookWith('plain-3', { name })
      expect(workbookOf(openWorkbook(writeWorkbook(workbook)))).toEqual(workbook)
    },
  )

  it('in a refusal is shortened and quoted', () => {
    const file = loosened(workbookWith('plain-3'))
    file.designs[0].loops[0].pressed = ['\u0007'.repeat(100)]
    const { found, message } = failureOf(JSON.stringify(file))!
    expect(found).toBe(`"${'\\u0007'.repeat(40)}…"`)
    expect(message).toContain(found)
  })

  it('does not make one valve of two spellings', () => {
    const file = loosened(workbookWith('plain-3'))
    file.designs[0].valves[0].id = 'é'
    file.designs[0].loops[0].pressed = ['e\u0301']
    expect(failureOf(JSON.stringify(file))).toMatchObject({ path: 'designs[0].loops[0].pressed[0]' })
  })
})

function deepFrozen<T>(value: T): T {
  if (value !== null && typeof value === 'object') Object.values(Object.freeze(value)).forEach(deepFrozen)
  return value
}

/** The same value with the keys of every object the other way round. */
function turnedRound(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(turnedRound)
  if (value === null || typeof value !== 'object') return value
  const entries = Object.entries(value).map(([key, inner]) => [key, turnedRound(inner)] as const)
  return Object.fromEntries(entries.reverse())
}
