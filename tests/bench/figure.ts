/** One measured figure; `target` is the most (or, `atLeast`, the least) it may be, `null` where it is only shown. */
export interface Figure {
  readonly name: string
  readonly value: number
  readonly unit: string
  readonly target: number | null
  readonly atLeast?: boolean
}

/** The figure of the sorted values below which a share of them lies. */
export function quantile(values: readonly number[], share: number): number {
  const sorted = [...values].sort((a, b) => a - b)
  return sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? 0
}

/** Median time of `runs` calls after `warming` others, ms. */
export function medianMs(runs: number, work: () => unknown, warming = runs): number {
  return quantile(timesMs(runs, work, warming), 0.5)
}

/** Times of `runs` calls after `warming` others, ms. */
function timesMs(runs: number, work: () => unknown, warming: number): readonly number[] {
  for (let i = 0; i < warming; i++) work()
  return Array.from({ length: runs }, () => {
    const begun = performance.now()
    work()
    return performance.now() - begun
  })
}
