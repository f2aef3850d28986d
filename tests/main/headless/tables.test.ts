import { execFileSync } from 'node:child_process'
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import Papa from 'papaparse'
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest'
import { tuningTables } from '#shared/tuning/tables.ts'
import { examples } from '#shared/workbook/examples/examples.ts'
import { instrumentOf } from '#shared/workbook/instrumentOf.ts'
import { tablesRecord } from '#shared/workbook/tablesRecord.ts'
import { writeWorkbook } from '#shared/workbook/writeWorkbook.ts'
import { examplesFolder, exampleText, exampleWorkbook } from '../../fixtures/exampleFiles.ts'
import { loosened, workbookWith } from '../../fixtures/workbooks.ts'
import { ferrule, ferruleHere, ferruleUnread } from './ferrule.ts'

// A process of its own takes a second, and longer on a busy machine.
vi.setConfig({ testTimeout: 60_000 })

const exampleFile = (file: string) => fileURLToPath(new URL(file, examplesFolder))
const bass = exampleFile('bass-in-f.ferrule')
const alto = exampleFile('alto-in-e-flat.ferrule')

let folder: string
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'ferrule-'))
})
afterAll(() => rmSync(folder, { recursive: true }))

function written(name: string, content: string | Uint8Array): string {
  const path = join(folder, name)
  writeFileSync(path, content)
  return path
}

describe('ferrule tables --json', () => {
  it.each(examples.map(({ file }) => file))('prints the record of %s and nothing else', async (file) => {
    const workbook = exampleWorkbook(examples.find((each) => each.file === file)!)
    const { code, stdout, stderr } = await ferrule(['tables', exampleFile(file), '--json'])
    expect({ code, stderr }).toEqual({ code: 0, stderr: '' })
    const record = JSON.parse(stdout)
    expect(record).toEqual(JSON.parse(JSON.stringify(tablesRecord(workbook))))
    for (const [i, design] of workbook.designs.entries()) {
      const tables = tuningTables(instrumentOf(workbook, design))
      expect(record.designs[i].combinations).toEqual(tables.combinations)
      expect(record.designs[i].notes.map(({ midi }: { midi: number }) => midi)).toEqual(
        tables.notes.map(({ midi }) => midi),
      )
      expect(record.designs[i].summary).toEqual({
        rmsCents: tables.summary.byFingering.rmsCents,
        largestCents: tables.summary.byFingering.largestCents,
        largestFingering: tables.summary.byFingering.largestAt,
        tubeMm: tables.summary.tubeMm,
        loops: tables.summary.loops,
      })
    }
  })

  it('has exactly the keys of the contract', () => {
    const { designs, warnings } = JSON.parse(ferruleHere(['tables', bass, '--json']).stdout)
    const design = designs[0]
    expect(Object.keys(design)).toEqual([
      'id',
      'name',
      'openLengthMm',
      'speedOfSound',
      'combinations',
      'notes',
      'summary',
    ])
    expect(Object.keys(design.combinations[0])).toEqual([
      'fingering',
      'pressed',
      'semitones',
      'loops',
      'lengthMm',
      'requiredLengthMm',
      'errorCents',
    ])
    expect(Object.keys(design.notes[0])).toEqual(['midi', 'sounding', 'written', 'targetHz', 'candidates'])
    expect(Object.keys(design.notes[0].candidates[0])).toEqual([
      'fingering',
      'harmonic',
      'hz',
      'errorCents',
      'usual',
    ])
    expect(Object.keys(warnings[0])).toEqual(['path', 'found', 'expected', 'message'])
  })

  // The lowest note is harmonic 2 of 1-2-3, six semitones below F2: B1 sounding, written 14 semitones higher.
  it('names each note as it sounds and as it is written', () => {
    const instrument = { fundamentalHz: 43.654, transposition: -14, harmonics: [2, 12] as const }
    const file = written('transposed.ferrule', writeWorkbook(workbookWith('plain-3', {}, instrument)))
    const [design] = JSON.parse(ferruleHere(['tables', file, '--json']).stdout).designs
    expect(design.notes[0]).toMatchObject({ midi: 35, sounding: 'B1', written: 'Db3' })
  })

  // 346.496 m/s / (2 · 43.654 Hz) = 3968.66 mm; harmonic 4 is 19.804 cents above F3 at A4 435: 4014.32 mm.
  it('keeps the open length as designed where the main slide is set, and takes required lengths from there', () => {
    const tuned = {
      ...workbookWith('plain-3', { tuning: { kind: 'open', harmonic: 4 } }),
      reference: { a4Hz: 435, temperament: { kind: 'equal' } as const },
    }
    const file = written('tuned.ferrule', writeWorkbook(tuned))
    const [design] = JSON.parse(ferruleHere(['tables', file, '--json']).stdout).designs
    expect(design.openLengthMm).toBeCloseTo(3968.66, 2)
    expect(design.combinations[0].requiredLengthMm).toBeCloseTo(4014.32, 2)
  })

  it('marks one candidate of a note as the usual one, the first', () => {
    const { designs } = JSON.parse(ferruleHere(['tables', bass, '--json']).stdout)
    for (const { candidates, midi } of designs[0].notes) {
      const marks = candidates.map(({ usual }: { usual: boolean }) => usual)
      expect(marks, `note ${midi}`).toEqual(marks.map((_: boolean, i: number) => i === 0))
    }
  })

  it('leaves out the tables that --show does not name', () => {
    const { designs } = JSON.parse(ferruleHere(['tables', bass, '--json', '--show', 'summary']).stdout)
    expect(Object.keys(designs[0])).toEqual(['id', 'name', 'openLengthMm', 'speedOfSound', 'summary'])
  })

  it('joins the designs of several files and says whose a warning is', () => {
    const { designs, warnings } = JSON.parse(ferruleHere(['tables', bass, alto, '--json']).stdout)
    expect(designs.map(({ id }: { id: string }) => id)).toEqual([
      'plain',
      'compensating',
      'block',
      'independent',
      'plain',
      'compensating',
      'long',
    ])
    expect(warnings.map(({ path }: { path: string }) => path)).toEqual([
      `${bass}: designs[0].loops`,
      `${bass}: designs[1].loops`,
      `${bass}: designs[2].loops`,
      `${alto}: designs[0].loops`,
    ])
  })
})

