/** What the page says that compares the designs. */
export const comparisonWords = {
  title: 'Comparison',
  leastMarked: 'the least is underlined where designs can be compared',
  ofDesigns: 'Comparison of the designs',
  figure: 'figure',
  hidden: 'hidden',
  loopsInRoutes: 'Loops in each route',
  at: (cents: string, place: string) => `${cents} at ${place}`,
} as const

/** Its groups of rows. */
export const comparisonGroups = {
  byFingering: 'By fingering, the usual one for each step',
  byNote: 'By note, as chosen, usual or nearest',
  tube: 'Tube and loops',
} as const

interface RowWords {
  readonly heading: string
  readonly help: string
}

/** Its rows, each with what the pointer brings up. */
export const comparisonRows = {
  rms: { heading: 'rms', help: 'Root mean square of the combination errors' },
  largest: { heading: 'largest', help: 'The error farthest from zero, and its fingering' },
  steps: { heading: 'steps', help: 'Different nominal drops that the fingerings give' },
  noteRms: { heading: 'rms', help: 'Root mean square of the note errors' },
  noteLargest: { heading: 'largest', help: 'The error farthest from zero, and its sounding note' },
  notes: { heading: 'notes', help: 'Notes of the compass that some fingering reaches' },
  body: { heading: 'body', help: 'Tube that no valve switches' },
  loopsTogether: { heading: 'loops together', help: 'Tube of all loops' },
  allTube: { heading: 'all tube', help: 'Body and loops' },
  loops: { heading: 'loops', help: 'Number of loops' },
  mostLoops: {
    heading: 'most loops in a route',
    help: 'Loops the air runs through at once, at the most',
  },
} as const satisfies Record<string, RowWords>

/** Its rows over the notes that all designs play, where one plays what another does not. */
export const sharedRowWords = {
  rms: (count: number): RowWords => ({
    heading: `rms over the ${count} shared`,
    help: 'Over the notes that every design plays: only these compare like with like',
  }),
  largest: (count: number): RowWords => ({
    heading: `largest of the ${count} shared`,
    help: 'Of the notes that every design plays: only these compare like with like',
  }),
} as const
