/**
 * A valve: pressed or released. `semitones` is its nominal drop taken alone, positive when pressing it
 * lowers the instrument, negative for an ascending valve or a change valve to a shorter side.
 */
export interface Valve {
  /** Short name on the chart: `1`, `2`, `T`. Unique in its design, without `-`, spaces or the name `0`. */
  readonly id: string
  readonly semitones: number
}
