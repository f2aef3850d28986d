/** What the page of the fingering chart says. */
export const fingeringsWords = {
  title: 'Fingering chart',
  chartOf: (design: string) => `Fingering chart of ${design}`,
  spelling: 'Spelling',
  candidates: 'Candidates',
  few: 'first six',
  every: (count: number) => `all, up to ${count}`,
  marks: { usual: 'usual', nearest: 'nearest', chosen: 'chosen' },
  /** The key to the marks and to how a fingering is written, in the parts between them. */
  key: {
    usual: 'as the trade teaches it',
    nearest: 'in tune',
    chosen: 'by you. A fingering is written',
    harmonic: ': valves, then the harmonic.',
    account: 'Pick one for its account; double-click to choose it.',
  },
  nothing: 'No fingering comes within 60 cents of a note. Check fundamental and loops.',
  sounds: 'sounds',
  written: 'written',
  target: 'target, Hz',
  fingering: 'fingering, harmonic and cents',
  none: 'none within 60 cents',
  more: (count: number) => `and ${count} more`,
  moreFor: (count: number, note: string) => `Show ${count} more for ${note}`,
  /** `1-3 on 3, +17.5 cents, usual`. */
  spoken: (played: string, cents: string, marks: readonly string[]) =>
    [played, `${cents} cents`, ...marks].join(', '),
  candidateHelp: (harmonic: number, hz: string, chosen: boolean) =>
    `Harmonic ${harmonic}, ${hz} Hz. Double-click or press C to ${chosen ? 'go back to the usual' : 'choose'}, L to listen.`,
} as const
