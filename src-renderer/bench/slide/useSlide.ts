import { useMemo } from 'react'
import { type RefusedSlide, type SizedSlide, sizeSlide } from '#shared/bench/slide/sizeSlide.ts'
import type { BenchSlide } from '#shared/workbook/bench.ts'
import { slideJobOf } from '#shared/workbook/benchJobs.ts'
import type { Workbook } from '#shared/workbook/workbook.ts'

type Placed = ReturnType<typeof slideJobOf>

/** A slide of the workbook, found and sized. */
export interface SlideWork {
  readonly placed: Placed
  /** `null` when its design or loop is not there. */
  readonly sized: SizedSlide | RefusedSlide | null
}

/** Sizes a slide of the workbook; anew only when one of the two changes. */
export function useSlide(workbook: Workbook, slide: BenchSlide): SlideWork {
  return useMemo(() => {
    const placed = slideJobOf(workbook, slide)
    return { placed, sized: placed.kind === 'placed' ? sizeSlide(placed.job) : null }
  }, [workbook, slide])
}
