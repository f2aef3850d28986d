import { listed } from './listed.ts'

/** What the picture pages say. */
export const pictureWords = {
  page: 'Pictures',
  index: 'Pictures',
  design: 'Design',
  wide: 'Picture, wider than its place',
  fileOf: (picture: string, design: string) => `${picture}, ${design}`,
  figures: 'The same figures in a table',
  figuresHint: 'every number of the picture',
}

/** The names of the pictures in their index, and the one sentence that says what to look at. */
export const partWords = {
  harmonics: {
    name: 'Harmonics and scale',
    look: 'Even in hertz, the harmonics crowd together in pitch, where the scale is even: look at how far 7, 11 and 13 stand from any note.',
  },
  ruler: {
    name: 'The tube ruler',
    look: 'Each row lays the loops of a fingering end to end, and the brass mark is the tube it needs: look at how the hatched gap grows with every valve.',
  },
  company: {
    name: 'A loop in company',
    look: 'A loop that fits alone is too short when another is down already: follow the steps, and look at the hatched piece that is missing.',
  },
  air: {
    name: 'How the air runs',
    look: 'Press valves, and look where the air goes: every loop it runs through adds its tube, and no other does.',
  },
  gallery: {
    name: 'Valve systems',
    look: 'The same open instrument under each system: look at how many times the air goes through the valves, and at the error that is left.',
  },
} as const

export const harmonicWords = {
  title: (design: string) => `Harmonic series of ${design} against the tempered scale on its fundamental`,
  describe: (last: number, worst: string) =>
    `Harmonics 1 to ${last} on a frequency axis above and a pitch axis below, joined by lines. Farthest from the scale: ${worst}.`,
  worstOf: (harmonic: number, cents: string) => `harmonic ${harmonic}, ${cents} cents`,
  harmonic: 'harmonic',
  note: 'note',
  cents: 'cents',
  hertz: 'Hz',
  frequencyAxis: 'frequency: harmonics stand evenly, notes draw apart',
  pitchAxis: 'pitch: notes stand evenly, harmonics draw together',
  scaleTick: 'a note of the scale',
  harmonicTick: 'a harmonic',
  farTick: (cents: string) => `more than ${cents} cents from any note`,
  tableOf: (design: string) => `Harmonics of the open route of ${design}`,
  columns: {
    harmonic: 'harmonic',
    hz: 'Hz',
    above: 'above the fundamental, cents',
    scale: 'from the tempered scale, cents',
    note: 'note',
    target: 'from the workbook’s note, cents',
  },
  foot: 'The scale of the picture starts on this fundamental. The last column counts the pitch standard, the temperament and the main slide in.',
}

export const rulerWords = {
  title: (design: string) => `Tube ruler of ${design}: the tube each fingering has against the tube it needs`,
  describe: (rows: number, worst: string) =>
    `${rows} fingerings to scale, the body broken. Largest gap: ${worst}.`,
  worstOf: (fingering: string, missing: string, cents: string) => `${fingering}, ${missing}, ${cents} cents`,
  none: 'none',
  lookFits:
    'Each row lays the loops of a fingering end to end, and the brass mark is the tube it needs: here each tube ends at its mark.',
  beyondBody: (unit: string) => `tube beyond the body, ${unit}`,
  body: (length: string) => `body ${length}, broken: it is in every row`,
  needed: 'tube needed',
  difference: 'tube',
  missing: 'tube short',
  tooMuch: 'tube long',
  short: (length: string) => `short ${length}`,
  long: (length: string) => `long ${length}`,
  fits: 'fits',
  fingering: 'fingering',
  cents: 'cents',
  which: 'Fingerings',
  usual: 'usual',
  all: 'all',
  onlySome: (shown: number, of: number) => `The first ${shown} of ${of} fingerings are drawn.`,
  tableOf: (design: string) => `Tube of each fingering of ${design}`,
  columns: {
    fingering: 'fingering',
    semitones: 'semitones down, − up',
    loops: 'loops',
    has: 'tube it has',
    needs: 'tube it needs',
    missing: 'short by, − long',
    cents: 'cents',
  },
}

