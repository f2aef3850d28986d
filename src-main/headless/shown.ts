/** Letters that are written from right to left: Hebrew, Arabic and their neighbours. */
const rightToLeft = /[\u0590-\u08ff\ufb1d-\ufdff\ufe70-\ufefc\u{10800}-\u{10fff}\u{1e800}-\u{1efff}]/u

/** The marks that keep a right-to-left name from turning what stands beside it round; they have no width. */
const [isolate, endOfIsolate] = ['\u2068', '\u2069'] as const

/**
 * A line of text as it may be shown in a terminal: characters that would move the cursor, turn the writing round
 * or break the line are replaced, for a file may hold anything. The joiners inside emoji and words stay.
 */
export function shownLine(text: string): string {
  return text.replace(/(?![\u200c\u200d])[\p{Cc}\p{Cf}\p{Cs}\p{Zl}\p{Zp}]/gu, '\uFFFD')
}

/** A name from a file as it may stand in a line: as `shownLine`, and held together where it runs right to left. */
export function shown(name: string): string {
  const plain = shownLine(name)
  return rightToLeft.test(plain) ? `${isolate}${plain}${endOfIsolate}` : plain
}

/** Characters that a shown text takes up in a line, not code units. */
export function shownWidth(text: string): number {
  return [...text].filter((sign) => sign !== isolate && sign !== endOfIsolate).length
}
