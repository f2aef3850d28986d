import { slideDefaults } from '../slide/slide.ts'
import { exactFractions } from './exactLengths.ts'
import type { ReadingsJob } from './reading.ts'
import type { FittedLoop } from './readingsFit.ts'
import { isSettled } from './settled.ts'
import type { SolvedReadings } from './solveReadings.ts'
import type { Unknown } from './unknowns.ts'

/**
 * The loops that the readings settle, each against its target: given in mm, or as its share of the open length
 * wanted, or else exact for its own fingering. A share goes with the open length that was found, so that an
 * instrument which is long all over is not asked to change its loops against its body.
 *
 * @example fittedLoops(job, unknowns, solved, 3).L3?.changeMm // 5.9
 */
export function fittedLoops(
  job: ReadingsJob,
  unknowns: readonly Unknown[],
  solved: SolvedReadings,
  errorCents: number,
): Record<string, FittedLoop> {
  const fractions = exactFractions(job.valves, job.loops, job.fingerings)
  const loops = unknowns.flatMap((unknown, at) => {
    if (unknown.kind !== 'loop' || !isSettled(solved, at)) return []
    const { targetMm, wantedFraction } = job.loops.find(({ id }) => id === unknown.id)!
    const exact = wantedLength(job, unknowns, solved, undefined, fractions.get(unknown.id))
    const fraction = wantedFraction ?? fractions.get(unknown.id)
    const wanted = wantedLength(job, unknowns, solved, targetMm, fraction)
    const loop = { ...fittedLoop(solved, at, wanted, errorCents), exactMm: exact?.lengthMm ?? null }
    return [[unknown.id, loop] as const]
  })
  return Object.fromEntries(loops)
}

/** A length wanted, and how it moves with the open length when that is one of the unknowns. */
interface Wanted {
  readonly lengthMm: number
  readonly openAt: number
  readonly fraction: number
}

function wantedLength(
  job: ReadingsJob,
  unknowns: readonly Unknown[],
  solved: SolvedReadings,
  givenMm: number | undefined,
  fraction: number | undefined,
): Wanted | null {
  if (givenMm !== undefined) return { lengthMm: givenMm, openAt: -1, fraction: 0 }
  // No length below 0 can be made, whatever the drops ask for.
  if (fraction === undefined || fraction < 0) return null
  const openAt = unknowns.findIndex(({ kind }) => kind === 'open')
  const heldMm = job.openTargetMm ?? (job.openHeld ? job.openLengthMm : undefined)
  if (heldMm !== undefined) return { lengthMm: fraction * heldMm, openAt: -1, fraction: 0 }
  if (!isSettled(solved, openAt)) return null
  return { lengthMm: fraction * solved.values[openAt]!, openAt, fraction }
}

function fittedLoop(
  solved: SolvedReadings,
  at: number,
  wanted: Wanted | null,
  errorCents: number,
): Omit<FittedLoop, 'exactMm'> {
  const { covariance } = solved.linear
  const value = solved.values[at]!
  const standardError = errorCents * Math.sqrt(Math.max(0, covariance[at]![at]!))
  if (wanted === null)
    return {
      value,
      standardError,
      targetMm: null,
      changeMm: null,
      movementMm: null,
      changeStandardErrorMm: null,
      firstCutMm: null,
    }
  const { openAt, fraction } = wanted
  const shared =
    openAt < 0 ? 0 : fraction ** 2 * covariance[openAt]![openAt]! - 2 * fraction * covariance[openAt]![at]!
  const changeMm = wanted.lengthMm - value
  const changeStandardErrorMm = errorCents * Math.sqrt(Math.max(0, covariance[at]![at]! + shared))
  return {
    value,
    standardError,
    targetMm: wanted.lengthMm,
    changeMm,
    movementMm: changeMm / 2,
    changeStandardErrorMm,
    firstCutMm: wanted.lengthMm + Math.max(2 * changeStandardErrorMm, slideDefaults.trimMm),
  }
}
