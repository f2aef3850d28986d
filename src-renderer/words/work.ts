/** What is said when the part that calculates in the background fails. */
export const workWords = {
  noWorker: 'the part that calculates could not be started, or its answer not be read',
} as const
