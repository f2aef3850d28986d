import { briefFigure, lengthText, plainFigure, signedCents } from '#shared/quantity/figures.ts'
import type { InCompany } from '#shared/tuning/inCompany.ts'
import { companyWords as words } from '../../words/pictures.ts'

/** One step of the explanation: a sentence, and the tube that stands under it. */
export interface CompanyStep {
  readonly words: string
  readonly pieces: readonly StepPiece[]
  /** Where the tube should end, mm from the mouthpiece; `null` where nothing is asked yet. */
  readonly requiredMm: number | null
  /** The drop that the last piece is meant for, from where it begins to where it should end. */
  readonly span: { readonly fromMm: number; readonly toMm: number; readonly text: string } | null
}

export interface StepPiece {
  readonly loop: string
  readonly lengthMm: number
  /** `wanted`: tube that is not there, and that a further loop would give. */
  readonly kind: 'open' | 'loop' | 'further' | 'wanted'
}

type Unit = 'mm' | 'in'

/** Less than this is no difference on a bench, mm. */
const nothingMm = 0.05

/** The steps from the open instrument to a fingering of several valves, in words and tube. */
export function companySteps(apart: InCompany, unit: Unit): readonly CompanyStep[] {
  const { open } = apart
  const openPiece: StepPiece = { loop: words.openRow, lengthMm: open.lengthMm, kind: 'open' }
  return [
    {
      words: words.open(lengthText(open.lengthMm, unit)),
      pieces: [openPiece],
      requiredMm: null,
      span: null,
    },
    aloneStep(apart, unit, openPiece),
    companyStep(apart, unit, openPiece),
    togetherStep(apart, unit, openPiece),
    ...furtherSteps(apart, unit, openPiece),
  ]
}

function aloneStep(apart: InCompany, unit: Unit, open: StepPiece): CompanyStep {
  const { alone, addedAloneMm } = apart
  const needsMm = alone.requiredLengthMm - apart.open.requiredLengthMm
  const say = alone.semitones < 0 ? words.aloneRises : words.alone
  const text = (mm: number): string => lengthText(Math.abs(mm), unit)
  return {
    words:
      say(alone.fingering, text(addedAloneMm), semitoneWords(alone.semitones), text(needsMm)) +
      fitWords(alone.requiredLengthMm - alone.lengthMm, alone.errorCents, unit),
    pieces: addedPieces(open, [[alone.fingering, addedAloneMm]]),
    requiredMm: alone.requiredLengthMm,
    span: spanOf(apart.open.requiredLengthMm, alone.requiredLengthMm, alone.semitones),
  }
}

function companyStep(apart: InCompany, unit: Unit, open: StepPiece): CompanyStep {
  const { company } = apart
  const longerMm = company.lengthMm - apart.open.lengthMm
  const percent = plainFigure(Math.abs(100 * (company.lengthMm / apart.open.lengthMm - 1)), 1)
  const [by, length] = [lengthText(Math.abs(longerMm), unit), lengthText(company.lengthMm, unit)]
  const sentence =
    Math.abs(longerMm) < nothingMm
      ? words.companySame(company.fingering, length)
      : (longerMm > 0 ? words.companyDown : words.companyUp)(company.fingering, by, length, percent)
  const missingMm = company.requiredLengthMm - company.lengthMm
  const itself = isNothing(missingMm)
    ? ''
    : words.companyOut(missingWords(missingMm, unit), signedCents(company.errorCents))
  return {
    words: sentence + itself,
    pieces: addedPieces(open, [[company.fingering, longerMm]]),
    requiredMm: company.requiredLengthMm,
    span: null,
  }
}

