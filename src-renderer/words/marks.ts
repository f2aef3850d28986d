/** What stands beside a small mark, by the glossary word or formula that it explains. */
export const markNames = {
  a4: 'A4',
  temperament: 'temperament',
  air: 'air',
  mainSlide: 'main slide',
  rms: 'rms',
  fundamental: 'fundamental',
  effectiveLength: 'effective length',
  bore: 'bore',
  loop: 'loop',
  gate: 'gate',
  nominalDrop: 'nominal drop',
  account: 'account',
  combination: 'combination error',
  slide: 'slide movement',
  cents: 'cents',
  band: 'band',
  usual: 'usual fingering',
  harmonic: 'harmonic',
  fit: 'finding lengths',
  tolerance: 'tolerance',
  tie: 'tie',
  compensating: 'compensating loop',
  leg: 'slide and its legs',
  bow: 'bow',
  readings: 'from a tuner to a length',
  pitchChange: 'new pitch from old',
  onePiece: 'open length from one loop',
  beat: 'beat',
  bellMouth: 'bell mouth',
} as const

export type MarkId = keyof typeof markNames

/** What the mark does, for those who cannot see that it is a question mark. */
export const markLabel = (id: MarkId): string => `Explain “${markNames[id]}”`
