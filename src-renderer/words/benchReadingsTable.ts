/** What the table of a tuner's readings says, and what is said to what is typed or pasted into it. */
export const readingsTableWords = {
  notesAre: 'Notes are',
  notes: { sounding: 'sounding', written: 'written' },
  caption: 'Readings of the tuner, cents, sharp positive',
  columns: {
    fingering: 'fingering',
    harmonic: 'harmonic',
    note: 'note',
    cents: 'cents',
    leftOver: 'left over',
    inFit: 'in the fit',
    delete: 'Delete',
  },
  leftOverHelp: 'Reading less fit',
  reading: (number: number) => `reading ${number}`,
  fingeringOf: (reading: string) => `Fingering of ${reading}`,
  harmonicOf: (reading: string) => `Harmonic of ${reading}`,
  centsOf: (reading: string) => `Cents of ${reading}`,
  inFit: (reading: string) => `${reading} is in the fit`,
  delete: (reading: string) => `Delete ${reading}`,

  newCells: ['Fingering', 'Harmonic or note', 'Cents'],
  newCell: (cell: string) => `${cell} of a new reading`,
  newExamples: ['1-3', '4', '−12'],
  add: 'Add reading',

  paste: 'Paste from a spreadsheet',
  pasteHint: 'Columns of fingering, harmonic or note, and cents; with headings in any order',
  addToTable: 'Add to the table',
  replaceTable: 'Replace the table',

  cells: ['Fingering', 'Harmonic', 'Cents'],
  row: 'Row',
  nothing: 'nothing',
  quoted: (text: string) => `“${text}”`,
  refusedCell: (cell: string, found: string, expected: string) =>
    `${cell}: found ${found}, expected ${expected}.`,
  refusedRow: (row: number, message: string) => `Row ${row}: ${message}`,
  harmonicField: 'Harmonic',
  refusedValves: (text: string, expected: string) => `found “${text}”, expected ${expected}.`,
  refusedCents: (text: string) => `found “${text}”, expected cents, such as −12 or 4,5.`,
} as const
