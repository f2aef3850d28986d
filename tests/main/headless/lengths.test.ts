import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import Papa from 'papaparse'
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest'
import { defaultAir, speedOfSound } from '#shared/air/speedOfSound.ts'
import { fundamentalHz } from '#shared/tubing/openRoute.ts'
import { writeWorkbook } from '#shared/workbook/writeWorkbook.ts'
import { readyFerrule } from '../../../src-main/headless/run.ts'
import { examplesFolder } from '../../fixtures/exampleFiles.ts'
import solver from '../../fixtures/solver.json' with { type: 'json' }
import { workbookWith } from '../../fixtures/workbooks.ts'
import { ferrule, ferruleHere } from './ferrule.ts'

// A process of its own takes a second, and longer on a busy machine.
vi.setConfig({ testTimeout: 60_000 })

const alto = fileURLToPath(new URL('alto-in-e-flat.ferrule', examplesFolder))
const plain = ['lengths', alto, '--design', 'plain', '--free', 'L1,L2,L3']

let folder: string
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'ferrule-'))
  await readyFerrule(['lengths'])
})
afterAll(() => rmSync(folder, { recursive: true }))

function written(name: string, content: string): string {
  const path = join(folder, name)
  writeFileSync(path, content)
  return path
}

describe('ferrule lengths --json', () => {
  it('prints the record of the contract and nothing else', async () => {
    const { code, stdout, stderr } = await ferrule([
      ...plain,
      '--open-free',
      '--leave-out',
      '3',
      '--objective',
      'largest',
      '--json',
    ])
    expect({ code, stderr }).toEqual({ code: 0, stderr: '' })
    const record = JSON.parse(stdout)
    expect(Object.keys(record)).toEqual([
      'status',
      'objective',
      'lengthsMm',
      'openChangeMm',
      'errorsCents',
      'rmsCents',
      'largestCents',
      'heldByBounds',
    ])
    expect(record).toMatchObject({ status: 'converged', objective: 'largest', heldByBounds: [] })
    expect(record.largestCents).toBeCloseTo(11.4887, 3)
    expect(Object.keys(record.errorsCents)).toEqual(['0', '1', '2', '1-2', '1-3', '2-3', '1-2-3'])
  })

  it('finds the least rms and its lengths as a separate program does', () => {
    const { expected, record } = againstFixture('rms', 'rms')
    expect(record.rmsCents).toBeCloseTo(expected.rmsCents, 3)
    for (const [loop, lengthMm] of Object.entries(expected.lengthsMm)) {
      expect(record.lengthsMm[loop]).toBeCloseTo(lengthMm, 2)
    }
  })

  it('finds the least largest error of a separate program; lengths with it are not the only ones', () => {
    const { expected, record } = againstFixture('minimax', 'largest')
    expect(record.largestCents).toBeCloseTo(expected.largestCents!, 3)
  })

  it('makes the rms least when no objective is named', () => {
    expect(JSON.parse(ferruleHere([...plain, '--json']).stdout)).toMatchObject({ objective: 'rms' })
  })

  it('holds the loops not named, and says their lengths too', () => {
    const { lengthsMm } = JSON.parse(
      ferruleHere(['lengths', alto, '--design', 'plain', '--free', 'L3', '--json']).stdout,
    )
    expect(lengthsMm).toMatchObject({ L1: 272.8, L2: 132.4 })
    expect(lengthsMm.L3).toBeGreaterThan(425)
  })

  it('can free the open route alone', () => {
    const { stdout } = ferruleHere(['lengths', alto, '--design', 'plain', '--open-free', '--json'])
    expect(JSON.parse(stdout).openChangeMm).toBeGreaterThan(10)
  })

  // 346.496 m/s / (2 · 43.654 Hz) = 3968.66 mm; against A4 435 harmonic 4 is 19.804 cents sharp, so that the slide
  // makes it 4014.32 mm, and 8 cents flat of that is 4014.32 · (2^(8/1200) − 1) = 18.593 mm more.
  it('starts from the open route in tune, and lets it stand off its pitch on purpose', () => {
    const tuned = {
      ...workbookWith('plain-3', { tuning: { kind: 'open', harmonic: 4 }, openDetuningCents: -8 }),
      reference: { a4Hz: 435, temperament: { kind: 'equal' } as const },
    }
    const asked = ['--design', 'design', '--free', 'L1,L2,L3', '--json']
    const record = JSON.parse(
      ferruleHere(['lengths', written('tuned.ferrule', writeWorkbook(tuned)), ...asked]).stdout,
    )
    expect(record.openChangeMm).toBeCloseTo(18.593, 3)
    expect(record.rmsCents).toBeCloseTo(15.0391, 3)
    expect(record.lengthsMm.L1).toBeCloseTo(518.118, 2)
    expect(record.lengthsMm.L2).toBeCloseTo(242.732, 2)
    expect(record.lengthsMm.L3).toBeCloseTo(797.73, 2)
  })
})

