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
