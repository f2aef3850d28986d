/** What is said when the window itself fails. */
export const failureWords = {
  title: 'The window could not be drawn',
  text: 'This is a fault of the program. Your workbook is still here: save it, then try again.',
  reason: (message: string) => `The reason, for whoever mends it: ${message}`,
  saved: (fileName: string | null) =>
    fileName === null ? 'There is nothing that is not saved.' : `Everything is saved in ${fileName}.`,
  saveAs: 'Save as…',
  again: 'Try again',
  undoAndAgain: 'Undo the last step and try again',
} as const
