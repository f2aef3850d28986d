import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import Papa from 'papaparse'
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest'
import type { BoreRecord } from '#shared/workbook/boreRecord.ts'
import type { Workbook } from '#shared/workbook/workbook.ts'
import { writeWorkbook } from '#shared/workbook/writeWorkbook.ts'
import acoustics from '../../fixtures/acoustics.json' with { type: 'json' }
import { boreWorkbook } from '../../fixtures/boreWorkbook.ts'
import { workbookWith } from '../../fixtures/workbooks.ts'
import { ferrule, ferruleHere } from './ferrule.ts'

// A process of its own takes a second, and longer on a busy machine.
vi.setConfig({ testTimeout: 60_000 })

let folder: string
let file: string
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'ferrule-'))
  file = written('high.ferrule', boreWorkbook())
})
afterAll(() => rmSync(folder, { recursive: true }))

function written(name: string, workbook: Workbook): string {
  const path = join(folder, name)
  writeFileSync(path, writeWorkbook(workbook))
  return path
}

function recordOf(...args: readonly string[]): BoreRecord {
  const { code, stdout, stderr } = ferruleHere(['bore', ...args, '--json'])
  expect({ code, stderr }).toEqual({ code: 0, stderr: '' })
  return JSON.parse(stdout)
}

describe('ferrule bore --json', () => {
  it('prints the record of the contract and nothing else, in a process of its own', async () => {
    const { code, stdout, stderr } = await ferrule(['bore', file, '--fingering', '1-2', '--json'])
    expect({ code, stderr }).toEqual({ code: 0, stderr: '' })
    const record = JSON.parse(stdout)
    expect(Object.keys(record)).toEqual(['designs'])
    expect(Object.keys(record.designs[0])).toEqual(['id', 'fingerings'])
    expect(record.designs[0].fingerings.map(Object.keys)).toEqual([
      ['fingering', 'peaksHz', 'heights', 'equivalentFundamentalCents', 'lengthModelHz'],
    ])
  })

  const cases = acoustics.cases.filter(({ name }) => /^invented high instrument, fingering/.test(name))
  it.each(cases.map(({ name, peaksHz }) => [name.split(' ').at(-1)!, peaksHz] as const))(
    'finds the peaks of a separate program within 0.05 Hz: fingering %s',
    (fingering, peaksHz) => {
      const [design] = recordOf(file).designs
      const found = design!.fingerings.find((each) => each.fingering === fingering)!
      expect(peaksHz.length).toBeGreaterThan(7)
      for (const [i, hz] of peaksHz.entries()) expect(Math.abs(found.peaksHz[i]! - hz)).toBeLessThan(0.05)
    },
  )

  it('has every fingering of the design, a height and both figures for each of sixteen modes', () => {
    const { fingerings } = recordOf(file).designs[0]!
    expect(fingerings.map(({ fingering }) => fingering)).toEqual([
      '0',
      '1',
      '2',
      '3',
      '1-2',
      '1-3',
      '2-3',
      '1-2-3',
    ])
    for (const { peaksHz, heights, equivalentFundamentalCents, lengthModelHz } of fingerings) {
      expect(peaksHz).toHaveLength(16)
      expect(equivalentFundamentalCents).toHaveLength(16)
      expect(lengthModelHz).toHaveLength(16)
      expect(Math.min(...heights)).toBeGreaterThan(1e6)
    }
  })

  it('lowers every mode of the open route alike for the length model', () => {
    const [open, first] = recordOf(file).designs[0]!.fingerings
    const ratios = first!.lengthModelHz.map((hz, i) => open!.peaksHz[i]! / hz!)
    for (const ratio of ratios) expect(ratio).toBeCloseTo(ratios[0]!, 12)
    expect(ratios[0]).toBeGreaterThan(1.11)
    for (const [i, hz] of open!.peaksHz.entries()) expect(open!.lengthModelHz[i]).toBeCloseTo(hz, 9)
  })

  it('says one fingering as it says it among all', () => {
    const all = recordOf(file).designs[0]!.fingerings
    const [one] = recordOf(file, '--fingering', '1-3').designs[0]!.fingerings
    expect(one).toEqual(all.find(({ fingering }) => fingering === '1-3'))
  })

  it('takes the valves of a fingering in whatever order, of every design that has it', () => {
    const [high] = boreWorkbook().designs
    const few = { ...high!, id: 'few', fingerings: [{ pressed: [] }] }
    const two = written('some.ferrule', { ...boreWorkbook(), designs: [few, high!] })
    const { designs } = recordOf(two, '--fingering', '2-1')
    expect(designs.map(({ id, fingerings }) => [id, fingerings.map((each) => each.fingering)])).toEqual([
      ['design', ['1-2']],
    ])
    for (const [asked, ids] of [
      [['--fingering', '2-1', '--design', 'few'], 'few'],
      [['--fingering', '1-4'], 'few, design'],
    ] as const)
      expect(ferruleHere(['bore', two, ...asked])).toMatchObject({
        code: 2,
        stderr: `ferrule: --fingering: found ${asked[1]}, expected a fingering of ${ids}\n`,
      })
  })

  it('has the designs with a bore, or the one that is asked for', () => {
    const [high] = boreWorkbook().designs
    const { bore: _none, ...plain } = { ...high!, id: 'plain' }
    const two = written('two.ferrule', {
      ...boreWorkbook(),
      designs: [plain, high!, { ...high!, id: 'again' }],
    })
    expect(recordOf(two).designs.map(({ id }) => id)).toEqual(['design', 'again'])
    expect(recordOf(two, '--design', 'again').designs.map(({ id }) => id)).toEqual(['again'])
    expect(ferruleHere(['bore', two, '--design', 'plain'])).toMatchObject({
      code: 2,
      stderr: 'ferrule: --design: found plain, which has no bore, expected design, again\n',
    })
  })

  it('has fewer modes where there are no more peaks, and only finite figures', () => {
    const sections = [
      { kind: 'valves', diameterMm: 300 },
      { kind: 'cylinder', lengthMm: 300, diameterMm: 300 },
    ] as const
    const short = written(
      'short.ferrule',
      workbookWith('plain-3', { bore: { sections }, loops: [] }, { fundamentalHz: 400 }),
    )
    const { stdout } = ferruleHere(['bore', short, '--json'])
    const { fingerings } = (JSON.parse(stdout) as BoreRecord).designs[0]!
    expect(fingerings[0]!.peaksHz.length).toBeLessThan(16)
    const figures = fingerings.flatMap(({ peaksHz, heights }) => [...peaksHz, ...heights])
    expect(figures.every(Number.isFinite)).toBe(true)
  })
})

