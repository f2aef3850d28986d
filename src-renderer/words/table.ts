/** What is said about taking a table along. */
export const tableWords = {
  table: 'Table',
  cuts: 'Cut list',
  fit: 'Lengths found',
  combinations: 'All combinations of the design',
  group: (name: string) => `Take the table along: ${name}`,
  copy: 'Copy',
  csv: 'CSV',
  copyName: (name: string) => `Copy table: ${name}`,
  csvName: (name: string) => `Save table as CSV: ${name}`,
  copied: 'copied',
  notCopied: 'The browser did not let the table onto the clipboard. Save it as CSV.',
} as const
