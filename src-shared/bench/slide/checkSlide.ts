import { benchMm } from '../figures.ts'
import type { Finding } from '../finding.ts'
import type { SlideJob } from './slide.ts'

type Field = Exclude<
  keyof SlideJob,
  'bendCorrection' | 'furtherPairs' | 'quarterRadiiMm' | 'partTolerancesMm'
>

const aboveNothing: readonly Field[] = [
  'targetMm',
  'legSpacingMm',
  'outerLegMm',
  'boreDiameterMm',
  'wallMm',
  'densityGPerCm3',
]
const atLeastNothing: readonly Field[] = [
  'knucklesMm',
  'passagesMm',
  'straightPassageMm',
  'outAtPitchMm',
  'travelMm',
  'stopGapMm',
  'leastEngagedMm',
  'trimMm',
  'toleranceMm',
]

/**
 * What in a slide's values cannot be worked with: a length that is not a finite number, or is below what it can
 * be. Empty when the slide can be sized.
 *
 * @example checkSlide({ ...job, wallMm: -1 })[0]?.field // 'wallMm'
 */
export function checkSlide(job: SlideJob): readonly Finding[] {
  const bad = [
    ...aboveNothing.map((field) => below(field, job[field], job[field] !== undefined && job[field] > 0)),
    ...atLeastNothing.map((field) => below(field, job[field], job[field] !== undefined && job[field] >= 0)),
    ...nested(job).map(([field, value]) => below(field, value, value >= 0)),
    routeFinding(job),
    toleranceFinding(job),
  ]
  return bad.filter((finding) => finding !== null)
}

function below(field: string, value: number | undefined, fits: boolean): Finding | null {
  if (fits && Number.isFinite(value)) return null
  const expected = (aboveNothing as readonly string[]).includes(field) ? 'above 0' : 'at least 0'
  return { field, found: String(value), expected, message: `${field} is ${value}; it must be ${expected}.` }
}

/** The optional values, each under its path. */
function nested(job: SlideJob): readonly (readonly [string, number])[] {
  const pairs = (job.furtherPairs ?? []).flatMap((pair, index) => [
    [`furtherPairs[${index}].legSpacingMm`, pair.legSpacingMm] as const,
    [`furtherPairs[${index}].returnSpacingMm`, pair.returnSpacingMm] as const,
    ...radii(`furtherPairs[${index}].`, pair.quarterRadiiMm),
  ])
  const tolerances = Object.entries(job.partTolerancesMm ?? {}).map(
    ([field, value]) => [`partTolerancesMm.${field}`, value] as const,
  )
  const atHand =
    job.bowAtHandRadiusMm === undefined ? [] : [['bowAtHandRadiusMm', job.bowAtHandRadiusMm] as const]
  return [...radii('', job.quarterRadiiMm), ...pairs, ...tolerances, ...atHand]
}

function radii(path: string, pair: readonly [number, number] | undefined): (readonly [string, number])[] {
  return (pair ?? []).map((radiusMm, index) => [`${path}quarterRadiiMm[${index}]`, radiusMm] as const)
}

/** The route holds the loop, so it cannot be the shorter of the two. */
function routeFinding(job: SlideJob): Finding | null {
  if (job.routeLengthMm > job.targetMm && Number.isFinite(job.routeLengthMm)) return null
  return {
    field: 'routeLengthMm',
    found: String(job.routeLengthMm),
    expected: `longer than the loop, ${job.targetMm} mm`,
    message: `The route is ${job.routeLengthMm} mm; it contains the loop and must be longer than its ${job.targetMm} mm.`,
  }
}

/** A loop that may be shorter by more than its whole route cannot be told of in cents. */
function toleranceFinding({ routeLengthMm, toleranceMm }: SlideJob): Finding | null {
  if (!(toleranceMm >= routeLengthMm)) return null
  const [found, expected] = [String(toleranceMm), `less than the route, ${benchMm(routeLengthMm)}`]
  return {
    field: 'toleranceMm',
    found,
    expected,
    message: `The tolerance is ${found} mm; it must be ${expected}.`,
  }
}