describe('ferrule tables for reading', () => {
  it('lines up every table, with signed cents and a true minus', () => {
    const { code, stdout } = ferruleHere(['tables', alto])
    expect(code).toBe(0)
    const lines = stdout.split('\n')
    expect(lines[0]).toBe('Plain, three valves (plain): open length 2227.4 mm, speed of sound 346.50 m/s')
    expect(lines).toContain('1-2-3              6     3054.0       3150.0  +53.6  L1, L2, L3')
    expect(lines).toContain('0                  0     2227.4       2227.4    0.0')
    expect(stdout).toMatch(/^G4 +E5 +392\.00 +0 +5 +−13\.7 +usual +1-2 on 6 \(\+12\.6\)/m)
    expect(stdout).not.toMatch(/-\d+\.\d/)
    expect(stdout.match(/^Combinations$/gm)).toHaveLength(3)
    expect(stdout.match(/^Notes$/gm)).toHaveLength(3)
    expect(stdout.match(/^Summary$/gm)).toHaveLength(1)
  })

  it('puts warnings on standard error', () => {
    const { code, stdout, stderr } = ferruleHere(['tables', alto, '--show', 'combinations'])
    expect(code).toBe(0)
    expect(stderr).toBe('Warning: designs[0].loops: Nearer to another note than to their own: 1-2-3 (+54).\n')
    expect(stdout).not.toContain('Warning')
    expect(stdout).not.toContain('Notes')
  })

  it('marks chosen fingerings and notes that nothing reaches', () => {
    const horn = ferruleHere([
      'tables',
      exampleFile('double-horn-in-f.ferrule'),
      exampleFile('early-two-valve.ferrule'),
      '--show=notes',
    ])
    expect(horn.stdout).toMatch(/^F4 +C5 +349\.23 +T +6 +\+2\.0 +chosen/m)
    expect(horn.stdout).toMatch(/^F3 +C4 +174\.61 +0 +4 +0\.0 +usual/m)
    expect(horn.stdout).toMatch(/^E2 +D♭3 +\d+\.\d\d +none$/m)
  })

  it('names five other ways to a note, and counts the rest', () => {
    const asked = ['tables', exampleFile('double-horn-in-f.ferrule'), '--show', 'notes']
    const ways = ferruleHere([...asked, '--csv'])
      .stdout.split('\n')
      .filter((line) => line.startsWith('full,65,'))
    const [line] = ferruleHere(asked).stdout.match(/^F4 .*chosen.*$/m) ?? []
    const [, named, rest] = /chosen {2}(.*), and (\d+) more$/.exec(line ?? '') ?? []
    expect(named?.split(', ')).toHaveLength(5)
    expect(Number(rest)).toBe(ways.length - 1 - 5)
  })

  it('lets no name of a file move the cursor or turn the writing round', () => {
    const workbook = loosened(workbookWith('plain-3'))
    workbook.designs[0].name = 'a\u001b[2Jb\u202ec\nd\ud800'
    const { stdout } = ferruleHere(['tables', written('odd.ferrule', JSON.stringify(workbook))])
    expect(stdout.split('\n')[0]).toMatch(/^a\uFFFD\[2Jb\uFFFDc\uFFFDd\uFFFD \(design\): open length/)
  })

  it('prints a workbook without designs, and a design without valves', () => {
    const empty = written('empty.ferrule', writeWorkbook({ ...workbookWith('plain-3'), designs: [] }))
    expect(ferruleHere(['tables', empty])).toMatchObject({ code: 0, stderr: '' })
    const natural = written(
      'natural.ferrule',
      writeWorkbook(workbookWith('plain-3', { valves: [], loops: [], name: 'Natural' })),
    )
    const { code, stdout } = ferruleHere(['tables', natural, '--show', 'summary'])
    expect(code).toBe(0)
    expect(stdout).toMatch(/^Natural +0\.0 +0\.0 +0 /m)
  })
})

describe('ferrule tables --csv', () => {
  const parsed = (text: string) => Papa.parse<Record<string, string>>(text, { header: true })

  it('has headings with units and unrounded numbers with a decimal point', () => {
    const { stdout } = ferruleHere(['tables', bass, '--csv', '--show', 'combinations'])
    expect(stdout.split('\n')[0]).toBe(
      'design,fingering,semitones,loops,length (mm),required length (mm),error (cents)',
    )
    const { data, errors } = parsed(stdout.trimEnd())
    expect(errors).toEqual([])
    const expected = tablesRecord(exampleWorkbook(examples[0]!)).designs.flatMap(({ id, combinations }) =>
      combinations.map((row) => [id, row.fingering, row.lengthMm, row.errorCents]),
    )
    expect(
      data.map((row) => [
        row.design,
        row.fingering,
        Number(row['length (mm)']),
        Number(row['error (cents)']),
      ]),
    ).toEqual(expected)
  })

  it('has a row a candidate in the note table, the chosen one marked', () => {
    const horn = exampleFile('double-horn-in-f.ferrule')
    const { data } = parsed(ferruleHere(['tables', horn, '--csv', '--show', 'notes']).stdout.trimEnd())
    const ofF4 = data.filter((row) => row.design === 'full' && row.sounding === 'F4')
    expect(ofF4.length).toBeGreaterThan(3)
    const marked = (column: string) => ofF4.filter((row) => row[column] === 'true')
    expect(marked('usual').map(({ fingering, harmonic }) => [fingering, harmonic])).toEqual([['0', '8']])
    expect(marked('chosen').map(({ fingering, harmonic }) => [fingering, harmonic])).toEqual([['T', '6']])
    expect(marked('nearest').map(({ fingering, harmonic }) => [fingering, harmonic])).toEqual([['0', '8']])
  })

  it('marks as nearest what is least off, usual or not', () => {
    const { data } = parsed(ferruleHere(['tables', alto, '--csv', '--show', 'notes']).stdout.trimEnd())
    const ofPlain = data.filter((row) => row.design === 'plain' && row.fingering !== '')
    const off = (row: Record<string, string>) => Math.abs(Number(row['error (cents)']))
    const notUsual = ofPlain.filter(({ nearest, usual }) => nearest === 'true' && usual === 'false')
    expect(notUsual.map(({ sounding }) => sounding)).toContain('G4')
    for (const row of ofPlain.filter(({ nearest }) => nearest === 'true')) {
      const ways = ofPlain.filter(({ midi }) => midi === row.midi)
      expect(off(row)).toBeCloseTo(Math.min(...ways.map(off)), 9)
    }
  })

  // Harmonic 4 of the first valve is a whole tone below F3.
  it('has a row for a chosen fingering that is far off its note', () => {
    const chosen = { '53': { pressed: ['1'], harmonic: 4 } }
    const file = written('chosen.ferrule', writeWorkbook(workbookWith('plain-3', { chosen })))
    const { data } = parsed(ferruleHere(['tables', file, '--csv', '--show', 'notes']).stdout.trimEnd())
    const [row, ...others] = data.filter((each) => each.midi === '53' && each.chosen === 'true')
    expect(others).toEqual([])
    expect(row).toMatchObject({ fingering: '1', harmonic: '4', usual: 'false', nearest: 'false' })
    expect(Number(row!['error (cents)'])).toBeCloseTo(-200, 1)
  })

  it('separates the tables by an empty line when all are asked for', () => {
    const { stdout, stderr } = ferruleHere(['tables', alto, '--csv'])
    const tables = stdout.split('\n\n')
    expect(tables.map((table) => table.split(',')[1])).toEqual(['fingering', 'midi', 'name'])
    expect(stderr).toMatch(/^Warning: /)
  })

  it('keeps a name from being run as a formula', () => {
    const file = written('formula.ferrule', writeWorkbook(workbookWith('plain-3', { name: '=1+1,"x"' })))
    const { stdout } = ferruleHere(['tables', file, '--csv', '--show', 'summary'])
    expect(parsed(stdout.trimEnd()).data[0]!.name).toBe('\'=1+1,"x"')
  })
})

describe('ferrule refuses with code 2, nothing on standard output and the reason on standard error', () => {
  const refusal = (args: readonly string[]) => {
    const { code, stdout, stderr } = ferruleHere(args)
    expect({ code, stdout }).toEqual({ code: 2, stdout: '' })
    return stderr.replace(`${folder}/`, '')
  }
  const usage = ferruleHere(['--help']).stdout

  it('no command, and one it does not know', () => {
    expect(refusal([])).toBe(`ferrule: no command given\n${usage}`)
    expect(refusal(['table', bass])).toBe(
      `ferrule: found command table, expected tables, lengths, bench, bore\n${usage}`,
    )
  })

  it('is told of one command when its help is asked for', () => {
    expect(ferruleHere(['-h']).stdout).toBe(usage)
    for (const args of [
      ['bore', '--help'],
      ['bore', bass, '-h'],
    ]) {
      const { code, stdout, stderr } = ferruleHere(args)
      expect([code, stderr]).toEqual([0, ''])
      expect(stdout).toMatch(/^Usage:\n {2}ferrule bore FILE .*\n$/)
    }
  })

  it.each<[readonly string[], string]>([
    [['tables'], 'found no file, expected at least one design file'],
    [['tables', bass, '--xml'], 'found option --xml, expected --show, --json, --csv'],
    [['tables', bass, '-j'], 'found option -j, expected --show, --json, --csv'],
    [['tables', bass, '--constructor'], 'found option --constructor, expected --show, --json, --csv'],
    [['tables', bass, '--json', '--csv'], 'found both --json and --csv, expected one of them'],
    [['tables', ''], 'found an empty file name, expected a design file'],
    [['tables', bass, '--json', '--json'], 'found option --json twice, expected once'],
    [['tables', bass, '--json=yes'], '--json: found yes, expected no value'],
    [['tables', bass, '--show'], '--show: found nothing, expected a value'],
    [['tables', bass, '--show', 'pitch'], '--show: found pitch, expected combinations, notes, summary'],
    [['tables', '--', '-h'], '-h: found no such file, expected a design file'],
    [['tables', 'nowhere.ferrule'], 'nowhere.ferrule: found no such file, expected a design file'],
    [['tables', bass, 'nowhere.ferrule'], 'nowhere.ferrule: found no such file, expected a design file'],
  ])('%j', (args, reason) => {
    expect(refusal(args)).toBe(`ferrule: ${reason}\n`)
  })

  it('a directory', () => {
    mkdirSync(join(folder, 'folder.ferrule'))
    expect(refusal(['tables', join(folder, 'folder.ferrule')])).toBe(
      'ferrule: folder.ferrule: found a directory, expected a design file\n',
    )
  })

  it.skipIf(process.platform === 'win32')(
    'a pipe without a writer, which would hold the command',
    async () => {
      execFileSync('mkfifo', [join(folder, 'pipe.ferrule')])
      expect(await ferrule(['tables', 'pipe.ferrule'], folder)).toEqual({
        code: 2,
        stdout: '',
        stderr: 'ferrule: pipe.ferrule: found no regular file, expected a design file\n',
      })
    },
  )

  it('a workbook that breaks a rule, with path, found and expected', () => {
    const workbook = loosened(workbookWith('plain-4'))
    workbook.designs[0].loops[3].lengthMm = -1
    expect(refusal(['tables', written('broken.ferrule', JSON.stringify(workbook))])).toBe(
      'ferrule: broken.ferrule: designs[0].loops[3].lengthMm: found -1, expected a length of 0 mm or more.\n',
    )
  })

  it('a newer version, with its own message', () => {
    const text = JSON.stringify({ ...workbookWith('plain-4'), version: 2 })
    expect(refusal(['tables', written('newer.ferrule', text)])).toBe(
      'ferrule: newer.ferrule: This file is of version 2; this program reads up to version 1. Open it with a newer Ferrule.\n',
    )
  })

  it.each<[string, string | Uint8Array, RegExp]>([
    ['nothing.ferrule', '', /found nothing in it, expected a design file in JSON/],
    ['nul.ferrule', '\0\0', /expected a design file in JSON/],
    ['cut.ferrule', exampleText(examples[0]!).slice(0, 500), /expected a design file in JSON/],
    [
      'deep.ferrule',
      '['.repeat(100_000),
      /found lists or objects nested too deeply, expected at most 64 levels/,
    ],
    ['latin.ferrule', Uint8Array.of(0x7b, 0xe9, 0x7d), /found bytes that are not UTF-8/],
    ['utf16.ferrule', Buffer.from('\uFEFF{}', 'utf16le'), /found bytes that are not UTF-8/],
    ['other.ferrule', '{"format":"other"}', /format: found "other", expected "ferrule"/],
    ['big.ferrule', ' '.repeat(20 * 1024 * 1024 + 1), /found 20\.0 MB, expected at most 20 MB/],
  ])('%s', (name, content, reason) => {
    const stderr = refusal(['tables', written(name, content)])
    expect(stderr).toMatch(reason)
    expect(stderr.startsWith(`ferrule: ${name}: `)).toBe(true)
    expect(stderr.split('\n')).toHaveLength(2)
  })
})

describe('ferrule as a process', () => {
  it('refuses a bad file and a bad option with exit code 2, each reason on standard error alone', async () => {
    const workbook = loosened(workbookWith('plain-4'))
    workbook.designs[0].loops[3].pressed = ['7']
    written('gate.ferrule', JSON.stringify(workbook))
    expect(await ferrule(['tables', 'gate.ferrule', '--json'], folder)).toEqual({
      code: 2,
      stdout: '',
      stderr:
        'ferrule: gate.ferrule: designs[0].loops[3].pressed[0]: found "7", expected one of 1, 2, 3, 4.\n',
    })
    expect(await ferrule(['tables', 'gate.ferrule', '--xml'], folder)).toEqual({
      code: 2,
      stdout: '',
      stderr: 'ferrule: found option --xml, expected --show, --json, --csv\n',
    })
  })

  it('reads a file of its folder with a byte order mark, and a name that begins with a dash after --', async () => {
    written('-mark.ferrule', `\uFEFF${exampleText(examples[1]!)}`)
    const { code, stdout, stderr } = await ferrule(
      ['tables', '--show', 'summary', '--', '-mark.ferrule'],
      folder,
    )
    expect(code).toBe(0)
    expect(stdout).toMatch(/^Summary\ndesign +rms cents/)
    expect(stderr).toMatch(/^Warning: designs\[0\]\.loops: /)
  })

  it.each(['stdout', 'stderr'] as const)('ends well though nobody reads its %s', async (unread) => {
    expect(await ferruleUnread(['tables', bass], unread)).toBe(0)
  })

  it('lists its commands when asked', async () => {
    const { code, stdout } = await ferrule(['--help'])
    expect(code).toBe(0)
    expect(stdout).toContain('ferrule tables FILE…')
  })
})
