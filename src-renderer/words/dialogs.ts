import type { System } from '#shared/valves/systems/systems.ts'

/** What every dialog says whose values are taken as they are typed. */
export const doneWord = 'Done'

/** What the dialog of the air says. */
export const airDialogWords = {
  title: 'Air',
  fields: {
    temperature: 'Temperature',
    humidity: 'Relative humidity',
    carbonDioxide: 'Carbon dioxide',
    pressure: 'Pressure',
    playedAt: 'Played at',
  },
  temperatureText:
    'The mean of the air column the lengths were made for, not of the room and not of the breath. Another one is another speed of sound: the open route stays at its pitch, with another length.',
  breathText:
    'Humid breath sharpens, its carbon dioxide flattens, and the two nearly cancel. Breath holds about 40 000 ppm.',
  playedHelp: 'Leave empty when it is played in the air it was designed for.',
  playedText:
    'Lengths belong to the air above. A playing temperature of its own shows a cold hall or a warm one, about 3 cents a degree; leave it empty otherwise.',
  speed: 'Speed of sound',
  played: ', played',
  cents: 'cents',
} as const

/** What the dialogs of a new workbook, a further design and another system say. */
export const newDesignWords = {
  newWorkbook: 'New workbook',
  addDesign: 'Add a design',
  families: {
    plain: 'Plain',
    compensating: 'Compensating',
    double: 'Double',
    independent: 'Independent',
    historic: 'Historic and special',
  } satisfies Record<System['family'], string>,
  workbookOf: (note: string) => `Instrument in ${note}`,
  key: 'Key',
  octave: 'octave of the fundamental',
  fundamental: 'Fundamental',
  length: 'Effective length',
  sameThing: (temperatureC: number) =>
    `Key, fundamental and length say the same thing: change the one you know. Air ${temperatureC} °C.`,
  transposition: 'Transposition',
  semitones: 'semitones',
  wholeExpected: (found: string) => `found ${found}, expected a whole number of semitones.`,
  transpositionHelp: 'Sounding minus written: −9 for an alto in E♭, 0 for an instrument that reads at pitch.',
  name: 'Name',
  createWorkbook: 'Create workbook',
  createDesign: 'Add design',
  cancel: 'Cancel',
  changeTitle: (design: string) => `Another system for ${design}`,
  changeText:
    'Valves, loops and fingerings are replaced, the loops filled in for this instrument. One undo takes it back.',
  change: (system: string) => `Make it ${system}`,
} as const

/** What is said when something went wrong, and asked before unsaved work is replaced. */
export const questionWords = {
  stillOpen: 'What was open is still open, unchanged.',
  close: 'Close',
  saveTitle: (workbook: string) => `Save ${workbook === '' ? 'the workbook' : workbook}?`,
  unsaved: 'It has changes that no file holds.',
  save: 'Save',
  dontSave: 'Don’t save',
  cancel: 'Cancel',
} as const

/** What the dialog of the settings says. */
export const settingsWords = {
  title: 'Settings',
  unit: 'Lengths in',
  units: { mm: 'millimetres', in: 'inches' },
  spelling: 'Black keys as',
  spellings: { flats: 'flats', sharps: 'sharps' },
  theme: 'Theme',
  themes: { system: 'as the system', light: 'light', dark: 'dark' },
} as const

/** What the dialog of the twelve typed notes says. */
export const temperamentWords = {
  title: 'Temperament, typed in',
  text: 'Each note’s distance from equal temperament, sharp positive.',
} as const
