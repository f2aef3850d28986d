import { describe, expect, it } from 'vitest'
import { benchRecord } from '#shared/workbook/benchRecord.ts'
import { takeIntoDesign } from '#shared/workbook/commands/takeIntoDesign.ts'
import type { Failure } from '#shared/workbook/failure.ts'
import { openWorkbook } from '#shared/workbook/openWorkbook.ts'
import { tablesRecord } from '#shared/workbook/tablesRecord.ts'
import type { Workbook } from '#shared/workbook/workbook.ts'
import { writeWorkbook } from '#shared/workbook/writeWorkbook.ts'
import { benchWorkbook } from '../../fixtures/benchWorkbook.ts'
import { loosened, workbookWith } from '../../fixtures/workbooks.ts'

const sound = () => loosened(benchWorkbook())
const text = JSON.stringify(sound())

function refusal(given: string): Failure {
  const opened = openWorkbook(given)
  if (opened.ok) throw new Error('it was opened')
  return opened.failure
}

function workbookOf(given: string): Workbook {
  const opened = openWorkbook(given)
  if (!opened.ok) throw new Error(opened.failure.message)
  return opened.workbook
}

/** The text of a sound workbook with one change made to it. */
function broken(change: (file: ReturnType<typeof sound>) => void): string {
  const file = sound()
  change(file)
  return JSON.stringify(file)
}

/** Large texts take their time where other tests run beside them. */
const patienceMs = 60_000

const many = (count: number, item: unknown) => Array(count).fill(item)

describe('a hostile file is refused with the place in it', () => {
  it.each([
    [
      '100 000 levels of lists in a loop',
      text.replace('"lengthMm":265', `"lengthMm":${'['.repeat(100_000)}`),
      'designs[0].loops',
    ],
    ['100 000 levels of objects', `{"format":${'{"a":'.repeat(100_000)}`, 'format.a.a'],
    [
      'a length of 1e308 mm',
      text.replace('"lengthMm":265', '"lengthMm":1e308'),
      'designs[0].loops[2].lengthMm',
    ],
    [
      'a number that no memory holds',
      text.replace('"lengthMm":265', '"lengthMm":1e999'),
      'designs[0].loops[2].lengthMm',
    ],
    ['one in a key of another program', text.replace('{"format"', '{"ours":[0,1e999],"format"'), 'ours[1]'],
    [
      'a loop that has the id of another',
      broken((file) => (file.designs[0].loops[2].id = 'L1')),
      'designs[0].loops[2].id',
    ],
    [
      'a key that stands twice',
      text.replace('"lengthMm":265', '"lengthMm":265,"lengthMm":1'),
      'designs[0].loops[2].lengthMm',
    ],
    [
      'a prototype for its offsets',
      text.replace('"instrument":{', '"instrument":{"harmonicOffsetsCents":{"__proto__":{"2":5}},'),
      'designs[0].instrument.harmonicOffsetsCents.__proto__',
    ],
    ['a list at its top', '[1,2,3]', 'format'],
    ['null', 'null', 'format'],
    ['a NUL between two values', text.replace('"version"', '\0"version"'), 'format'],
    ['a NUL in a name', text.replace('"L1"', '"L\0"'), 'designs[0].loops[0].id'],
    [
      'a key of a million letters, and a number in it too large',
      text.replace('{"format"', `{"${'x'.repeat(1e6)}":1e999,"format"`),
      `${'x'.repeat(40)}…`,
    ],
  ])('%s', (_, given, path) => {
    const failure = refusal(given)
    expect(failure.path.replace(/^\["(.*)"\]$/, '$1').startsWith(path)).toBe(true)
    expect(failure.message.startsWith(failure.path)).toBe(true)
    expect([failure.found, failure.expected]).not.toContain('')
    expect(failure.message.length).toBeLessThan(400)
  })

  it.each([
    ['an empty file', '', 'nothing in it'],
    ['a byte order mark and no more', '\uFEFF', 'nothing in it'],
    [
      'UTF-16 as a strict reader never gives it',
      `\uFFFD\uFFFD${[...text].join('\0')}\0`,
      'two bytes for each sign, as in UTF-16',
    ],
    ['UTF-16 without its mark', [...text].join('\0'), 'two bytes for each sign, as in UTF-16'],
    ['UTF-16, the other byte first', `\0${[...text].join('\0')}`, 'two bytes for each sign, as in UTF-16'],
    ['a file that is all NUL', '\0'.repeat(1000), '"\\u0000" in line 1, column 1'],
  ])('as a whole: %s', (_, given, found) => {
    expect(refusal(given)).toMatchObject({ kind: 'notJson', path: '', found })
  })

  it.each([
    [
      '20 MB of loops',
      `{"format":"ferrule","version":1,"designs":[{"loops":[${many(440_000, '{"id":"L1","lengthMm":123.4,"pressed":[ "1" ]}').join()}]}]}`,
      'designs[0].loops[199998].pressed[0]',
    ],
    ['more than 20 MB of loops', text.padEnd(20 * 1024 * 1024 + 1), ''],
    ['20 MB of empty lists', `[${many(6_900_000, '[]').join()}]`, '[999999]'],
    [
      '20 MB of objects in a place for loops',
      broken((file) => (file.designs[0].loops = many(900_000, {}))),
      'designs[0].loops',
    ],
    [
      'readings without number, every one of them wrong',
      broken(
        (file) => (file.bench.readings = many(200, { id: 'r', design: 'd', a4Hz: 440, rows: many(400, {}) })),
      ),
      'bench.readings[0].rows[0].pressed',
    ],
    [
      'fingerings, every one of them wrong',
      broken((file) => (file.designs = many(100, { ...file.designs[0], fingerings: many(4096, 0) }))),
      'designs[0].fingerings[0]',
    ],
    [
      'ten thousand offsets by no number',
      broken(
        (file) =>
          (file.designs[0].instrument.harmonicOffsetsCents = Object.fromEntries(
            many(9_999, 0).map((_, i) => [`k${i}`, 'x']),
          )),
      ),
      'designs[0].instrument.harmonicOffsetsCents.k0',
    ],
  ])(
    'however much is wrong in it: %s',
    (_, given, path) => {
      expect(refusal(given).path).toBe(path)
    },
    patienceMs,
  )
})

