import type { BenchList } from '#shared/workbook/bench.ts'

/** What is said around the jobs on the bench: their list, their head, and what every job asks. */
export const benchWords = {
  indexLabel: 'On the bench',
  lists: {
    slides: { title: 'Slide', add: 'Size a slide' },
    readings: { title: 'Readings', add: 'Read a tuner' },
    pitchChanges: { title: 'Change of pitch', add: 'Change the pitch' },
  } satisfies Record<BenchList, { readonly title: string; readonly add: string }>,
  onePiece: 'From one known length',
  wholeInstrument: 'the whole instrument',

  headOf: (kind: string, name: string) => `${kind}: ${name}`,
  name: 'Name',
  onSheet: 'On the sheet',
  onSheetPlaceholder: 'whose instrument, its number',
  noteStep: 'Note on the sheet',
  duplicate: 'Duplicate',
  delete: 'Delete',
  noLoops: (design: string) => `${design} has no loops to make a slide for.`,

  design: 'Design',
  gone: {
    design: 'Its design is no longer in this workbook; choose another for it.',
    loop: 'Its loop is no longer in this design; choose another for it.',
  },
  notInWorkbook: (designId: string) => `${designId} (not in this workbook)`,
  pitchesFor: (label: string) => `Pitches for ${label}`,
  hertz: (figure: string) => `${figure} Hz`,
} as const
