/** Said behind a length, `in` would be read as inches. */
const ways = { in: 'inwards', out: 'outwards' } as const

/** What the page and the sheet of a tuner's readings say. */
export const readingsWords = {
  emptyTitle: 'From a tuner to lengths',
  emptyText:
    'Type what the tuner showed for each fingering, or paste it from a spreadsheet; the lengths of the loops follow, and how sure they are.',
  cannot: 'Cannot be fitted',
  noReadings:
    'No readings yet. Read the open instrument and each valve alone on one harmonic, then the combinations.',
  beforeCutting: 'Before anything is cut',
  toKnow: 'To know',

  designStep: 'Design of readings',
  tunerA4: 'Tuner’s A4',
  tunerA4Help: 'What the tuner was set to.',
  tunerA4Step: 'Tuner’s A4',
  error: 'Error of one reading ±',
  errorHelp:
    'Standard error of the tuner and of whoever plays. The readings’ own scatter counts when it is more.',
  errorStep: 'Error of one reading',
  openHeld: 'Open length is as in the design',
  openHeldStep: 'Open length known',
  offsetsHeld: 'Harmonic offsets are as in the design',
  offsetsHeldStep: 'Harmonic offsets known',
  exactWanted: 'Want each loop exact for its own fingering',
  exactWantedHelp:
    'Otherwise the lengths wanted are the design’s, in proportion to the open length: a loop that is long on purpose stays so.',
  exactWantedStep: 'Lengths wanted',

  answers: 'What the readings say',
  openUnsettled: 'The readings do not settle the open length.',
  open: (length: string, error: string) => `The open length is ${length} of tube, ± ${error}.`,
  columns: {
    loop: 'loop',
    off: 'off by',
    slide: 'move slide',
    newLoop: 'or cut new',
    firstCut: 'at first',
  },
  answerUnits: (unit: string) => `${unit} of tube; a slide’s is movement`,
  none: '—',
  is: (length: string) => `is ${length}`,
  offBy: (length: string, isLong: boolean) => `${length} ${isLong ? 'long' : 'short'}`,
  doubt: (error: string, maybeNothing: boolean) =>
    maybeNothing ? `± ${error}, may be nothing` : `± ${error}`,
  nothing: 'nothing to change',
  takeMore: 'Where a change may be nothing, take more readings before you cut.',
  slideMove: (movement: string, way: 'in' | 'out') => `${movement} ${ways[way]}`,
  slideHas: (loop: string, movement: string, way: 'in' | 'out') =>
    `The slide of ${loop} can move ${movement} ${ways[way]} and no more`,
  slideAtEnd: (loop: string, way: 'in' | 'out') => `The slide of ${loop} is all the way ${way} already`,
  andAdd: (start: string, tube: string) => `${start}: add the ${tube} of tube left over.`,
  andTakeOff: (start: string, tube: string, sure: string | null) =>
    sure === null
      ? `${start}: ${tube} of tube are left over to take off, too little to be sure of.`
      : `${start}: take off the ${tube} of tube left over, at first ${sure}.`,
  exactWouldBe: (loop: string, length: string) =>
    `Exact for its own fingering, ${loop} would be ${length} of tube.`,
  cutsHeld: 'No length to cut and no movement is given before what is said above is cleared up.',
  offset: (harmonic: string, cents: string, error: string, reference: number | null) =>
    reference === null
      ? `Harmonic ${harmonic} lies ${cents} ± ${error} cents from where the open length has it.`
      : `Harmonic ${harmonic} lies ${cents} ± ${error} cents from harmonic ${reference}.`,

  take: 'Take into the design',
  takeInto: (design: string) => `Take into ${design}`,
  found: 'Lengths as found',
  foundStep: 'Take lengths found',
  wanted: 'Lengths as wanted',
  wantedStep: 'Take lengths wanted',
  takeHint:
    'Open length and harmonic offsets go with them. One undo takes it back. The readings stay. Lengths as found, once taken, are the design’s, and so the ones wanted.',
  tunedHint:
    'The lengths wanted go with the open length as found. Where the main slide then brings the open note to pitch, they are a little long or short by that.',

  pictureName: (name: string) => `Readings against the fit, ${name}`,
  pictureLabel: (count: number) =>
    `Readings against the fit, cents. ${count} readings; the table holds the figures.`,
  pictureAxis: 'cents, sharp above the line',
  pictureMark: (fingering: string, harmonic: number, cents: string, fit: string) =>
    `${fingering} on harmonic ${harmonic}: ${cents}, fit ${fit}`,
  onHarmonic: (harmonic: number) => `on ${harmonic}`,
  key: { read: 'read', fit: 'fit', leftOut: 'left out', farOff: 'far off' },

  sheetReading: (number: number, fingering: string, harmonic: number) =>
    `${number}. ${fingering} on ${harmonic}`,
  sheetLeft: (cents: string, left: string | null) => `${cents}, left ${left ?? 'out'}`,
  sheetCaption: 'Circles are readings, lines the fit, triangles readings that are far off.',
  sheetTable: (a4Hz: number) => `Read with the tuner at A4 = ${a4Hz} Hz, and what the fit leaves, cents`,
  sheetReadings: 'readings',
} as const
