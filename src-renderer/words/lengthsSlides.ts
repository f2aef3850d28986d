/** What is said about slides that are moved while playing. */
export const playedWords = {
  title: 'Slides moved while playing',
  hint: 'how far each fingering wants them out, and a wall chart',
  countReach: 'Count what they reach as reached when lengths are found',
  wallChart: 'Wall chart…',
  none: 'Tick a slide that is moved while playing and give it its travel.',
  travel: 'travel',
  travelOf: (slide: string) => `Travel of ${slide}`,
  noTravel: 'no travel given',
  nowOut: (length: string) => `now ${length} out`,

  caption: 'Movement of the slides for each fingering',
  columns: {
    fingering: 'fingering',
    error: 'error',
    wantedOut: 'slide wanted out',
    moved: 'moved',
    left: 'left',
  },
  cents: 'cents',
} as const

/** What stands on and about the chart for the wall. */
export const wallWords = {
  title: 'Wall chart',
  ofProposal: 'For the proposed lengths, not the present ones: leave the proposal for a chart of those.',
  fileName: (design: string) => `${design}, slides`,
  print: 'Print…',
  pdf: 'Keep as PDF…',
  close: 'Close',
  heading: (design: string) => `${design}: slides`,
  noneMoved: 'Every fingering: slides as they are',
  noneCounted: 'Every fingering that counts: slides as they are',
  notCounted: (fingerings: string) => `Left out, for they do not count: ${fingerings}.`,
  othersNotMoved: 'Every other fingering: slides as they are.',
  left: (cents: string) => `${cents} cents left`,
  out: 'out',
  in: 'in',
} as const
