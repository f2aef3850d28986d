import { isDeepStrictEqual } from 'node:util'
import { pasteReadings } from '#shared/bench/readings/pasteReadings.ts'
import { readProfile } from '#shared/bore/readProfile.ts'
import { readLength } from '#shared/quantity/length.ts'
import { readNumber } from '#shared/quantity/number.ts'
import { benchRecord } from '#shared/workbook/benchRecord.ts'
import { boreRecord, designModes } from '#shared/workbook/boreRecord.ts'
import type { Failure } from '#shared/workbook/failure.ts'
import { readLoops } from '#shared/workbook/loopRows/readLoops.ts'
import { openWorkbook } from '#shared/workbook/openWorkbook.ts'
import { tablesRecord } from '#shared/workbook/tablesRecord.ts'
import type { Workbook } from '#shared/workbook/workbook.ts'
import { writeWorkbook } from '#shared/workbook/writeWorkbook.ts'

/** What became of a text: a word for the tally. Anything that should not be throws. */
export type Ending = string

/** Opens a text as a workbook; what opens goes through its tables, its bench, writing and opening again. */
export function openedOrRefused(text: string): Ending {
  const opened = openWorkbook(text)
  if (!opened.ok) return refusedWell(opened.failure)
  onlyFinite(tablesRecord(opened.workbook), 'tables')
  onlyFinite(benchRecord(opened.workbook), 'bench')
  openModes(opened.workbook)
  const written = writeWorkbook(opened.workbook)
  const again = openWorkbook(written)
  if (!again.ok) throw new Error(`written, it does not open: ${again.failure.message}`)
  if (!isDeepStrictEqual(again.workbook, opened.workbook))
    throw new Error('opened again, it is another workbook')
  return 'opened'
}

/** Points of measured bores above which a journey passes by: it is the file that is on trial. */
const mostPoints = 200

/** The modes of the first bore, the open route alone: found, or refused with their place. */
function openModes(workbook: Workbook): void {
  const index = workbook.designs.findIndex(({ bore }) => bore !== undefined)
  const sections = workbook.designs[index]?.bore?.sections ?? []
  const points = sections.reduce((sum, each) => sum + (each.kind === 'profile' ? each.points.length : 1), 0)
  if (index < 0 || points > mostPoints) return
  const found = designModes(workbook, index, '0')
  if (found.ok) onlyFinite(boreRecord([found.value]), 'bore')
  else said(found.refusal.path, found.refusal.expected, '')
}

/** Reads a text as a table of loops. */
export function loopsRead(text: string): Ending {
  const { rows, refusals } = readLoops(text, { valveIds: ['1', '2', '3', '4'], unit: 'mm' })
  onlyFinite(rows, 'rows')
  for (const { line, found, expected } of refusals) {
    if (!(line >= 1)) throw new Error(`refused nowhere: ${found}`)
    said('a line', expected + found, '')
  }
  if (rows.length === 0 && refusals.length === 0) throw new Error('neither read nor refused')
  return refusals.length === 0 ? 'read' : 'refused'
}

/** Reads a text as pasted readings. */
export function readingsRead(text: string): Ending {
  const answer = pasteReadings(text, ['1', '2', '3', 'T', '__proto__'])
  if (answer.kind === 'rows') {
    onlyFinite(answer.rows, 'rows')
    return 'read'
  }
  if (!(answer.row >= 1 && answer.column >= 1)) throw new Error(`refused nowhere: ${answer.message}`)
  return said(answer.expected, answer.message, 'refused')
}

/** Reads a text as a measured bore. */
export function profileRead(text: string): Ending {
  const read = readProfile(text)
  if (!read.ok)
    return said(read.refusal.path, read.refusal.expected, `refused: ${read.refusal.path.split(' ')[0]}`)
  onlyFinite(read.value, 'profile')
  return 'read'
}

/** Reads a text as a typed length and as a typed number. */
export function typedRead(text: string): Ending {
  const length = readLength(text, { atLeast: 0, atMost: 1e6 })
  const number = readNumber(text, { units: ['Hz'] })
  for (const each of [length, number]) {
    if (each.ok) onlyFinite(each, 'typed')
    else said(each.expected, each.message, '')
  }
  return length.ok ? 'read' : `refused: ${length.code}`
}

/** A refusal says where, what was found and what was expected, in a sentence that a person can take in. */
function refusedWell(failure: Failure): Ending {
  const { kind, path, found, expected, message } = failure
  const isWhole = path === ''
  if (isWhole && kind !== 'tooLarge' && kind !== 'notJson') throw new Error(`refused nowhere: ${message}`)
  if (!message.startsWith(isWhole ? 'The file' : path) && kind !== 'newerVersion')
    throw new Error(`says not where: ${message}`)
  said(found, expected, '')
  return `refused: ${kind}${isWhole ? ', the file as a whole' : ''}`
}

const longestSentence = 1200

function said(first: string, second: string, ending: Ending): Ending {
  if (first === '' || second === '') throw new Error('a refusal without a word')
  if (first.length + second.length > longestSentence)
    throw new Error(`a refusal of ${first.length} characters`)
  return ending
}

function onlyFinite(value: unknown, at: string): void {
  if (typeof value === 'number' && !Number.isFinite(value)) throw new Error(`${at} is ${value}`)
  if (typeof value === 'string' && /\bNaN\b|Infinity|undefined/.test(value) && !value.includes('“'))
    throw new Error(`${at} says ${value.slice(0, 100)}`)
  if (value === null || typeof value !== 'object') return
  for (const [key, inner] of Object.entries(value)) onlyFinite(inner, `${at}.${key.slice(0, 40)}`)
}
