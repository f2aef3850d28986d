/** A curve over frequency. */
export interface PlotLine {
  readonly key: string
  readonly series: number
  readonly values: Float64Array
}

/** A marked place of a curve. */
export interface PlotMark {
  readonly line: string
  readonly series: number
  readonly mode: number
  readonly hz: number
  /** `null` stands the mark on the curve. */
  readonly value: number | null
}

/** What a plot shows. */
export interface PlotModel {
  readonly hz: Float64Array
  readonly lines: readonly PlotLine[]
  readonly marks: readonly PlotMark[]
  readonly axisName: string
  readonly range: readonly [number, number]
  /** Round values of the axis where the usual ones will not do. */
  readonly ticks?: readonly number[]
}

/** Value of a curve at a frequency, between its points by a straight line; `null` outside of it. */
export function valueAt({ hz, lines }: PlotModel, line: string, atHz: number): number | null {
  const values = lines.find(({ key }) => key === line)?.values
  const [low, high] = [hz[0] ?? 0, hz.at(-1) ?? 0]
  if (values === undefined || hz.length < 2 || atHz < low || atHz > high) return null
  const place = ((atHz - low) / (high - low)) * (hz.length - 1)
  const i = Math.min(hz.length - 2, Math.floor(place))
  return values[i]! + (place - i) * (values[i + 1]! - values[i]!)
}
