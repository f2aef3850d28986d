import type { Temperament } from '#shared/pitch/temperament.ts'

/** What the strip on top says of the workbook: its name and state, the file commands, undo and redo. */
export const stripWords = {
  file: 'File',
  fileShown: 'File ▾',
  newWorkbook: 'New workbook…',
  open: 'Open…',
  startPage: 'Start page',
  save: 'Save',
  saveAs: 'Save as…',
  find: 'Find…',
  settings: 'Settings…',
  help: 'Help',
  workbookName: 'Workbook name',
  nameHelp: (file: string | null, dirty: boolean) =>
    `${file ?? 'No file yet'}${dirty ? ', not saved' : ''}. Click to rename.`,
  nameless: 'Without a name',
  notSaved: 'not saved',
  withKeys: (command: string, keys: string | undefined) =>
    keys === undefined ? command : `${command} (${keys})`,
  step: (name: string) => ` “${name}”`,
  undo: (step: string | null) => (step === null ? 'Undo' : `Undo “${step}”`),
  redo: (step: string | null) => (step === null ? 'Redo' : `Redo “${step}”`),
} as const

/** What it says of that which everything is measured against. */
export const targetWords = {
  targets: 'Targets',
  a4: 'A4',
  a4Help: 'Frequency of A4. Standards in use are at hand in the list.',
  standards: 'Pitch standards',
  standard: (hz: string) => `${hz} Hz`,
  air: 'air',
  airOf: (temperature: string, humidity: string, played: string | null) =>
    `${temperature} °C, ${humidity} %${played === null ? '' : `, played at ${played} °C`}`,
  temperament: 'temperament',
  temperaments: {
    equal: 'equal',
    just: 'just',
    pythagorean: 'Pythagorean',
    meantone: 'mean-tone',
    custom: 'typed in',
  } satisfies Record<Temperament['kind'], string>,
  edit: 'edit…',
  on: 'on',
  mainSlide: 'main slide',
  asDrawn: 'as drawn',
  tunedOn: (harmonic: number) => `tuned on open ${harmonic}`,
  movementHelp: 'Movement of the main slide, not tube',
  slideIn: (mm: string) => `, in ${mm} mm`,
  slideOut: (mm: string) => `, out ${mm} mm`,
} as const
