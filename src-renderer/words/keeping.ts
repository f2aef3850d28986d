/** What is said about work kept aside, and about a file that another program changed. */
export const keepingWords = {
  heading: 'Unsaved work',
  aWorkbook: 'A workbook',
  left: (when: string) => `was not saved when the program last stopped, ${when}.`,
  leftWithFile: (file: string, when: string) =>
    `(${file}) was not saved when the program last stopped, ${when}.`,
  restore: 'Restore it',
  compare: (file: string) => `Compare with ${file}…`,
  forget: 'Forget it',
  notReadable: 'The kept work could not be read',
  notAnswered: 'The program could not write the file, and gave no reason.',
  restoredStep: 'Restoring the kept work',
  tookFileStep: 'Taking the changed file',
  notice: (count: number) =>
    count === 1
      ? 'Work that was not saved last time is kept aside.'
      : `Work that was not saved before is kept aside: ${count} workbooks.`,
  none: 'Nothing is kept aside.',
  show: 'Show it…',
  later: 'Later',
  close: 'Close',
  cannotKeep:
    'Unsaved work cannot be kept aside now: there is no room, or it is not allowed. Save it to a file.',
  save: 'Save',
} as const

/** What is said where two versions stand side by side. */
export const compareWords = {
  leftTitle: (name: string, file: string) => `${name}: kept work and ${file}`,
  leftLead: (when: string) => `The kept work is of ${when}. This is what differs.`,
  changedTitle: (file: string) => `${file} was changed by another program`,
  changedLead: 'This is what differs. Nothing has been taken over yet.',
  same: 'Both hold the same.',
  place: 'Where',
  file: 'In the file',
  kept: 'In the kept work',
  open: 'In the open work',
  count: (count: number, shown: number) =>
    count > shown ? `${count} differences, of which the first ${shown} are listed` : `${count} differences`,
  oneDifference: '1 difference',
  nothing: '—',
  restoreKept: 'Restore the kept work',
  openFile: 'Open the file as it is',
  forgetKept: 'Forget the kept work',
  keepMine: 'Keep the open work',
  takeFile: 'Take the file’s version',
  saveAs: 'Save as…',
  close: 'Close',
  fileNotRead: (message: string) => `The file cannot be compared: ${message}`,
  changedUnreadable: (message: string) =>
    `It cannot be opened any more: ${message} Your work is open here; save it under another name.`,
  goneTitle: (file: string) => `${file} is gone`,
  gone: 'Another program moved, renamed or deleted it. Your work is open here; saving writes the file anew.',
} as const
