/** What is said about the template at full size. */
export const templateWords = {
  print: 'Print template 1 : 1',
  printOn: (sheets: number) => `Print template 1 : 1 on ${sheets} sheets`,
  tooMany: (sheets: number) => `Template 1 : 1 would take ${sheets} sheets`,
  name: (slide: string) => `${slide}, template`,
  notPrinted: 'The template was not printed',
  sheet: (title: string, column: number, row: number, columns: number, rows: number) =>
    `${title}: column ${column} of ${columns}, row ${row} of ${rows}. Lay crosses on crosses.`,
  check: 'This line must measure 100 mm',
} as const
