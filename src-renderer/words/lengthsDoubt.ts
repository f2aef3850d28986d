/** What is said about tolerances, other temperatures and the error of readings. */
export const doubtWords = {
  title: 'Doubt',
  hint: 'what ± on the tubes, other temperatures and readings do, and what tolerance is needed',
  onChart: 'On the chart',
  shown: { none: 'none', worstCase: 'worst case', rootSumSquare: 'root-sum-square' },
  forProposed: 'for the lengths proposed',
  forPresent: 'for the lengths as they stand',
  tooLong: 'These tolerances are longer than a whole route. Make them smaller.',
  refusedTolerance: (found: string, most: number) => `found ${found} mm, expected at most ${most} mm.`,
  body: 'body ±',
  everyLoop: 'every loop ±',
  loop: (name: string) => `${name} ±`,
  coldest: 'coldest',
  warmest: 'warmest',
  reading: 'a reading ±',
  readingHelp: 'How far off a tuner’s reading may be that the lengths come from. 0: they come from none.',
  refusedReading: (found: string, most: number) => `found ${found} cents, expected 0 to ${most} cents.`,
  temperatureHelp: 'Empty: the temperature of the air in the strip.',

  caption: 'Where each fingering may come to lie, cents',
  columns: { fingering: 'fingering', worstCase: 'worst case', rootSumSquare: 'root-sum-square' },
  cents: 'cents',
  to: 'to',

  keepWithin: 'To keep every counted fingering within ±',
  refusedWithin: (found: string) => `found ${found} cents, expected at least 0.1 cents.`,
  onEveryPart: (length: string) => `±${length} on every part`,
  timesAbove: (times: string) => `${times} times the tolerances above`,
  worstCase: 'Worst case',
  rootSumSquare: 'Root-sum-square',
  any: (model: string) => `${model}: any tolerance will do.`,
  none: (model: string, fingering: string, cents: string) =>
    `${model}: none will do. Even with exact parts ${fingering} is ${cents} cents outside.`,
  needed: (model: string, size: string, part: string | null, fingering: string) =>
    `${model}: ${size}${part === null ? '' : `, or ${part}`}; ${fingering} sets it.`,
} as const
