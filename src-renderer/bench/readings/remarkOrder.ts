import type { ReadingsFit } from '#shared/bench/readings/readingsFit.ts'

/** Remarks that must be settled before cutting, and those that only say how the figures are meant. */
export function sortedRemarks({ remarks }: ReadingsFit): {
  readonly grave: readonly string[]
  readonly mild: readonly string[]
} {
  const isMild = (kind: string): boolean => kind === 'reference' || kind === 'unchecked'
  // Each loop's row says for itself that its change may be nothing.
  const shown = remarks.filter(({ kind }) => kind !== 'withinDoubt')
  return {
    grave: shown.filter(({ kind }) => !isMild(kind)).map(({ message }) => message),
    mild: shown.filter(({ kind }) => isMild(kind)).map(({ message }) => message),
  }
}
