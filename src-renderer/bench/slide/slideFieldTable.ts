import type { BenchSlide } from '#shared/workbook/bench.ts'
import { type lengthKinds, slideFieldWords } from '../../words/benchSlideFields.ts'

type LengthKey = Exclude<
  { [K in keyof BenchSlide]-?: BenchSlide[K] extends number | undefined ? K : never }[keyof BenchSlide],
  'densityGPerCm3' | 'bowAtHandRadiusMm'
>

/** A length of a slide as the page and the sheet name it. */
export interface SlideField {
  readonly key: LengthKey
  readonly label: string
  /** What kind of length it is, set behind the label where tube and movement could be confused. */
  readonly kind?: keyof typeof lengthKinds
  readonly digits?: number
  readonly help: string
}

/** What is measured on the instrument. */
export const measuredFields: readonly SlideField[] = [
  { key: 'legSpacingMm', ...slideFieldWords.legSpacingMm },
  { key: 'outerLegMm', ...slideFieldWords.outerLegMm },
  { key: 'knucklesMm', ...slideFieldWords.knucklesMm },
  { key: 'passagesMm', ...slideFieldWords.passagesMm },
  { key: 'straightPassageMm', ...slideFieldWords.straightPassageMm },
  { key: 'boreDiameterMm', digits: 2, ...slideFieldWords.boreDiameterMm },
  { key: 'wallMm', digits: 2, ...slideFieldWords.wallMm },
]

/** What is decided for the slide. */
export const decidedFields: readonly SlideField[] = [
  { key: 'outAtPitchMm', kind: 'movement', ...slideFieldWords.outAtPitchMm },
  { key: 'travelMm', kind: 'movement', ...slideFieldWords.travelMm },
  { key: 'stopGapMm', ...slideFieldWords.stopGapMm },
  { key: 'leastEngagedMm', ...slideFieldWords.leastEngagedMm },
  { key: 'trimMm', ...slideFieldWords.trimMm },
  { key: 'toleranceMm', kind: 'tube', digits: 2, ...slideFieldWords.toleranceMm },
]

/** The label of a field by its key, for what is said about it. */
export function slideFieldLabel(key: string): string {
  return [...measuredFields, ...decidedFields].find((field) => field.key === key)?.label ?? key
}
