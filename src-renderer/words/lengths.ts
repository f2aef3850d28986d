/** How fingerings and slides are called where lengths are found. */
export const lengthsNames = {
  open: 'open',
  mainSlide: 'main slide',
} as const

/** What is said about the choices: what is made least, and which fingerings count. */
export const choiceWords = {
  makeLeast: 'Make least the',
  objectives: { rms: 'rms', largest: 'largest' },
  openNote: 'Open note',
  openNoteMay: { held: 'held', free: 'free' },
  reachCounts: 'what moved slides reach counts as reached',
  reachCountsNot: 'do not',

  counted: 'Fingerings that count',
  count: (fingering: string) => `Count ${fingering}`,
  openHeld: 'The open note counts when it is free',
  leaveOut: 'Leave out',
  countAgain: 'Count again',
  times: (weight: string) => `×${weight}`,
  more: (count: number) => `and ${count} more`,
  allAlike: 'all alike',
  oneAStep: 'one a step',
} as const

/** What the table of fingerings and their weights says. */
export const weightWords = {
  caption: (design: string) => `Fingerings of ${design}: weight and error, cents`,
  columns: {
    fingering: 'fingering',
    weight: 'weight',
    now: 'now',
    proposed: 'proposed',
    part: 'part in it',
  },
  cents: 'cents',
  held: 'held',
  weightOf: (fingering: string) => `Weight of ${fingering}`,
  refused: (found: string) => `found ${found}, expected 0 to 1000.`,
  leftOut: 'left out',
  holds: 'holds the largest',
} as const

/** What the chart of the proposal and the curve from least rms to least largest error say. */
export const proposalWords = {
  asItStands: 'as it stands',
  proposed: 'proposed',
  shaded: { worstCase: 'worst case', rootSumSquare: 'root-sum-square' },
  shadedBy: (kind: string) => `shaded: ${kind} of the doubt below`,
  title: 'Error by fingering',
  titleWithSlides: 'What moved slides leave of the error, by fingering',
  solverFailed: (reason: string) => `The solver could not be run: ${reason}`,

  trade: 'Trade of rms against largest',
  noTrade: 'The least rms has the least largest error too: there is nothing to trade.',
  tradeLabel: 'Place between least rms and least largest error',
  largestAxis: 'largest, cents',
  rmsAxis: 'rms, cents',
  place: (rms: string, largest: string) => `rms ${rms}, largest ${largest}`,
  placeCents: (place: string) => `${place} cents`,
  tradeWaits: 'working…',
} as const

/** What the table of several systems says. */
export const systemsWords = {
  title: 'Several systems, each at its best',
  hint: 'every visible design under the same choices',
  caption: 'Visible designs as they stand and each at its best, cents',
  columns: {
    design: 'design',
    rmsNow: 'rms now',
    rmsBest: 'rms at best',
    largestNow: 'largest now',
    largestBest: 'largest at best',
    times: { rms: 'rms, times the best', largest: 'largest, times the best' },
  },
  cents: 'cents',
  at: (fingering: string) => `at ${fingering}`,
  note: 'Weights go by the name of a fingering and hold for every design; a design’s own loops are free unless said otherwise.',
  atItsBest: 'At its best',
  hasTheLeast: {
    rms: (size: string) => `has the least rms: ${size}.`,
    largest: (size: string) => `has the least largest error: ${size}.`,
  },
  exact: 'it can be made exact',
  inCents: (figure: string) => `${figure} cents`,
} as const
