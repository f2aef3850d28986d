import type { Category } from './chartModel.ts'

/** Room that a label takes along the axis, CSS px for each character. */
const characterPx = 7.6
/** Room beside the plot: the cents axis and the margins, CSS px. */
const besidePlotPx = 72

/** Height of a line of a label, CSS px. */
export const labelLinePx = 15

/** Narrowest that the categories may be before their labels touch, CSS px, when labels are short or stacked. */
export function narrowestCategoryPx(categories: readonly Category[]): number {
  const parts = categories.flatMap(({ label, short }) => short ?? label.split('-'))
  return Math.max(15, 5 + characterPx * parts.reduce((most, part) => Math.max(most, part.length), 1))
}

/** Narrowest chart that the categories fit into, CSS px. */
export function narrowestChartPx(categories: readonly Category[]): number {
  return besidePlotPx + narrowestCategoryPx(categories) * categories.length
}

/**
 * The labels as they fit into a chart of that width: as they are, or short, or each in a column of its own, valve
 * under valve, as on a fingering chart.
 */
export function fitted(categories: readonly Category[], chartPx: number): readonly string[] {
  const longest = categories.reduce((most, { label }) => Math.max(most, label.length), 1)
  const tooLong = longest * characterPx > (chartPx - besidePlotPx) / Math.max(categories.length, 1)
  return categories.map(({ label, short }) => (tooLong ? (short ?? label.split('-').join('\n')) : label))
}

/** Lines of the tallest label. */
export function linesOf(labels: readonly string[]): number {
  return labels.reduce((most, label) => Math.max(most, label.split('\n').length), 1)
}
