import { useMemo } from 'react'
import { type RefusedSlide, type SizedSlide, sizeSlide } from '#shared/bench/slide/sizeSlide.ts'
import type { BenchSlide } from '#shared/workbook/bench.ts'
import { slideJobOf } from '#shared/workbook/benchJobs.ts'
import type { Workbook } from '#shared/workbook/workbook.ts'
import { useSettings } from '../../state/settings.ts'

type Placed = ReturnType<typeof slideJobOf>

/** A slide of the workbook, found and sized. */
export interface SlideWork {
  readonly placed: Placed
  /** `null` when its design or loop is not there. */
  readonly sized: SizedSlide | RefusedSlide | null
}

/** Sizes a slide of the workbook, in the unit that is shown; anew only when one of them changes. */
export function useSlide(workbook: Workbook, slide: BenchSlide): SlideWork {
  const unit = useSettings((settings) => settings.unit)
  return useMemo(() => {
    const placed = slideJobOf(workbook, slide)
    return { placed, sized: placed.kind === 'placed' ? sizeSlide(placed.job, unit) : null }
  }, [workbook, slide, unit])
}
