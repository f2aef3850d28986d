/** What the Lengths page says about aiming at the lengths or at the resonances of the bore. */
export const aimWords = {
  aimAt: 'Aim at',
  lengths: 'lengths',
  resonances: 'resonances',
  explained: (modes: string) =>
    `Errors are those of the bore’s modes ${modes}, each against the open route’s; a fingering’s figure is their weighted mean.`,
  modesFromTo: (first: number, last: number) => `${first} to ${last}`,
  chartTitle: 'Mean error of the modes, by fingering',
  heard: (fingering: string, note: string) => `${fingering}, ${note}`,
  notSounded: (found: string, expected: string) =>
    `The bore cannot be reckoned with these lengths: found ${found}, expected ${expected}.`,
  systemsByLengths: 'Found by lengths, also while the page aims at resonances.',
  working: 'The resonances are worked out …',
}
