/** Heights of what is drawn, px. */
export const at = {
  number: 30,
  note: 54,
  cents: 76,
  hertz: 98,
  frequency: 162,
  pitch: 352,
  octaves: 390,
  key: 446,
}

/** A place to a tenth of a pixel. */
export function round(px: number): number {
  return Math.round(px * 10) / 10
}
