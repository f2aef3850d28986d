import { useMemo } from 'react'
import { changePitch, type PitchChangeAnswer } from '#shared/bench/pitchChange.ts'
import type { BenchPitchChange } from '#shared/workbook/bench.ts'
import { pitchChangeOf } from '#shared/workbook/benchJobs.ts'
import type { Design, Workbook } from '#shared/workbook/workbook.ts'
import { type TakenChange, useBench } from '../benchStore.ts'

/** A change of pitch of the workbook, found and reckoned. */
export interface PitchWork {
  readonly placed: ReturnType<typeof pitchChangeOf>
  /** `null` when its design is not there. */
  readonly answer: PitchChangeAnswer | null
  /** Whether the design has it already: it is told as it was taken, from the lengths before. */
  readonly isTaken: boolean
}

/** Reckons a change of pitch, for page and report alike. */
export function usePitchJob(workbook: Workbook, change: BenchPitchChange): PitchWork {
  const all = useBench((state) => state.taken)
  return useMemo(() => {
    const taken = all.find((each) => isStanding(each, workbook, change))
    const placed = pitchChangeOf(
      taken === undefined ? workbook : withLengthsOf(workbook, taken.before),
      change,
    )
    const answer = placed.kind === 'placed' ? changePitch(placed.job) : null
    return { placed, answer, isTaken: taken !== undefined }
  }, [workbook, change, all])
}

/** Whether a change was taken as it is asked for, and the design has the lengths that it gave. */
function isStanding(taken: TakenChange, { designs }: Workbook, change: BenchPitchChange): boolean {
  const design = designs.find(({ id }) => id === change.design)
  return (
    design !== undefined &&
    design.id === taken.after.id &&
    taken.fromA4Hz === change.fromA4Hz &&
    taken.toA4Hz === change.toA4Hz &&
    hasLengthsOf(design, taken.after)
  )
}

function hasLengthsOf(design: Design, other: Design): boolean {
  const lengths = ({ instrument, loops }: Design): string =>
    JSON.stringify([instrument.fundamentalHz, loops.map(({ id, lengthMm }) => [id, lengthMm])])
  return lengths(design) === lengths(other)
}

function withLengthsOf(workbook: Workbook, { id, instrument, loops }: Design): Workbook {
  const designs = workbook.designs.map((each) => (each.id === id ? { ...each, instrument, loops } : each))
  return { ...workbook, designs }
}
