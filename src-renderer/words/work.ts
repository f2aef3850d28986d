/** What is said when the part that calculates in the background fails. */
export const workWords = {
  noWorker: 'the part that calculates could not be started',
} as const
