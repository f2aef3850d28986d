import { plainFigure } from '#shared/quantity/figures.ts'
import { boreRecord, type DesignModes, designModes, hasFingering } from '#shared/workbook/boreRecord.ts'
import { designOpenLengthMm } from '#shared/workbook/instrumentOf.ts'
import { boreWarnings } from '#shared/workbook/sanity/boreWarnings.ts'
import type { Workbook } from '#shared/workbook/workbook.ts'
import { readOptions } from '../options.ts'
import { type Command, type Outcome, type Result, refused } from '../outcome.ts'
import { readWorkbookFile } from '../readWorkbookFile.ts'
import { boreCsv } from './boreCsv.ts'
import { boreText } from './boreText.ts'
import { type Question, questionKinds, readQuestion } from './question.ts'

/** `ferrule bore`: the resonances of every fingering of the designs that have a bore. */
export const bore: Command = {
  usage: 'bore FILE [--design ID] [--fingering 1-2] [--json | --csv]',
  run: (args) => {
    const options = readOptions(args, questionKinds)
    const asked = options.ok ? readQuestion(options.value) : options
    if (!asked.ok) return { kind: 'refused', reason: asked.reason }
    const workbook = readWorkbookFile(asked.value.file)
    if (!workbook.ok) return { kind: 'refused', reason: workbook.reason }
    const found = findModes(asked.value, workbook.value)
    return found.ok
      ? answer(asked.value, workbook.value, found.value)
      : { kind: 'refused', reason: found.reason }
  },
}

/** The places of the designs that are asked about: those with a bore, if any, unless one is named. */
function placesOf({ designId }: Question, { designs }: Workbook): Result<readonly number[]> {
  const bored = [...designs.keys()].filter((i) => designs[i]!.bore !== undefined)
  if (designId === undefined) return { ok: true, value: bored }
  const place = bored.find((i) => designs[i]!.id === designId)
  if (place !== undefined) return { ok: true, value: [place] }
  const found = designs.some(({ id }) => id === designId) ? `${designId}, which has no bore` : designId
  const expected = bored.length === 0 ? 'a design with a bore' : bored.map((i) => designs[i]!.id).join(', ')
  return refused(`--design: found ${found}, expected ${expected}`)
}

/** Those of them that have the fingering asked for; a design that is named must have it. */
function withFingering(
  { designId, fingering }: Question,
  { designs }: Workbook,
  places: readonly number[],
): Result<readonly number[]> {
  if (fingering === undefined) return { ok: true, value: places }
  const having = places.filter((i) => hasFingering(designs[i]!, fingering))
  if (having.length > 0) return { ok: true, value: having }
  // Without a bore there is nothing to list, but a fingering that no design has is a slip all the same.
  const isKnown = designs.some((design) => hasFingering(design, fingering))
  if (places.length === 0 && (isKnown || designs.length === 0)) return { ok: true, value: places }
  const asked = places.length === 0 ? [...designs.keys()] : places
  const ids = designId ?? asked.map((i) => designs[i]!.id).join(', ')
  return refused(`--fingering: found ${fingering}, expected a fingering of ${ids}`)
}

function findModes(question: Question, workbook: Workbook): Result<readonly DesignModes[]> {
  const bored = placesOf(question, workbook)
  const places = bored.ok ? withFingering(question, workbook, bored.value) : bored
  if (!places.ok) return places
  const found: DesignModes[] = []
  for (const place of places.value) {
    const modes = designModes(workbook, place, question.fingering)
    if (!modes.ok) {
      const { path, found: value, expected } = modes.refusal
      return refused(`${question.file}: ${path}: found ${value}, expected ${expected}.`)
    }
    found.push(modes.value)
  }
  return { ok: true, value: found }
}

function answer({ form }: Question, workbook: Workbook, designs: readonly DesignModes[]): Outcome {
  const forms = {
    json: () => `${JSON.stringify(boreRecord(designs), null, 2)}\n`,
    csv: () => boreCsv(designs),
    text: () => boreText(designs),
  }
  return {
    kind: 'done',
    output: forms[form](),
    remarks: designs.flatMap((each) => remarksOf(workbook, each)),
  }
}

function remarksOf(workbook: Workbook, { design, slicing }: DesignModes): readonly string[] {
  const at = `designs[${workbook.designs.indexOf(design)}]`
  const slips = boreWarnings(design, designOpenLengthMm(workbook, design), at)
  const coarse = `Warning: ${at}.bore: peaks may be ${plainFigure(slicing.errorHz, 2)} Hz off: the bore would need more slices.`
  return [
    ...slips.map(({ path, message }) => `Warning: ${path}: ${message}`),
    ...(slicing.met ? [] : [coarse]),
  ]
}
