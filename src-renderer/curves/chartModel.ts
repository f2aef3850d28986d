/** One place on the category axis. */
export interface Category {
  readonly key: string
  readonly label: string
  /** What is left of the label where there is little room. */
  readonly short?: string
}

/** One design's errors over the categories, cents; `null` where it has none. */
export interface ChartSeries {
  readonly id: string
  readonly name: string
  /** Place in the line-up, for its look. */
  readonly series: number
  readonly values: readonly (number | null)[]
  /** What to say beside each value: the fingering, the harmonic. */
  readonly notes: readonly (string | null)[]
}

export interface ChartModel {
  readonly title: string
  readonly categories: readonly Category[]
  readonly series: readonly ChartSeries[]
  readonly bandCents: number
  /** Where one series' values may come to lie, drawn behind it. */
  readonly doubt?: ChartBands
}

/** Ends of a band at each category, cents; `null` where there is none. */
export interface ChartBands {
  /** Place in the line-up, for its look. */
  readonly series: number
  readonly lowest: readonly (number | null)[]
  readonly highest: readonly (number | null)[]
}

/** A point of the chart, by place. */
export interface ChartPoint {
  readonly series: number
  readonly category: number
}

/**
 * The range of the cents axis: always with zero and the band in it, and no smaller than what was shown before
 * unless the errors have shrunk to less than half of it, so that the curves and not the axis move.
 */
export function centsRange(
  model: ChartModel,
  before: readonly [number, number] | null,
): readonly [number, number] {
  let low = -model.bandCents * 1.4
  let high = model.bandCents * 1.4
  const ends = model.doubt === undefined ? [] : [model.doubt.lowest, model.doubt.highest]
  for (const values of [...model.series.map((each) => each.values), ...ends]) {
    for (const value of values) {
      if (value === null) continue
      low = Math.min(low, value)
      high = Math.max(high, value)
    }
  }
  const margin = 0.08 * (high - low)
  const wanted = [low - margin, high + margin] as const
  if (before === null) return wanted
  const holds = before[0] <= low && before[1] >= high && before[1] - before[0] <= 2 * (wanted[1] - wanted[0])
  return holds ? before : wanted
}
