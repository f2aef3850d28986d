import { narrowestChartPx } from '../curves/categoryLabels.ts'
import { type ChartModel, centsRange } from '../curves/chartModel.ts'
import { chartSvg } from '../curves/chartSvg.ts'
import type { Inks } from '../curves/inkOfTheme.ts'

/** Height of the plot of a whole chart, and of each piece of a long one, px. */
const wholePx = 270
const piecePx = 200

/**
 * An error chart for a width that cannot grow: as it is, or cut into pieces one under the other, so that its words
 * stay as large as they are. The pieces have one scale, and as many categories each as can be.
 */
export function paperCharts(model: ChartModel, inks: Inks, widthPx: number): readonly string[] {
  const count = Math.ceil(narrowestChartPx(model.categories) / widthPx)
  if (count <= 1) return [chartSvg(model, inks, { widthPx, plotPx: wholePx })]
  const size = { widthPx, plotPx: piecePx, range: centsRange(model, null) }
  const each = Math.ceil(model.categories.length / count)
  return Array.from({ length: count }, (_, i) => chartSvg(piece(model, i * each, each), inks, size))
}

function piece(model: ChartModel, from: number, count: number): ChartModel {
  const cut = <Value>(values: readonly Value[]): readonly Value[] => values.slice(from, from + count)
  const { doubt } = model
  const series = model.series.map((each) => ({ ...each, values: cut(each.values), notes: cut(each.notes) }))
  const whole = { ...model, categories: cut(model.categories), series }
  if (doubt === undefined) return whole
  return { ...whole, doubt: { ...doubt, lowest: cut(doubt.lowest), highest: cut(doubt.highest) } }
}
