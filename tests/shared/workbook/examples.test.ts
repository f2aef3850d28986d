import { readdirSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { examples } from '#shared/workbook/examples/examples.ts'
import { openWorkbook } from '#shared/workbook/openWorkbook.ts'
import { tablesRecord } from '#shared/workbook/tablesRecord.ts'
import { writeWorkbook } from '#shared/workbook/writeWorkbook.ts'
import { examplesFolder, exampleText, exampleWorkbook } from '../../fixtures/exampleFiles.ts'

/** Every warning of every example, each one looked at: these combinations are known to fall on other notes. */
const fallen: Readonly<Record<string, readonly (readonly [design: number, found: string])[]>> = {
  'bass-in-f': [
    [0, '1-2-4 (+79), 1-3-4 (+137), 2-3-4 (+104), 1-2-3-4 (+175)'],
    [1, '1-2-3-4 (+54)'],
    [2, '1-2-4 (+79), 1-3-4 (+113), 2-3-4 (+92), 1-2-3-4 (+141)'],
  ],
  'alto-in-e-flat': [[0, '1-2-3 (+54)']],
  'double-horn-in-f': [
    [0, '1-2-3 (+54)'],
    [1, '1-2-3 (+54)'],
  ],
  'six-valve-trombone': [[1, '1-2-3 (+54)']],
  'early-two-valve': [],
}

describe('the examples', () => {
  it('are the design files of their folder, each listed once', () => {
    const files = readdirSync(examplesFolder).filter((name) => name.endsWith('.ferrule'))
    expect(examples.map(({ file }) => file).sort()).toEqual(files.sort())
    expect(examples).toHaveLength(5)
    expect(new Set(examples.map(({ id }) => id)).size).toBe(5)
  })
})

describe.each(examples.map((example) => [example.id, example] as const))('the example %s', (id, example) => {
  it('opens, and is written back as it stands in its file', () => {
    const opened = openWorkbook(exampleText(example))
    expect(opened).toMatchObject({ ok: true, workbook: { name: expect.any(String) } })
    expect(writeWorkbook(exampleWorkbook(example))).toBe(exampleText(example))
  })

  it('compares at least two designs and is described in one sentence', () => {
    expect(exampleWorkbook(example).designs.length).toBeGreaterThanOrEqual(2)
    expect(example.description).toMatch(/^[A-Z][^.]*\.$/)
    expect(example.title).not.toBe('')
  })

  it('has only finite figures', () => {
    const record = tablesRecord(exampleWorkbook(example))
    const numbers = numbersIn(record)
    expect(numbers.length).toBeGreaterThan(100)
    expect(numbers.filter((number) => !Number.isFinite(number))).toEqual([])
  })

  it('warns of nothing but the combinations that are known to fall on another note', () => {
    const { warnings } = tablesRecord(exampleWorkbook(example))
    expect(warnings.map(({ path, found }) => [path, found])).toEqual(
      fallen[id]!.map(([design, found]) => [`designs[${design}].loops`, found]),
    )
  })
})

describe('the bass in F', () => {
  it('has four, seven, six and fifteen loops', () => {
    const { designs } = exampleWorkbook(examples[0]!)
    expect(designs.map(({ loops }) => loops.length)).toEqual([4, 7, 6, 15])
  })
})

describe('the double horn', () => {
  it('takes T from written G sharp in the staff upwards, within 20 cents of every note', () => {
    const workbook = exampleWorkbook(examples[2]!)
    for (const { chosen } of workbook.designs) {
      const midis = Object.keys(chosen ?? {}).map(Number)
      expect(midis).toEqual(Array.from({ length: 17 }, (_, i) => 61 + i))
    }
    for (const { notes } of tablesRecord(workbook).designs) {
      for (const [midi, { pressed, harmonic }] of Object.entries(workbook.designs[0]!.chosen!)) {
        const fingering = pressed.join('-')
        const note = notes.find((each) => each.midi === Number(midi))!
        const way = note.candidates.find((each) => each.fingering === fingering && each.harmonic === harmonic)
        expect(Math.abs(way!.errorCents)).toBeLessThan(20)
      }
    }
  })
})

function numbersIn(value: unknown): readonly number[] {
  if (typeof value === 'number') return [value]
  if (value === null || typeof value !== 'object') return []
  return Object.values(value).flatMap(numbersIn)
}
