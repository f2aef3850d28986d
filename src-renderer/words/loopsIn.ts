import type { LoopRefusal } from '#shared/workbook/loopRows/readLoops.ts'

const columns: Readonly<Record<LoopRefusal['column'], string>> = {
  line: 'the line',
  name: 'name',
  length: 'length',
  unit: 'unit',
  diameter: 'bore',
  pressed: 'valves down',
  released: 'valves up',
}

/** What the dialog for a table of loops says. */
export const loopsInWords = {
  open: 'Loops from a table…',
  title: (design: string) => `Loops from a table, into ${design}`,
  help: 'A loop a line: name, length, valves down; unit, bore and valves up where you have them. Headings may say another order and the units.',
  example: 'loop; length (mm); valves down\nfirst; 486,5; 1\nfirst, compensating; 162,9; 1-4',
  paste: 'Paste from a spreadsheet',
  file: 'Open a file…',
  others: 'Loops that the table does not name',
  stay: 'stay',
  go: 'go',
  take: (count: number) =>
    count === 0 ? 'Take the loops' : count === 1 ? 'Take a loop' : `Take ${count} loops`,
  cancel: 'Cancel',
  refusedTitle: (count: number) =>
    count === 1 ? 'One line cannot be read' : `${count} lines cannot be read`,
  refused: ({ line, column, found, expected }: LoopRefusal) =>
    `Line ${line}, ${columns[column]}: found ${found === '' ? 'nothing' : `“${found}”`}, expected ${expected}.`,
  andMore: (count: number) => `and ${count} more`,
  unread: (headings: readonly string[]) => `Not read: ${headings.join(', ')}.`,
  mendFirst: (count: number) => (count === 1 ? 'Mend the line first.' : `Mend the ${count} lines first.`),
  preview: 'What is taken',
  readSoFar: 'Read so far',
  line: 'line',
  loop: 'loop',
  length: 'length',
  now: 'now',
  bore: 'bore',
  valves: 'valves',
  asItIs: 'as it is',
  isNew: 'new',
  noWorkbook: {
    title: 'No workbook is open',
    message: 'A table of loops goes into a design. Open or make a workbook first, then drop the table again.',
  },
  notRead: (name: string) => `${name} was not read`,
  tooLarge: (megabytes: number) => `Found ${megabytes.toFixed(1)} MB, expected a table of at most 1 MB.`,
} as const
