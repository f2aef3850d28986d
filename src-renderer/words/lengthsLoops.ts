/** What the table of the loops says: what each may be, and what is proposed for it. */
export const loopTableWords = {
  caption: (design: string) => `Loops of ${design}, as they stand and as proposed`,
  columns: {
    loop: 'loop',
    mayBe: 'may be',
    now: 'now',
    proposed: 'proposed',
    change: 'change in tube',
    slideOut: 'slide out',
  },
  slideOutHelp: 'Half of the change in tube: a slide has two legs.',
  atBound: 'at its bound',
  mayBe: { free: 'free', held: 'held', tied: 'tied' },
  whatMayBe: (loop: string) => `What ${loop} may be`,
  bounds: 'bounds',
  boundsOf: (loop: string) => `Bounds of ${loop}`,

  openNote: 'open note',
  byMainSlide: 'by the main slide',
  whatOpenMayBe: 'What the open note may be',
  boundsOfOpen: 'Bounds of the open note',
  openStandsAt: 'Open note stands at',
  openStandsAtHelp: 'How far the open note is set off its pitch on purpose; sharp is positive.',
  cents: 'cents',
  changeOfTube: 'change of tube',

  within: (name: string) => `${name} within ±`,
  from: 'or from',
  to: 'to',

  tiedTo: 'tied to',
  timesFor: (loop: string) => `times for ${loop}`,
  timesItsLength: '× its length',
  refusedFactor: (found: string) => `found ${found}, expected a factor above 0.`,
  asNow: 'as now',
  equal: 'equal',
  exactBehindValve: 'exact behind its valve',
} as const
