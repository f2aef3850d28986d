/** What is said about printing a sheet and keeping a file; few words, for they are read with the first load. */
export const printingWords = {
  print: 'Print sheet',
  pdf: 'Sheet as PDF',
  paper: 'Paper',
  papers: { A4: 'A4', Letter: 'Letter' },
  notPrinted: 'The sheet was not printed',
  refused:
    'A value that was typed was refused, and the sheet would have the one before it. Put it right, or take it back with Escape.',
  notKept: (file: string) => `${file} was not kept`,
} as const
