/** How new jobs are called. */
export const newJobNames = {
  readings: 'as found',
  pitchChange: (a4Hz: number) => `to ${a4Hz}`,
  slide: (loop: string) => `${loop} slide`,
} as const
