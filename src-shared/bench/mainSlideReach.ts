import { centsBetween } from '../pitch/cents.ts'
import { slideMovementMm } from '../tubing/slideMovement.ts'

/** A main tuning slide: movement, mm, not tube. */
export interface MainSlide {
  readonly outMm: number
  /** Farthest out. */
  readonly travelMm: number
}

/** What a main slide can do for a change of pitch. */
export interface MainSlideReach {
  /** The pitches with the slide fully out and fully in, Hz of the note given. */
  readonly lowestHz: number
  readonly highestHz: number
  /** Movement from where it stands that the change asks for, mm; negative is in. */
  readonly movementMm: number
  readonly reaches: boolean
  /** Tube still wanted when the slide has done what it can, mm; negative is to take off, 0 when it reaches. */
  readonly leftTubeMm: number
}

/**
 * What a main slide of given travel can still do between two pitches of the open note. The movement is half the
 * tube. `openLengthMm` is the open route with the slide where it stands.
 *
 * @example mainSlideReach(3962.4, { outMm: 0, travelMm: 60 }, 440, 435).movementMm // 22.8
 */
export function mainSlideReach(
  openLengthMm: number,
  slide: MainSlide,
  fromHz: number,
  toHz: number,
): MainSlideReach {
  const mostIn = -slide.outMm
  const mostOut = slide.travelMm - slide.outMm
  const atMovement = (movementMm: number) => (fromHz * openLengthMm) / (openLengthMm + 2 * movementMm)
  const movementMm = slideMovementMm(openLengthMm, centsBetween(toHz, fromHz))
  const doneMm = Math.min(Math.max(movementMm, mostIn), mostOut)
  return {
    lowestHz: atMovement(mostOut),
    highestHz: atMovement(mostIn),
    movementMm,
    reaches: doneMm === movementMm,
    leftTubeMm: 2 * (movementMm - doneMm),
  }
}
