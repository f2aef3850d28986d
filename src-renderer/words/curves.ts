import { fewNames } from '#shared/quantity/fewNames.ts'

/** What the error charts, their tables and the page of the curves say. */
export const curvesWords = {
  leftOut: (shown: number, left: number) =>
    `The ${shown} fingerings of the fewest valves; ${left} more are not shown. A design’s own are all in its table “All combinations of the design”.`,
  unreached: (designs: readonly { readonly design: string; readonly notes: readonly string[] }[]) =>
    `No fingering comes within 60 cents: ${designs.map(({ design, notes }) => `${design}, ${fewNames(notes)}`).join('; ')}.`,
  allHidden: 'Every design is hidden. Show one in the line-up to see its curve.',
  headings: { fingering: 'Combination error', note: 'Error by note' },
  alongAxis: 'Along the axis',
  by: { fingering: 'by fingering', note: 'by note' },
  shown: 'Fingerings shown',
  which: { usual: 'one a step', all: 'all' },
  band: 'band ±',
  titles: { fingering: 'Combination error by fingering', note: 'Error by sounding note' },
  columns: { step: 'step', semitones: 'semitones', fingering: 'fingering', note: 'note' },
  /** `1-3 on 3`. */
  playedAs: (fingering: string, harmonic: number) => `${fingering} on ${harmonic}`,
  /** The fingering and the harmonic of `1-3 on 3`. */
  partsOfPlayed: (note: string) => note.split(' on '),
  tableCaption: (title: string) => `${title}, cents, sharp positive`,
  chart: 'chart',
  chartLabel: (title: string) => `${title}, cents. Arrow keys read the values, Enter shows the account.`,
  noValue: (place: string) => `${place}: no value`,
  value: (design: string, place: string, cents: string) => `${design}, ${place}: ${cents} cents`,
  axis: 'cents, sharp above the line',
} as const
