/** Everything that the browser form says by itself. */
export const bridgeWords = {
  program: 'Ferrule',
  workbookFiles: 'Ferrule workbook',
  tooLarge: (name: string, most: string) => `“${name}” is larger than ${most}, more than any workbook needs.`,
  notText: (name: string) => `“${name}” is not text in UTF-8, so it is not a workbook.`,
  notReadable: (name: string) => `“${name}” could not be read; it may have been moved or deleted.`,
  notAllowed: (name: string) => `The browser was not allowed to use “${name}”.`,
  notWritten: (name: string) => `“${name}” could not be written; the file there is unchanged.`,
  diskFull: (name: string) =>
    `The disk is full, so “${name}” could not be written; the file there is unchanged.`,
  folderGone: (name: string) => `“${name}” or its folder is no longer there, so it could not be written.`,
  readOnly: (name: string) =>
    `“${name}” is read-only or held fast by another program, so it could not be written.`,
  notRecent: 'This file is no longer in the list of recent files.',
  noDraftFile: 'There is no file that can be read again.',
  changed: (name: string) =>
    `“${name}” was changed by another program since it was opened here. Overwrite it with your work?`,
} as const
