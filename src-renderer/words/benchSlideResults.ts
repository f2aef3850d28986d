/** What a slide's parts come to, on its page and on its sheet. */
export const slideResultWords = {
  ofTube: (length: string) => `${length} of tube`,
  none: '—',
  bow: 'bow, curve alone',
  bows: 'all bows, curves alone',
  straightEnds: 'straight ends, each',
  bowWithEnds: 'bow with straight ends',
  firstBowWithEnds: 'first bow with straight ends',
  innerLegs: 'inner legs, each',
  engaged: 'engaged at full travel',
  perMm: 'each mm of movement out',
  perTenthInch: 'each 0.1 in of movement out',
  perMmCents: (cents: string) => `${cents} cents`,
  perMmHelp:
    'Of slide movement, for the fingering of this loop alone; a millimetre out is two of tube a pair of legs.',
  range: 'range of the tolerance',
  rangeCents: (low: string, high: string) => `${low} to ${high} cents`,
  rangeHelp: 'The note with the slide at pitch, the loop off by its whole tolerance.',
  mass: 'mass of what moves',
  massOf: (grams: string) => `${grams} g`,
  endsPlain: 'straight ends, bends plain',
  endsCorrected: 'straight ends, bends corrected',
  endsHelp: (shorter: string) =>
    `A bend counts for less than its centre line; here the bows are ${shorter} short of it.`,

  cutList: 'Cut list, along the centre line',
  columns: { piece: 'piece', number: 'number', finished: 'finished', firstCut: 'first cut' },
  toOrder: 'tube to order, saw cuts not counted',
} as const

/** What stands on the sheet of a slide only. */
export const slideSheetWords = {
  designOf: (design: string, loop: string, gate: string) => `${design}, ${loop} loop (${gate})`,
  notReady: 'Not ready to cut',
  ofKind: (length: string, kind: string) => `${length} of ${kind}`,
  loopWanted: 'loop wanted',
  loopWantedOf: (length: string, tolerance: string) => `${length} ± ${tolerance} of tube`,
  drawingLabel: (slide: string) => `Side view of ${slide}`,
  drawn: (scale: string) => `Side view at pitch, drawn ${scale}`,
  enlarged: (times: string) => `${times} : 1`,
  reduced: (times: string) => `1 : ${times}`,
  follows: 'Follows',
} as const
