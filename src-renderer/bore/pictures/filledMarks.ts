/** Looks have this many markers and dashes; beyond, the markers are filled, so that no two differ by colour alone. */
const markers = 5

/** Whether a series has filled markers. */
export function isFilled(series: number): boolean {
  return series >= markers
}
