/** What is said about opening and saving, beside what a file's own text or the system says. */
export const filesWords = {
  program: 'Ferrule',
  notDone: (step: string) => `“${step}” could not be done`,
  notRead: 'The file could not be read',
  notOpened: (name: string) => `${name} was not opened`,
  notFerrule: (message: string) => `It is not a workbook of this program. ${message}`,
  notSaved: 'The workbook was not saved',
} as const
