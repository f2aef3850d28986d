import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import Papa from 'papaparse'
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest'
import { benchRecord } from '#shared/workbook/benchRecord.ts'
import type { Workbook } from '#shared/workbook/workbook.ts'
import { writeWorkbook } from '#shared/workbook/writeWorkbook.ts'
import { benchWorkbook, oneOfEach } from '../../fixtures/benchWorkbook.ts'
import { workbookWith } from '../../fixtures/workbooks.ts'
import { ferrule, ferruleHere } from './ferrule.ts'

// A process of its own takes a second, and longer on a busy machine.
vi.setConfig({ testTimeout: 60_000 })

let folder: string
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'ferrule-'))
})
afterAll(() => rmSync(folder, { recursive: true }))

function written(workbook: Workbook): string {
  const path = join(folder, 'bench.ferrule')
  writeFileSync(path, writeWorkbook(workbook))
  return path
}

describe('ferrule bench --json', () => {
  it('prints the record and nothing else, in a process of its own', async () => {
    const { code, stdout, stderr } = await ferrule(['bench', written(benchWorkbook()), '--json'])
    expect({ code, stderr }).toEqual({ code: 0, stderr: '' })
    expect(JSON.parse(stdout)).toEqual(JSON.parse(JSON.stringify(benchRecord(benchWorkbook()))))
  })

  it('has exactly the keys of the contract', () => {
    const record = JSON.parse(ferruleHere(['bench', written(benchWorkbook()), '--json']).stdout)
    expect(Object.keys(record)).toEqual(['slides', 'readings', 'pitchChanges'])
    expect(Object.keys(record.slides[0])).toEqual([
      'id',
      'targetMm',
      'bowMm',
      'straightEndMm',
      'innerLegMm',
      'engagedAtTravelMm',
      'centsPerMmOut',
      'massG',
      'cuts',
      'rangeCents',
      'problems',
    ])
    expect(Object.keys(record.slides[0].cuts[0])).toEqual(['part', 'count', 'finishedMm', 'cutMm'])
    expect(Object.keys(record.readings[0])).toEqual([
      'id',
      'openLengthMm',
      'loops',
      'harmonicOffsetsCents',
      'residualsCents',
      'remarks',
    ])
    expect(Object.keys(record.readings[0].openLengthMm)).toEqual(['value', 'standardError'])
    expect(Object.keys(record.readings[0].loops.L3)).toEqual([
      'value',
      'standardError',
      'changeMm',
      'movementMm',
    ])
    expect(Object.keys(record.pitchChanges[0])).toEqual(['id', 'bodyMm', 'loops', 'ifOnlyBodyErrorsCents'])
    expect(Object.keys(record.pitchChanges[0].loops)).toEqual(['L1', 'L2', 'L3'])
    expect(record.pitchChanges[0].ifOnlyBodyErrorsCents['1-2-3']).toBeGreaterThan(0)
  })

  it('says on standard error what looks like a slip, and goes on', () => {
    const slides = [{ ...oneOfEach.slides[0], loop: 'L9' }]
    const { code, stderr } = ferruleHere(['bench', written(benchWorkbook({ slides })), '--json'])
    expect(code).toBe(0)
    expect(stderr).toBe(
      'Warning: bench.slides[0].loop: “L9” is no loop of Plain, three valves; expected one of L1, L2, L3.\n',
    )
  })
})

describe('ferrule bench of readings typed with their valves in any order', () => {
  it.each(['', '--csv'])('names them in the order of the design: %s', (form) => {
    const print = (pressed: readonly string[]): string => {
      const rows = [...oneOfEach.readings[0].rows, { pressed, harmonic: 4, cents: 30 }]
      const bench = { ...oneOfEach, readings: [{ ...oneOfEach.readings[0], rows }] }
      return ferruleHere(['bench', written(benchWorkbook(bench)), ...(form === '' ? [] : [form])]).stdout
    }
    expect(print(['3', '1'])).toBe(print(['1', '3']))
    expect(print(['3', '1'])).toContain('1-3')
  })
})

describe('ferrule bench of a change of pitch', () => {
  it('lists fingerings as the tables do, valves without a number too', () => {
    const workbook = benchWorkbook()
    const [design] = workbook.designs
    const named = (ids: readonly string[]): readonly string[] => ids.map((id) => (id === '1' ? 'A' : id))
    const valves = design!.valves.map((valve) => ({ ...valve, id: named([valve.id])[0]! }))
    const loops = design!.loops.map((loop) => ({ ...loop, pressed: named(loop.pressed) }))
    const file = written({ ...workbook, designs: [{ ...design!, valves, loops }] })
    const lines = ferruleHere(['bench', file, '--csv']).stdout.split('\n')
    const heading = lines.findIndex((line) => line.includes('if only the body'))
    const rows = lines.slice(heading + 1, heading + 9)
    expect(rows.map((line) => line.split(',')[1])).toEqual(['0', 'A', '2', '3', 'A-2', 'A-3', '2-3', 'A-2-3'])
  })
})