describe('ferrule bore for reading', () => {
  it('has a table a fingering with what both models say, and true minus signs', () => {
    const { stdout, stderr } = ferruleHere(['bore', file, '--fingering', '1-2'])
    expect(stderr).toBe('')
    const lines = stdout.split('\n')
    expect(lines[0]).toMatch(/^.* \(design\): spherical wave fronts, 26\.9 °C, \d+ slices$/)
    expect(lines[2]).toMatch(/^Fingering 1-2, nominal fundamental \d+\.\d\d Hz$/)
    expect(lines[4]).toMatch(/^ {3}1 +67\.30 +\d+\.\d\d +−\d+\.\d/)
    expect(stdout).not.toMatch(/-\d+\.\d/)
  })

  it('says on standard error what looks like a slip', () => {
    const workbook = boreWorkbook()
    const [design] = workbook.designs
    const instrument = { ...design!.instrument, boreLengthMm: 2790 }
    const slip = written('slip.ferrule', { ...workbook, designs: [{ ...design!, instrument }] })
    expect(ferruleHere(['bore', slip, '--json']).stderr).toBe(
      'Warning: designs[0].bore.sections: Found 1395 mm of sections; expected 2790 mm, the bore length given: is it the length of one leg?\n',
    )
  })
})

describe('ferrule bore --csv', () => {
  it('has a row a mode, with the figures of the record unrounded', () => {
    const { stdout } = ferruleHere(['bore', file, '--csv'])
    const { data } = Papa.parse<Record<string, string>>(stdout.trimEnd(), { header: true })
    const { fingerings } = recordOf(file).designs[0]!
    expect(data).toHaveLength(8 * 16)
    expect(data.map((row) => Number(row['peak (Hz)']))).toEqual(fingerings.flatMap(({ peaksHz }) => peaksHz))
    expect(data[16]).toMatchObject({ design: 'design', fingering: '1', mode: '1' })
    expect(Number(data[17]!['error (cents)'])).toBeCloseTo(
      Number(data[17]!['length model error (cents)']) + Number(data[17]!['difference (cents)']),
      9,
    )
  })
})

