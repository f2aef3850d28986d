import type { Finding } from '../bench/finding.ts'
import { changePitch, type PitchChangeRecord, pitchChangeRecord } from '../bench/pitchChange.ts'
import { fitReadings } from '../bench/readings/fitReadings.ts'
import type { Remark } from '../bench/readings/readingsFit.ts'
import { type ReadingsRecord, readingsRecord } from '../bench/readings/readingsRecord.ts'
import { sizeSlide } from '../bench/slide/sizeSlide.ts'
import type { SlideProblem } from '../bench/slide/slideProblems.ts'
import { type SlideRecord, slideRecord } from '../bench/slide/slideRecord.ts'
import type { BenchPitchChange, BenchReadings, BenchSlide } from './bench.ts'
import { pitchChangeOf, readingsJobOf, slideJobOf, type Unplaced } from './benchJobs.ts'
import { jobsOf } from './commands/benchCommands.ts'
import type { Workbook } from './workbook.ts'

/** Why a job could not be worked out. */
export type Obstacle =
  | { readonly kind: 'unplaced'; readonly message: string }
  | { readonly kind: 'refused'; readonly message: string }

type Nullable<T> = { readonly [K in keyof T]: T[K] | null }

/** A slide's record. Figures are `null`, and the problems say why, when it could not be sized. */
export type BenchSlideRecord = { readonly id: string } & Nullable<Omit<SlideRecord, 'cuts' | 'problems'>> & {
    readonly cuts: SlideRecord['cuts']
    readonly problems: readonly (SlideProblem | Obstacle)[]
  }

/** The record of a table of readings; the remarks say why when it could not be fitted. */
export type BenchReadingsRecord = { readonly id: string } & Omit<ReadingsRecord, 'remarks'> & {
    readonly remarks: readonly (Remark | (Obstacle & { readonly rows: readonly number[] }))[]
  }

/** The record of a change of pitch. `bodyMm` is `null` when its design is not in the workbook. */
export type BenchPitchChangeRecord = { readonly id: string } & Omit<PitchChangeRecord, 'bodyMm'> & {
    readonly bodyMm: number | null
  }

/** The record of the headless `bench` command. Numbers are unrounded. */
export interface BenchRecord {
  readonly slides: readonly BenchSlideRecord[]
  readonly readings: readonly BenchReadingsRecord[]
  readonly pitchChanges: readonly BenchPitchChangeRecord[]
}

/**
 * Everything that the bench pages of a workbook come to.
 *
 * @example benchRecord(workbook).slides[0]?.straightEndMm // 12.3
 */
export function benchRecord(workbook: Workbook): BenchRecord {
  return {
    slides: jobsOf(workbook, 'slides').map((slide) => benchSlideRecord(workbook, slide)),
    readings: jobsOf(workbook, 'readings').map((readings) => benchReadingsRecord(workbook, readings)),
    pitchChanges: jobsOf(workbook, 'pitchChanges').map((change) => benchPitchChangeRecord(workbook, change)),
  }
}

const notSized = {
  targetMm: null,
  bowMm: null,
  straightEndMm: null,
  innerLegMm: null,
  engagedAtTravelMm: null,
  centsPerMmOut: null,
  massG: null,
  cuts: [],
  rangeCents: null,
} as const

function benchSlideRecord(workbook: Workbook, slide: BenchSlide): BenchSlideRecord {
  const placed = slideJobOf(workbook, slide)
  if (placed.kind === 'unplaced') return { id: slide.id, ...notSized, problems: [obstacle(placed)] }
  const sized = sizeSlide(placed.job)
  if (sized.kind === 'sized') return { id: slide.id, ...slideRecord(sized) }
  return { id: slide.id, ...notSized, problems: refusals(sized.findings) }
}

function benchReadingsRecord(workbook: Workbook, readings: BenchReadings): BenchReadingsRecord {
  const placed = readingsJobOf(workbook, readings)
  const fit = placed.kind === 'placed' ? fitReadings(placed.job) : null
  if (fit?.kind === 'fitted') return { id: readings.id, ...readingsRecord(fit) }
  const obstacles = placed.kind === 'unplaced' ? [obstacle(placed)] : refusals(fit?.findings ?? [])
  return {
    id: readings.id,
    openLengthMm: null,
    loops: {},
    harmonicOffsetsCents: {},
    residualsCents: [],
    remarks: obstacles.map((each) => ({ ...each, rows: [] })),
  }
}

function benchPitchChangeRecord(workbook: Workbook, change: BenchPitchChange): BenchPitchChangeRecord {
  const placed = pitchChangeOf(workbook, change)
  if (placed.kind === 'placed') return { id: change.id, ...pitchChangeRecord(changePitch(placed.job)) }
  return { id: change.id, bodyMm: null, loops: {}, ifOnlyBodyErrorsCents: {} }
}

function obstacle({ message }: Unplaced): Obstacle {
  return { kind: 'unplaced', message }
}

function refusals(findings: readonly Finding[]): readonly Obstacle[] {
  return findings.map(({ message }) => ({ kind: 'refused', message }))
}
