/** What the page and the sheet of a change of pitch say. */
export const pitchWords = {
  emptyTitle: 'Another pitch',
  emptyText:
    'Say what the instrument plays at and what it shall play at; what body and every loop need follows, and what happens to the combinations if only the body is changed.',
  designStep: 'Design of change',
  from: 'From A4',
  fromHelp: 'What the design plays at as it is.',
  fromStep: 'Old pitch',
  to: 'To A4',
  toStep: 'New pitch',
  cannot: 'Cannot be reckoned',

  same: 'The pitch stays as it is.',
  change: (fromA4Hz: number, toA4Hz: number, cents: string, up: boolean, percent: string, longer: boolean) =>
    `From ${fromA4Hz} to ${toA4Hz} Hz is ${cents} cents ${up ? 'up' : 'down'}: every length must be ${percent} % ${longer ? 'longer' : 'shorter'}, body and loops alike.`,
  caption: 'Tube to add; with a minus, to take off',
  columns: {
    part: 'part',
    now: 'now, tube',
    add: 'add, tube',
    addLeg: 'add, each leg',
    after: 'then, tube',
    done: 'done',
  },
  addLegHelp: 'On each of the two legs of its slide',
  body: 'body',
  openRoute: 'open route in all',
  bodyItself: 'body itself',
  ofIt: (part: string) => `of it ${part}`,
  sumRemark:
    'Lines with “of it” are already in the open route’s change. Do each of them, and nothing for the sum.',

  take: 'Take into the design',
  takeHelp: (design: string, a4Hz: number) =>
    `Body and every loop of ${design} become as long as A4 = ${a4Hz} Hz asks for.`,
  takeStep: 'Take new pitch',
  taken: 'Taken into the design. What stands here is what was done; undo takes it back.',
  standsTitle: 'Before anything is cut',
  stands: (note: string, toA4Hz: number, fromA4Hz: number) =>
    `The open note of this design is ${note} at A4 = ${toA4Hz} Hz, where the change leads, and not at ${fromA4Hz} Hz, where it begins. Was the change taken before, or the design entered as it is to play? What is reckoned here holds for an instrument that has the design’s lengths now.`,

  bodyAlone: 'If only the body is changed',
  bodyAloneTitle: 'Combination error if only the body is changed',
  bodyAloneCaption: (title: string) => `${title}, cents, sharp positive`,
  fingering: 'fingering',
  before: (a4Hz: number) => `as it is, A4 = ${a4Hz}`,
  after: (a4Hz: number) => `body alone at A4 = ${a4Hz}`,

  sheetLoop: (tube: string, leg: string) => `${tube} (leg ${leg})`,
  sheetLoops: 'loops',
  sheetMainSlide: 'Main slide',
  sheetBodyAlone: 'If only the body is changed, cents',
  sheetFingering: (cents: string, nowCents: string) => `${cents} (now ${nowCents})`,
  sheetFingerings: 'fingerings',
} as const

/** What the main slide can do for a change of pitch. */
export const reachWords = {
  title: 'What the main slide can do',
  out: 'Out now, movement',
  outHelp: 'Of the design’s main slide; changed here, it changes there. Movement, not tube.',
  travel: 'Travel, movement',
  travelHelp: 'Farthest movement out, from fully in.',
  unknown: 'Type how far it stands out and can travel to see what it can do.',
  mistyped: 'The main slide stands farther out than it can travel: one of the two is mistyped.',
  noNeed: 'The change needs no movement of the main slide.',
  need: (movement: string, inwards: boolean, tube: string) =>
    `The change needs ${movement} of movement ${inwards ? 'inwards' : 'outwards'}, ${tube} of tube.`,
  range: (lowestHz: string, highestHz: string) =>
    `Fully out it plays at A4 = ${lowestHz} Hz, fully in at ${highestHz} Hz.`,
  reaches: 'The main slide can do it, for the body; the loops stay as they are.',
  reachesNot: (tube: string, toAdd: boolean) =>
    `The main slide cannot do it: ${tube} of tube stay ${toAdd ? 'to add' : 'to take off'} on the body.`,
} as const
