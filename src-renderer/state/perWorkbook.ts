const forgets: (() => void)[] = []

/** Has what was typed or looked at for one workbook forgotten when another is shown. */
export function forgetWithWorkbook(forget: () => void): void {
  forgets.push(forget)
}

/** Another workbook is shown. */
export function forgetEarlierWorkbook(): void {
  for (const forget of forgets) forget()
}