export const companyWords = {
  lookAt: (design: string) => `Look at ${design}`,
  choose: 'Fingering',
  title: (fingering: string, design: string) => `Why ${fingering} is out on ${design}, step by step`,
  titleInTune: (fingering: string, design: string) => `How ${fingering} comes out on ${design}, step by step`,
  open: (length: string) => `Open, the instrument is ${length} long.`,
  alone: (valve: string, has: string, semitones: string, needs: string) =>
    `${valve} alone adds ${has}; a drop of ${semitones} needs ${needs}`,
  aloneRises: (valve: string, takes: string, semitones: string, needs: string) =>
    `${valve} alone takes out ${takes}; a rise of ${semitones} takes out ${needs}`,
  itFits: ': it fits.',
  itIsOut: (missing: string, cents: string, isSharp: boolean) =>
    `: ${missing}, and so ${cents} cents, ${isSharp ? 'sharp' : 'flat'}.`,
  companyDown: (valves: string, longer: string, length: string, percent: string) =>
    `${valves} down: the instrument is ${longer} longer, ${length}. Every semitone now needs ${percent} % more.`,
  companyUp: (valves: string, shorter: string, length: string, percent: string) =>
    `${valves} down: the instrument is ${shorter} shorter, ${length}. Every semitone now needs ${percent} % less.`,
  companySame: (valves: string, length: string) => `${valves} down: the instrument is still ${length} long.`,
  together: (fingering: string, semitones: string, needs: string, has: string) =>
    `${fingering}: the same drop of ${semitones} now needs ${needs}, and the loop still has ${has}`,
  togetherRises: (fingering: string, semitones: string, needs: string, has: string) =>
    `${fingering}: the same rise of ${semitones} now takes out ${needs}, and the loop still takes out ${has}`,
  togetherFrom: (fingering: string, needs: string, has: string) =>
    `${fingering}: from there the note needs ${needs} more, and the loop still has ${has}`,
  togetherFromRises: (fingering: string, needs: string, has: string) =>
    `${fingering}: from there the note needs ${needs} less, and the loop still takes out ${has}`,
  companyOut: (missing: string, cents: string) => ` By itself it is ${missing}, ${cents} cents.`,
  ownLoops: (fingering: string, loops: string) =>
    `${fingering} opens ${loops} instead, made for this fingering alone`,
  further: (loops: string, condition: string, length: string) =>
    `Compensating: ${loops}, open only with ${condition} down, gives ${length}`,
  left: (missing: string, cents: string) => `; left: ${missing}, ${cents} cents.`,
  nothingLeft: ': nothing is missing.',
  wouldAdd: (condition: string, length: string) =>
    `A compensating system would add a further loop here, open only with ${condition} down: ${length}.`,
  and: listed,
  semitones: (count: string) => (count === '1' ? '1 semitone' : `${count} semitones`),
  short: (length: string) => `${length} short`,
  long: (length: string) => `${length} too long`,
  none: (design: string) =>
    `${design} never adds one loop to another: its valves are used one at a time, so that no loop is ever in company.`,
  tableOf: (fingering: string) => `The steps to ${fingering}`,
  columns: {
    step: 'valves down',
    has: 'tube it has',
    needs: 'tube it needs',
    missing: 'missing',
    cents: 'cents',
  },
  before: (fingering: string) => `${fingering}, without further loops`,
  openRow: 'open',
  growth: {
    heading: (valve: string) => `The loop of ${valve} after every semitone`,
    look: 'The more the instrument is lowered already, the more tube the same step needs: look at the cents above the hatched part.',
    title: (valve: string, design: string) =>
      `Tube that the drop of valve ${valve} needs after each semitone, ${design}`,
    describe: (most: string, cents: string, semitones: number) =>
      `The gap grows from bar to bar: after ${semitones} semitones ${most}, ${cents} cents.`,
    has: (length: string) => `the loop has ${length}`,
    above: (unit: string) => `above each bar: cents, and ${unit} missing`,
    axis: 'semitones down already',
    needs: (unit: string) => `tube needed, ${unit}`,
    missing: 'missing',
    cents: 'cents',
    tableOf: (valve: string) => `The loop of valve ${valve} in company`,
    columns: {
      lowered: 'semitones down already',
      needs: 'tube needed',
      missing: 'missing',
      cents: 'cents',
    },
  },
}

export const airWords = {
  valves: 'Valves',
  release: 'Open',
  releaseKey: 'key 0',
  drop: (semitones: string, up: boolean) => `${semitones} ${up ? 'up' : 'down'}`,
  key: (key: string) => `key ${key}`,
  title: (fingering: string, design: string) => `How the air runs on ${design}: ${fingering}`,
  open: 'open',
  describe: (loops: string) => `From the mouthpiece on the left to the bell on the right, ${loops}.`,
  through: (loops: string) => `through ${loops}`,
  straight: 'through no loop',
  again: (times: number) =>
    times === 2
      ? 'The air goes through the valves a second time.'
      : `The air goes through the valves ${times} times.`,
  straightOn: 'The air goes straight on through every valve.',
  goesThrough: (loops: string) => `The air goes through ${loops}.`,
  notInUse: 'This fingering is not among those in use on this design.',
  scaleBar: (length: string) => `${length} of tube, both legs of a loop together; the body broken`,
  facts: 'The route',
  has: 'tube it has',
  needs: (semitones: string) => `tube it needs, ${semitones}`,
  short: 'short by',
  long: 'long by',
  difference: 'difference',
  error: 'error',
  cents: 'cents',
  sharp: 'sharp',
  flat: 'flat',
  inTune: 'in tune',
  notes: (fingering: string) => `Notes of ${fingering}`,
  harmonic: 'harmonic',
  sounds: 'sounds',
  written: 'written',
  hertz: 'Hz',
  noValves: 'This design has no valves: the open route is all there is.',
}

export const galleryWords = {
  title: (system: string, fingering: string) => `Route of ${fingering} in the system ${system}`,
  describe: (loops: number) => `${loops} loops, to scale.`,
  open: 'open',
  rms: 'rms',
  largest: 'largest',
  at: (fingering: string) => `at ${fingering}`,
  inLoops: (loops: number) => (loops === 1 ? 'in 1 loop' : `in ${loops} loops`),
  tube: 'tube switched',
  passes: 'through the valves',
  times: (passes: number) => (passes === 1 ? 'once' : passes === 2 ? 'up to twice' : `up to ${passes} times`),
  add: 'Add to the line-up',
  addNamed: (system: string) => `Add ${system} to the line-up`,
  added: (system: string) => `${system} is in the line-up. Undo takes it out.`,
  builtOn: (length: string) =>
    `Built on the open length of the design shown, ${length}. Cents over the usual fingerings, one a step: more valves reach further down, where there is more to be out by.`,
}
