/** What is said about a proposal: what it is worth, what holds it, and whether it is taken. */
export const verdictWords = {
  stands: 'The design stands at these lengths.',
  notTaken: (reason: string) => `These lengths were not taken: ${reason}`,
  take: 'Take these lengths',
  takeStep: 'Take lengths',
  showAgain: 'Show the proposal again',
  leave: 'Leave',

  caption: 'Errors as it stands and as proposed',
  cents: 'cents',
  asItStands: 'as it stands',
  proposed: 'proposed',
  rms: 'rms',
  largest: 'largest',
  over: 'Over the fingerings that count here; the figures of the line-up count one a step.',
  at: (note: string) => `at ${note}`,

  largestIsAt: 'The largest is at ',
  largestIsHeldBy: 'The largest is held by ',
  comma: ', ',
  andMore: (count: number) => ` and ${count} more`,
  stop: '.',
  holder: (note: string, cents: string) => `${note} (${cents})`,

  openNote: 'The open note',
  bound: (name: string, which: 'lowest' | 'highest', end: string, gain: string) =>
    `${name} is held at its ${which} of ${end}: ${gain}.`,
  noGain: 'nothing would be gained by moving it',
  gain: (cents: string, shorter: boolean) =>
    `${cents} cents gained for each millimetre ${shorter ? 'shorter' : 'longer'}`,
} as const

/** Why there are no lengths, or what to know about them. */
export const lengthRefusalWords = {
  programFailed: (reason: string) =>
    `The linear programs gave no answer (${reason}). The least rms may still be had.`,
  stopped: 'The search ran out of steps: these are the best lengths found, perhaps not the best there are.',
  undetermined: (loop: string) =>
    `No counted fingering says how long ${loop} should be: it stays as near as may be.`,

  nothingFree: 'Nothing is free. Free a loop, or the open note.',
  allWeightsZero: 'Every fingering is left out. Count at least one.',
  boundsContradict: (part: string, found: string, expected: string) =>
    `The bounds of ${part} contradict each other: found at most ${found} mm, expected ${expected} mm.`,
  tiedInCircle: (part: string) =>
    `${part} is tied in a circle. A tie must end at a loop that is free or held.`,
  routeVanishes: (part: string, found: string, expected: string) =>
    `These choices leave ${part} no tube at all: found ${found}, expected ${expected}.`,
  reachOutOfRange: (part: string, found: string, expected: string) =>
    `The slides' travel is more than the route of ${part} holds: found ${found}, expected ${expected}.`,
  other: (part: string, found: string, expected: string) => `${part}: found ${found}, expected ${expected}.`,

  openNote: 'the open note',
  design: 'the design',
  aFingering: 'a fingering',
  fingering: (name: string) => `fingering ${name}`,
} as const
