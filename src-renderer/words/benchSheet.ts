/** What every sheet of the bench says. */
export const sheetWords = {
  headOf: (kind: string, name: string) => `${kind}: ${name}`,
  design: 'design',
  workbook: 'workbook',
  date: 'date',
  note: 'note',
  signedBy: 'by',
  signedOn: 'on',
  cautions: 'Before and while you work',
  leftOut: (count: number, what: string) => `and ${count} more ${what} in the workbook`,
} as const