/** Three plain valves, the third alone left out: what the fixture has, and what the command finds. */
function againstFixture(objectiveOfFixture: string, objective: string) {
  const { loops, fingerings, openLengthMm } = solver.schemes.find(
    ({ name }) => name === 'plain, three valves',
  )!
  const expected = solver.cases.find(
    (each) => each.name === 'plain three, third alone left out' && each.objective === objectiveOfFixture,
  )!
  const instrument = { fundamentalHz: fundamentalHz(speedOfSound(defaultAir), openLengthMm) }
  const file = written(
    'plain.ferrule',
    writeWorkbook(workbookWith('plain-3', { loops, fingerings }, instrument)),
  )
  const asked = ['--design', 'design', '--free', 'L1,L2,L3', '--leave-out', '3', '--objective', objective]
  return { expected, record: JSON.parse(ferruleHere(['lengths', file, ...asked, '--json']).stdout) }
}

describe('ferrule lengths for reading', () => {
  it('says what was made least, and lines up loops and errors with true minus signs', () => {
    const { code, stdout, stderr } = ferruleHere([
      ...plain,
      '--open-free',
      '--leave-out',
      '3',
      '--objective',
      'largest',
    ])
    expect({ code, stderr }).toEqual({ code: 0, stderr: '' })
    const lines = stdout.split('\n')
    expect(lines[0]).toBe(
      'Plain, three valves (plain): least largest error, converged, rms 9.6 cents, largest 11.5 cents, open route −14.7 mm',
    )
    expect(lines).toContain('L1    first    272.8     304.1    +31.3         +15.7')
    expect(lines).toContain('1-2-3      +11.5')
    expect(stdout).not.toMatch(/-\d+\.\d/)
  })
})

describe('ferrule lengths --csv', () => {
  it('has loops, errors and what was reached, each under its own headings, unrounded', () => {
    const { stdout } = ferruleHere([...plain, '--csv'])
    const record = JSON.parse(ferruleHere([...plain, '--json']).stdout)
    const [loops, errors, reached] = stdout
      .split('\n\n')
      .map((text) => Papa.parse<Record<string, string>>(text.trimEnd(), { header: true }).data)
    expect(loops!.map((row) => [row.loop, Number(row['found (mm)'])])).toEqual(
      Object.entries(record.lengthsMm),
    )
    expect(Number(loops![0]!['slide movement (mm)'])).toBeCloseTo((record.lengthsMm.L1 - 272.8) / 2, 9)
    expect(errors!.map((row) => [row.fingering, Number(row['error (cents)'])])).toEqual(
      Object.entries(record.errorsCents),
    )
    expect(Number(reached![0]!['rms (cents)'])).toBe(record.rmsCents)
  })
})

describe('ferrule lengths refuses with code 2, nothing on standard output and the reason on standard error', () => {
  it.each<[readonly string[], string]>([
    [['lengths'], 'found no file, expected one design file'],
    [['lengths', alto, alto], 'found 2 files, expected one design file'],
    [['lengths', alto], 'found no --design, expected the id of a design'],
    [
      ['lengths', alto, '--design', 'round', '--free', 'L1'],
      '--design: found round, expected plain, compensating, long',
    ],
    [
      ['lengths', alto, '--design', 'plain'],
      'found neither --free nor --open-free, expected loops, the open route or both',
    ],
    [
      ['lengths', alto, '--design', 'plain', '--free', 'L1,L9'],
      '--free: found L9, expected the id of a loop of the design',
    ],
    [['lengths', alto, '--design', 'plain', '--free', ''], '--free: found nothing, expected ids of loops'],
    [[...plain, '--leave-out', '3,4'], '--leave-out: found 4, expected a fingering of the design'],
    [[...plain, '--objective', 'mean'], '--objective: found mean, expected rms, largest'],
    [[...plain, '--json', '--csv'], 'found both --json and --csv, expected one of them'],
    [
      [...plain, '--leave-out', '1,2,3,1-2,1-3,2-3,1-2-3'],
      '--leave-out: found 1,2,3,1-2,1-3,2-3,1-2-3, which is every fingering, expected one that counts',
    ],
    [
      ['lengths', 'nowhere.ferrule', '--design', 'a', '--free', 'b'],
      'nowhere.ferrule: found no such file, expected a design file',
    ],
  ])('%j', (args, reason) => {
    expect(ferruleHere(args)).toEqual({ code: 2, stdout: '', stderr: `ferrule: ${reason}\n` })
  })

  it('a design without fingerings that count', () => {
    const natural = written('natural.ferrule', writeWorkbook(workbookWith('plain-3', { fingerings: [] })))
    expect(ferruleHere(['lengths', natural, '--design', 'design', '--free', 'L1'])).toMatchObject({
      code: 2,
      stderr: 'ferrule: found no fingering to count, expected a design with fingerings\n',
    })
  })
})
