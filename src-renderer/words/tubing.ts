import type { AccountCause } from '#shared/tuning/account.ts'
import { listed } from './listed.ts'

/** What heads the parts of the tubing panel, and what it says about taking its loops along. */
export const tubingWords = {
  panel: 'Tubing',
  title: 'Tubing',
  ofDesign: (design: string) => `of ${design}`,
  loops: 'Loops, to scale',
  inRoute: ' · brass: in the route of the account',
  noLoops: 'No loops: the open route is all there is.',
  ofTube: (length: string) => `${length} of tube`,
  anotherSystem: 'Another system…',
  worthALook: 'Worth a look',
  menu: 'Loops in and out',
  shown: 'Loops ▾',
  copy: 'Copy loops for a spreadsheet',
  csv: 'Loops as CSV',
  svg: 'Drawing to scale as SVG',
  dxf: 'Drawing to scale as DXF',
} as const

/** What it says about the open instrument. */
export const instrumentWords = {
  fundamental: 'Fundamental',
  fundamentalHelp:
    'Nominal harmonic 1 of the open route. Fundamental and effective length say the same thing.',
  length: 'Effective length',
  lengthHelp: 'Speed of sound over twice the fundamental. Typing a length sets the fundamental.',
  boreLength: 'Bore length',
  boreLengthHelp: 'Physical centre line from the mouthpiece receiver to the bell rim. May be left empty.',
  ends: 'Mouthpiece and bell',
  endsHelp:
    'What mouthpiece and bell add: effective length less bore length. Typing it sets the bore length.',
  diameter: 'Bore at the valves',
  more: 'Compass, transposition, main slide, harmonics',
  transposition: 'Transposition',
  semitones: 'semitones',
  transpositionHelp: 'Sounding minus written.',
  firstHarmonic: 'First harmonic',
  lastHarmonic: 'Last harmonic',
  slideOut: 'Main slide out now',
  slideOutHelp: 'Movement, not tube. It is already in the length.',
  slideTravel: 'Main slide travel',
  offsets: 'Measured offsets of the harmonics',
} as const

/** What it says about one loop. */
export const loopWords = {
  lengthOf: (loop: string) => `Length of ${loop}`,
  bowHelp: 'Drag to change the length; Shift for fine steps',
  name: 'Name',
  slideOut: 'Slide out now',
  slideOutHelp: 'Movement of the slide, not tube: each millimetre out is two of tube, already in the length.',
  slideTravel: 'Slide travel',
  slideTravelHelp: 'Farthest movement out.',
  diameter: 'Bore',
  bendRadius: 'Bow radius',
  bendRadiusHelp: 'To the centre line; for the resonances of the bore. Empty for a straight loop.',
  makeExact: (length: string, unit: string) => `Make exact alone, ${length} ${unit}`,
  remove: 'Delete loop',
} as const

/** What it says about where the air runs through a loop. */
export const gateEditorWords = {
  runsWith: 'The air runs through it with',
  valve: (id: string) => `Valve ${id}`,
  wants: { down: 'down', either: 'either', up: 'up' },
} as const

/** What it says about the valves and the fingerings in use. */
export const valveWords = {
  title: 'Valves',
  add: 'Add a valve',
  noMore: (most: number) => `A design has at most ${most} valves.`,
  addLoop: 'Add a loop',
  nameOf: (number: number) => `Name of valve ${number}`,
  dropOf: (id: string) => `Drop of valve ${id}`,
  semitone: 'semitone',
  semitones: 'semitones',
  dropHelp: 'Nominal drop; negative for a valve that raises.',
  moreFor: (id: string) => `More for valve ${id}`,
  moveUp: 'Move up',
  moveDown: 'Move down',
  remove: 'Delete with its loops',
  fingerings: 'Fingerings',
  everyCombination: (count: string) => `every combination, ${count}`,
  oneAtATime: 'one valve at a time',
  ownList: 'a list of its own',
} as const

/** What the account says: why a figure is as far out as it is. */
export const accountWords = {
  title: 'Account',
  nothingPicked: 'Pick a figure or a point of a curve to see where its cents come from.',
  open: 'Open',
  played: (note: string, fingering: string, harmonic: number) =>
    `${note}, ${fingering === '0' ? 'open' : fingering} on ${harmonic}`,
  /** `1-3 is +30.3 cents, sharp`. */
  isOut: (what: string, cents: string, sharp: boolean) =>
    `${what} is ${cents} cents, ${sharp ? 'sharp' : 'flat'}`,
  isInTune: (what: string) => `${what} is in tune`,
  has: 'tube it has',
  needs: (semitones: string) => `tube it needs, ${semitones} semitones down`,
  difference: 'difference',
  shortBy: 'short by',
  longBy: 'long by',
  slideOutBy: 'one slide out by',
  slideInBy: 'one slide in by',
  noLoop: 'No loop in the route.',
  through: (loops: readonly string[]) => `Through ${listed(loops)}.`,
  together: 'cents together',
  causes: {
    harmonic: 'harmonic against the scale',
    offset: 'that harmonic, measured',
    combination: 'loops, slides pushed in',
    slidePull: 'valve slides where they stand',
    tuningSlide: 'main slide as tuned',
    temperature: 'playing temperature',
    reference: 'fundamental against A4 and temperament',
  } satisfies Record<AccountCause, string>,
} as const