describe('ferrule bore of a file without a bore', () => {
  it.each([
    ['--json', '{\n  "designs": []\n}\n'],
    ['--csv', expect.stringMatching(/^design,fingering,mode,[^\n]*\n$/)],
    ['', 'No design has a bore.\n'],
  ])('has nothing to tell, and is no bad file: %s', (form, stdout) => {
    const plain = written('boreless.ferrule', workbookWith('plain-3'))
    const asked = form === '' ? [plain] : [plain, form]
    expect(ferruleHere(['bore', ...asked])).toEqual({ code: 0, stdout, stderr: '' })
  })

  it('refuses a fingering that no design has, and takes one that some design has', () => {
    const plain = written('boreless.ferrule', workbookWith('plain-3'))
    expect(ferruleHere(['bore', plain, '--fingering', '9'])).toEqual({
      code: 2,
      stdout: '',
      stderr: 'ferrule: --fingering: found 9, expected a fingering of design\n',
    })
    expect(ferruleHere(['bore', plain, '--fingering', '1-3']).code).toBe(0)
  })
})

describe('ferrule bore refuses with code 2, nothing on standard output and the reason on standard error', () => {
  const refusal = (args: readonly string[]) => {
    const { code, stdout, stderr } = ferruleHere(['bore', ...args])
    expect({ code, stdout }).toEqual({ code: 2, stdout: '' })
    return stderr.replaceAll(`${folder}/`, '')
  }

  it.each<[readonly string[], string]>([
    [[], 'found no file, expected one design file'],
    [['a', 'b'], 'found 2 files, expected one design file'],
    [['nowhere.ferrule'], 'nowhere.ferrule: found no such file, expected a design file'],
    [['a', '--json', '--csv'], 'found both --json and --csv, expected one of them'],
    [['a', '--loop', 'L1'], 'found option --loop, expected --design, --fingering, --json, --csv'],
    [['a', '--fingering'], '--fingering: found nothing, expected a value'],
  ])('%j', (args, reason) => {
    expect(refusal(args)).toBe(`ferrule: ${reason}\n`)
  })

  it('a design or a fingering that is not there', () => {
    expect(refusal([file, '--design', 'round'])).toBe('ferrule: --design: found round, expected design\n')
    const plain = written('plain.ferrule', workbookWith('plain-3'))
    expect(refusal([plain, '--design', 'design'])).toBe(
      'ferrule: --design: found design, which has no bore, expected a design with a bore\n',
    )
    expect(refusal([file, '--fingering', '1-4'])).toBe(
      'ferrule: --fingering: found 1-4, expected a fingering of design\n',
    )
  })

  it('air too hot and loops too long for the bore, with their paths in the file', () => {
    const workbook = boreWorkbook()
    const hot = written('hot.ferrule', { ...workbook, air: { ...workbook.air, temperatureC: 70 } })
    expect(refusal([hot])).toBe(
      'ferrule: hot.ferrule: air.temperatureC: found 70, expected a temperature from -30 to 60 °C.\n',
    )
    const [design] = workbook.designs
    const loops = design!.loops.map((loop) => ({ ...loop, lengthMm: 9000 }))
    const long = written('long.ferrule', { ...workbook, designs: [{ ...design!, loops }] })
    expect(refusal([long])).toBe(
      "ferrule: long.ferrule: designs[0].loops: found 18000 mm of loops, expected at most 8 times the bore's length.\n",
    )
  })
})
