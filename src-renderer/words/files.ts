/** What is said about opening and saving, beside what a file's own text or the system says. */
export const filesWords = {
  program: 'Ferrule',
  notRead: 'The file could not be read',
  notOpened: (name: string) => `${name} was not opened`,
  notSaved: 'The workbook was not saved',
} as const
