/** Valves pressed together, in the order of the design's valves. */
export interface Fingering {
  readonly pressed: readonly string[]
  /** Nominal drop; the sum of the valves' when absent. */
  readonly semitones?: number
}

/**
 * How a fingering is written: `0` for open, else the valve ids joined with `-`.
 *
 * @example fingeringName(['1', '3']) // '1-3'
 */
export function fingeringName(pressed: readonly string[]): string {
  return pressed.length === 0 ? '0' : pressed.join('-')
}

/**
 * The name of a typed fingering, its valves in the design's order. What names other valves is left as it is typed.
 *
 * @param order valve ids in the design's order
 * @example nameInValveOrder('3-1', ['1', '2', '3']) // '1-3'
 */
export function nameInValveOrder(typed: string, order: readonly string[]): string {
  const ids = typed.split('-')
  if (!ids.every((id) => order.includes(id))) return typed
  return fingeringName(ids.toSorted((a, b) => order.indexOf(a) - order.indexOf(b)))
}