describe('an odd file that keeps every rule is opened and kept as it is', () => {
  it.each([
    ['the smallest length', (file) => (file.designs[0].loops[0].lengthMm = 5e-324)],
    ['a length of 1e-320 mm', (file) => (file.designs[0].loops[0].lengthMm = 1e-320)],
    ['numbers of 1e308 in keys of another program', (file) => (file.ours = [1e308, -1e308])],
    ['a lone surrogate in a name', (file) => (file.designs[0].name = 'x\ud800')],
    ['a NUL, spelt out, in a name', (file) => (file.designs[0].loops[0].name = 'a\0b')],
    ['names from right to left', (file) => (file.designs[0].loops[0].name = 'צינור ראשון')],
    ['marks that turn the writing round', (file) => (file.designs[0].name = '\u202eabc')],
    ['emoji joined of several', (file) => (file.designs[0].loops[0].name = '👩‍🔧🎺')],
    ['a loop called __proto__', (file) => (file.designs[0].loops[0].id = '__proto__')],
    ['a loop called constructor', (file) => (file.designs[0].loops[0].id = 'constructor')],
    [
      'a valve called __proto__',
      (file) => {
        file.designs[0].valves[0].id = '__proto__'
        file.designs[0].loops[0].pressed = ['__proto__']
      },
    ],
  ] as readonly (readonly [string, (file: ReturnType<typeof sound>) => void])[])('%s', (_, change) => {
    const opened = workbookOf(broken(change))
    expect(workbookOf(writeWorkbook(opened))).toStrictEqual(opened)
    expect(JSON.parse(writeWorkbook(opened))).toStrictEqual(JSON.parse(broken(change)))
    expect(JSON.stringify(tablesRecord(opened))).not.toContain('null')
    expect(benchRecord(opened).pitchChanges[0]?.bodyMm).toBeGreaterThan(0)
  })

  it('after a byte order mark', () => {
    expect(workbookOf(`\uFEFF${text}`)).toStrictEqual(workbookOf(text))
  })

  it('but for a −0, which is nothing', () => {
    const opened = workbookOf(
      text.replace('"lengthMm":265', '"lengthMm":-0').replace('{"format"', '{"ours":[-0,-1e-999],"format"'),
    )
    expect(opened.designs[0]?.loops[2]?.lengthMm).toBe(0)
    expect(opened).toHaveProperty('ours', [0, 0])
    expect(workbookOf(writeWorkbook(opened))).toStrictEqual(opened)
  })
})

describe('keys that belong to every object', () => {
  it('stay keys of the file, and nothing else gains them', () => {
    const keys = '"__proto__":{"polluted":1},"constructor":{"prototype":{"polluted":1}},'
    const opened = workbookOf(text.replaceAll('{"', `{${keys}"`))
    tablesRecord(opened)
    benchRecord(opened)
    expect(writeWorkbook(opened).match(/"__proto__"/g)?.length).toBeGreaterThan(10)
    expect(Object.hasOwn(Object.prototype, 'polluted')).toBe(false)
    expect(({} as { polluted?: number }).polluted).toBeUndefined()
  })

  it('are no lengths: a loop called constructor keeps its own when others are taken', () => {
    const workbook = workbookWith('plain-3')
    const [design] = workbook.designs
    const loops = design!.loops.map((loop, i) => (i === 0 ? { ...loop, id: 'constructor' } : loop))
    const named = { ...workbook, designs: [{ ...design!, loops }] }
    const taken = takeIntoDesign('Take', 'design', { loopsMm: { L2: 100 } }).apply(named).designs[0]!
    expect(taken.loops.map(({ lengthMm }) => lengthMm)).toEqual([loops[0]!.lengthMm, 100, loops[2]!.lengthMm])
  })
})
