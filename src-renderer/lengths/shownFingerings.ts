import type { NamedFingering } from '#shared/valves/fingerings.ts'
import { usualFingerings } from '#shared/valves/usual.ts'
import type { DerivedDesign } from '../state/derived.ts'
import { lengthsNames } from '../words/lengths.ts'

/** More fingerings than this are not listed one by one; the usual ones stand for them. */
export const mostListed = 256

/** The fingerings that are listed and drawn, by nominal drop. All of them count, listed or not. */
export function shownFingerings({ design, tables }: DerivedDesign): readonly NamedFingering[] {
  const { fingerings } = tables
  const listed = fingerings.length <= mostListed ? fingerings : usualFingerings(design.valves, fingerings)
  return [...listed].sort((a, b) => a.semitones - b.semitones || a.pressed.length - b.pressed.length)
}

/** A fingering as it is called in a sentence. */
export function fingeringWords(name: string): string {
  return name === '0' ? lengthsNames.open : name
}
