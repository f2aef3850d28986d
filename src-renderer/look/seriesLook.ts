/** How a design's curve is told from the others: colour, dash and marker, never colour alone. */
export interface SeriesLook {
  /** Name of the colour's token in the style sheet. */
  readonly colour: string
  readonly dash: readonly number[]
  readonly marker: Marker
}

export type Marker = 'circle' | 'square' | 'triangle' | 'diamond' | 'cross'

const colours = ['--s1', '--s2', '--s3', '--s4', '--s5', '--s6']
const dashes = [[], [6, 4], [2, 3], [9, 3, 2, 3], [12, 4]]
const markers: readonly Marker[] = ['circle', 'square', 'triangle', 'diamond', 'cross']

/** The look of the i-th design in the line-up; it repeats only after thirty. */
export function seriesLook(series: number): SeriesLook {
  return {
    colour: colours[series % colours.length]!,
    dash: dashes[series % dashes.length]!,
    marker: markers[series % markers.length]!,
  }
}
