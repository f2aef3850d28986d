import type { BenchSlide } from '#shared/workbook/bench.ts'

type LengthKey = Exclude<
  { [K in keyof BenchSlide]-?: BenchSlide[K] extends number | undefined ? K : never }[keyof BenchSlide],
  'densityGPerCm3' | 'bowAtHandRadiusMm'
>

/** A length of a slide as the page and the sheet name it. */
export interface SlideField {
  readonly key: LengthKey
  readonly label: string
  /** What kind of length it is, set behind the label where tube and movement could be confused. */
  readonly kind?: 'movement' | 'tube'
  readonly digits?: number
  readonly help: string
}

/** What is measured on the instrument. */
export const measuredFields: readonly SlideField[] = [
  {
    key: 'legSpacingMm',
    label: 'Leg spacing',
    help: 'Between the centre lines of the two legs: twice the bow’s radius.',
  },
  { key: 'outerLegMm', label: 'Outer leg, each', help: 'Length of one outer tube along its centre line.' },
  {
    key: 'knucklesMm',
    label: 'Knuckles, both',
    help: 'Both short tubes at the casing together, along the centre line.',
  },
  {
    key: 'passagesMm',
    label: 'Passages down, both',
    help: 'Both passages through the valve when it is pressed, together.',
  },
  {
    key: 'straightPassageMm',
    label: 'Straight passage up',
    help: 'The passage that the air takes when the valve is up; pressing the valve takes it out of the route.',
  },
  { key: 'boreDiameterMm', label: 'Bore', digits: 2, help: 'Inner diameter of the inner legs and the bow.' },
  { key: 'wallMm', label: 'Wall', digits: 2, help: 'Wall of the slide tube, 0.4 to 0.6 mm as a rule.' },
]

/** What is decided for the slide. */
export const decidedFields: readonly SlideField[] = [
  {
    key: 'outAtPitchMm',
    label: 'Out at pitch',
    kind: 'movement',
    help: 'How far the slide stands out when the fingering is in tune. Movement: each millimetre is two of tube.',
  },
  {
    key: 'travelMm',
    label: 'Travel',
    kind: 'movement',
    help: 'How far the slide may be pulled from fully in. Movement, not tube.',
  },
  { key: 'stopGapMm', label: 'Stop gap', help: 'What an inner leg is shorter than its outer leg.' },
  {
    key: 'leastEngagedMm',
    label: 'Least engaged',
    help: 'What must stay inside at full travel: a bore or more.',
  },
  { key: 'trimMm', label: 'Left to trim', help: 'What a first cut leaves over on a piece.' },
  {
    key: 'toleranceMm',
    label: 'Tolerance ±',
    kind: 'tube',
    digits: 2,
    help: 'On the whole loop, mm of tube.',
  },
]

/** The label of a field by its key, for what is said about it. */
export function slideFieldLabel(key: string): string {
  return [...measuredFields, ...decidedFields].find((field) => field.key === key)?.label ?? key
}