function togetherStep(apart: InCompany, unit: Unit, open: StepPiece): CompanyStep {
  const { together, company, alone, further, furtherMm } = apart
  if (apart.gone.length > 0) {
    return {
      words:
        words.ownLoops(together.fingering, words.and(further)) +
        fitWords(apart.missingMm, together.errorCents, unit),
      pieces: addedPieces(open, [[words.and(further), together.lengthMm - apart.open.lengthMm]]),
      requiredMm: together.requiredLengthMm,
      span: null,
    }
  }
  const hasMm = together.lengthMm - furtherMm - company.lengthMm
  const isExact = isNothing(company.requiredLengthMm - company.lengthMm)
  return {
    words:
      togetherWords(apart, hasMm, isExact, unit) +
      fitWords(apart.missingBeforeMm, apart.errorBeforeCents, unit),
    pieces: addedPieces(open, [
      [company.fingering, company.lengthMm - apart.open.lengthMm],
      [alone.fingering, hasMm],
    ]),
    requiredMm: together.requiredLengthMm,
    span: isExact ? spanOf(company.requiredLengthMm, together.requiredLengthMm, alone.semitones) : null,
  }
}

/** What the last valve needs in company against what it has; from the company as it is where that is out itself. */
function togetherWords(
  { together, company, alone, ...apart }: InCompany,
  hasMm: number,
  isExact: boolean,
  unit: Unit,
): string {
  const rises = alone.semitones < 0
  const text = (mm: number): string => lengthText(Math.abs(mm), unit)
  if (!isExact) {
    const say = rises ? words.togetherFromRises : words.togetherFrom
    return say(together.fingering, text(together.requiredLengthMm - company.lengthMm), text(hasMm))
  }
  const say = rises ? words.togetherRises : words.together
  return say(together.fingering, semitoneWords(alone.semitones), text(apart.neededInCompanyMm), text(hasMm))
}

/** What a compensating system adds: the design's own further loops, or the one that would be missing. */
function furtherSteps(apart: InCompany, unit: Unit, open: StepPiece): readonly CompanyStep[] {
  const { together, company, alone, further, furtherMm, missingMm } = apart
  if (apart.gone.length > 0) return []
  const condition = words.and(together.pressed)
  const before = addedPieces(open, [
    [company.fingering, company.lengthMm - apart.open.lengthMm],
    [alone.fingering, together.lengthMm - furtherMm - company.lengthMm],
  ])
  const step = { requiredMm: together.requiredLengthMm, span: null }
  if (further.length > 0) {
    const sentence = words.further(words.and(further), condition, lengthText(furtherMm, unit))
    const left = isNothing(missingMm)
      ? words.nothingLeft
      : words.left(missingWords(missingMm, unit), signedCents(together.errorCents))
    const pieces = [...before, { loop: words.and(further), lengthMm: furtherMm, kind: 'further' as const }]
    return [{ ...step, words: sentence + left, pieces }]
  }
  if (missingMm < nothingMm) return []
  const pieces = [...before, { loop: '', lengthMm: missingMm, kind: 'wanted' as const }]
  return [{ ...step, words: words.wouldAdd(condition, lengthText(missingMm, unit)), pieces }]
}

/** The open tube and what is added to it; what is taken out shortens the open tube. */
function addedPieces(
  open: StepPiece,
  added: readonly (readonly [name: string, lengthMm: number])[],
): readonly StepPiece[] {
  const taken = added.reduce((sum, [, mm]) => sum + Math.min(0, mm), 0)
  const loops = added.filter(([, mm]) => mm > 0)
  return [
    { ...open, lengthMm: open.lengthMm + taken },
    ...loops.map(([loop, lengthMm]) => ({ loop, lengthMm, kind: 'loop' as const })),
  ]
}

function spanOf(fromMm: number, toMm: number, semitones: number): CompanyStep['span'] {
  return toMm > fromMm ? { fromMm, toMm, text: semitoneWords(semitones) } : null
}

function semitoneWords(semitones: number): string {
  const size = Math.abs(semitones)
  return words.semitones(briefFigure(size, 2))
}

function fitWords(missingMm: number, cents: number, unit: Unit): string {
  return isNothing(missingMm)
    ? words.itFits
    : words.itIsOut(missingWords(missingMm, unit), signedCents(cents), cents > 0)
}

/** What is missing in words. */
export function missingWords(missingMm: number, unit: Unit): string {
  const length = lengthText(Math.abs(missingMm), unit)
  return missingMm > 0 ? words.short(length) : words.long(length)
}

export function isNothing(mm: number): boolean {
  return Math.abs(mm) < nothingMm
}
