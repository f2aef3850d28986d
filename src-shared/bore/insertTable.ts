import type { BoreConditions, Insert } from './section.ts'
import type { Slice } from './slice.ts'
import { atDelay, atInertance, type SliceTable, sliceWidth, tableOfSlices } from './sliceTable.ts'

/** Where the loops go in, and the air there. */
export interface InsertPlace {
  readonly atM: number
  readonly boreLengthM: number
  readonly conditions: BoreConditions
}

interface Piece {
  lengthM: number
  readonly radiusM: number
  /** Inertance of a bent piece over that of a straight one. */
  readonly inertanceShare: number
}

/**
 * Share of a straight tube's inertance that a bend of the same centre line has: (1 + √(1 − (a/R)²))/2, compliance
 * unchanged (Nederveen, Acoustical Aspects of Woodwind Instruments, 1969). `bendRadiusMm` at least half the bore.
 *
 * @example bendInertanceShare(11.66, 17) // 0.9697
 */
export function bendInertanceShare(diameterMm: number, bendRadiusMm: number): number {
  return (1 + Math.sqrt(Math.max(0, 1 - (diameterMm / 2 / bendRadiusMm) ** 2))) / 2
}

/** Half the straight tube, the bow, the other half. */
function piecesOf({ lengthMm, diameterMm, bendRadiusMm }: Insert): Piece[] {
  const radiusM = diameterMm / 2000
  const straight = (pieceMm: number): Piece => ({ lengthM: pieceMm / 1000, radiusM, inertanceShare: 1 })
  if (bendRadiusMm === undefined) return [straight(lengthMm)]
  const bowMm = Math.min(lengthMm, Math.PI * bendRadiusMm)
  const legMm = (lengthMm - bowMm) / 2
  const inertanceShare = bendInertanceShare(diameterMm, bendRadiusMm)
  return [straight(legMm), { lengthM: bowMm / 1000, radiusM, inertanceShare }, straight(legMm)]
}

/**
 * Makes checked loops ready, in their order. Neighbours of one bore become one cylinder; a length of 0 is nothing.
 *
 * @example tableOfInserts([{ lengthMm: 82.3, diameterMm: 11.66 }], place).count // 1
 */
export function tableOfInserts(inserts: readonly Insert[], place: InsertPlace): SliceTable {
  const pieces: Piece[] = []
  for (const piece of inserts.flatMap(piecesOf)) {
    const last = pieces.at(-1)
    if (last?.radiusM === piece.radiusM && last.inertanceShare === piece.inertanceShare)
      last.lengthM += piece.lengthM
    else if (piece.lengthM > 0) pieces.push(piece)
  }
  const slices: Slice[] = pieces.map(({ lengthM, radiusM }) => ({
    middleM: place.atM,
    lengthM,
    startRadiusM: radiusM,
    endRadiusM: radiusM,
  }))
  const table = tableOfSlices(slices, place.boreLengthM, place.conditions)
  for (const [i, { inertanceShare }] of pieces.entries()) {
    table.figures[i * sliceWidth + atDelay]! *= inertanceShare
    table.figures[i * sliceWidth + atInertance]! *= inertanceShare
  }
  return table
}