describe('ferrule bench --csv', () => {
  it('prints each table under its headings, unrounded', () => {
    const { stdout } = ferruleHere(['bench', written(benchWorkbook()), '--csv'])
    const tables = stdout.split('\n\n').map((text) => Papa.parse<string[]>(text.trim()).data)
    expect(tables.map(([headings]) => headings?.[1])).toEqual([
      'loop wanted (mm of tube)',
      'part',
      'part',
      'fingering',
      'part',
      'fingering',
    ])
    const record = benchRecord(benchWorkbook())
    expect(Number(tables[0]?.[1]?.[3])).toBe(record.slides[0]?.straightEndMm)
    expect(Number(tables[2]?.[2]?.[5])).toBe(record.readings[0]?.loops.L3?.movementMm)
    expect(tables[4]?.[1]?.slice(0, 2)).toEqual(['down to 440', 'body'])
    expect(Number(tables[4]?.[1]?.[2])).toBe(record.pitchChanges[0]?.bodyMm)
  })

  it('guards a name that a spreadsheet would run', () => {
    const slides = [{ ...oneOfEach.slides[0], id: '=1+1' }]
    expect(ferruleHere(['bench', written(benchWorkbook({ slides })), '--csv']).stdout).toContain(
      '\n"\'=1+1",265,',
    )
  })
})

describe('ferrule bench', () => {
  it('reads: slide, cut list, readings, change of pitch, tube and movement apart', () => {
    const { stdout } = ferruleHere(['bench', written(benchWorkbook())])
    expect(stdout).toMatch(/^Slide third slide\n/)
    expect(stdout).toMatch(/each straight end +17\.2 {2}mm\n/)
    expect(stdout).toMatch(/inner leg +2 +59\.0 +61\.0\n/)
    expect(stdout).toMatch(/part +mm of tube +± +change, tube +slide movement\n/)
    expect(stdout).toMatch(/body +39\.8 +19\.9\n/)
  })

  // π · 38 / 2 = 59.69; 60 − 1 = 59; 59 − 30 = 29; 1200·log2(1665 / 1667) = −2.08; 1200·log2(1665.5 / 1665) = 0.52.
  it.each([
    ['loop wanted', '265.0  mm of tube'],
    ['bow, curve alone', '59.7  mm of tube'],
    ['each straight end', '17.2  mm'],
    ['each inner leg', '59.0  mm'],
    ['engaged at full travel', '29.0  mm'],
    ['first mm of movement out', '−2.08  cents'],
    ['range', '−0.5 to +0.5  cents'],
  ])('gives each figure of a slide its own value: %s %s', (figure, value) => {
    const lines = ferruleHere(['bench', written(benchWorkbook())]).stdout.split('\n')
    const line = lines.find((each) => each.startsWith(figure)) ?? ''
    expect(line.slice(figure.length).trim()).toBe(value)
  })

  // Harmonic 4 at 493.883 Hz is 1403.14 mm; 12 cents above three semitones down the loop has 1403.14 · (2^0.24 − 1) =
  // 253.96 mm, and 1403.14 · 265 / 1400 = 265.59 mm were wanted: 11.63 mm of tube, half of it movement.
  it('says half the change of a loop as movement, and which readings are left out', () => {
    const [asFound] = oneOfEach.readings
    const rows = [...asFound.rows, { pressed: ['1'], harmonic: 4, cents: -25, leaveOut: true }]
    const { stdout } = ferruleHere(['bench', written(benchWorkbook({ readings: [{ ...asFound, rows }] }))])
    expect(stdout).toMatch(/\nopen +1403\.1 +\d\.\d\n/)
    expect(stdout).toMatch(/\nL3 +254\.0 +\d\.\d +11\.6 +5\.8\n/)
    expect(stdout).toMatch(/\n3 +4 +\+12\.0 +0\.0\n/)
    expect(stdout).toMatch(/\n1 +4 +−25\.0 +−25\.4 {2}left out\n/)
  })

  it('marks a loop whose change is part of the body’s already', () => {
    const bench = { pitchChanges: oneOfEach.pitchChanges }
    const path = written({ ...workbookWith('double'), bench })
    const { stdout } = ferruleHere(['bench', path])
    expect(stdout).toMatch(/\nbody +112\.\d +56\.\d *\n/)
    expect(stdout).toMatch(/\nlong body +28\.\d +14\.\d +already in the body’s\n/)
    expect(stdout).toMatch(/\nlong 1 +\d+\.\d +\d\.\d *\n/)
    const csv = ferruleHere(['bench', path, '--csv']).stdout
    expect(csv).toMatch(/,body,112[.\d]+,[.\d]+,false\n[^\n]*,long body,28[.\d]+,[.\d]+,true\n/)
    const [record] = JSON.parse(ferruleHere(['bench', path, '--json']).stdout).pitchChanges
    expect(record.loopsInBody).toEqual(['long body'])
  })

  it('puts what speaks against a slide before its figures', () => {
    const slides = [{ ...oneOfEach.slides[0], outerLegMm: 90 }]
    const { stdout } = ferruleHere(['bench', written(benchWorkbook({ slides }))])
    expect(stdout.split('\n')[1]).toBe(
      'Problem: The parts are longer than the loop. Each outer leg must be 12.8 mm shorter.',
    )
  })

  it('says so when there is nothing', () => {
    expect(ferruleHere(['bench', written(workbookWith('plain-3'))]).stdout).toBe('Nothing on the bench.\n')
  })

  it.each<[readonly string[], string]>([
    [[], 'found no file, expected a design file'],
    [['a', 'b'], 'found 2 files, expected one design file'],
    [['a', '--json', '--csv'], 'found both --json and --csv, expected one of them'],
    [['a', '--show', 'notes'], 'found option --show, expected --json, --csv'],
    [['gone.ferrule'], 'gone.ferrule: found no such file, expected a design file'],
  ])('refuses %j', (args, reason) => {
    expect(ferruleHere(['bench', ...args])).toEqual({ code: 2, stdout: '', stderr: `ferrule: ${reason}\n` })
  })
})
