import { inchMm } from '../../quantity/units.ts'
import { benchMm } from '../figures.ts'
import type { Finding } from '../finding.ts'
import { outerTubeDiameterMm, type SlideParts } from '../slide/slide.ts'

/** Bores of brass instruments at the valves, from the narrowest to the widest with room to spare, mm. */
const boresMm = { least: 6, most: 30 } as const

/**
 * Checks a slide's typed parts for likely slips: a bow's radius for the leg spacing, a bore that no instrument has
 * (inches, a lost comma), a wall that is not tube, movement typed as tube. Nothing is changed.
 *
 * @example slideSlips('slides[0]', { ...slide, legSpacingMm: 19 })[0]?.field // 'slides[0].legSpacingMm'
 */
export function slideSlips(path: string, slide: SlideParts): readonly Finding[] {
  return [
    ...boreSlips(path, slide),
    ...wallSlips(path, slide),
    ...spacingSlips(path, slide),
    ...outSlips(path, slide),
  ]
}

function boreSlips(path: string, { boreDiameterMm }: SlideParts): readonly Finding[] {
  const { least, most } = boresMm
  if (boreDiameterMm >= least && boreDiameterMm <= most) return []
  const field = `${path}.boreDiameterMm`
  const inches = boreDiameterMm * inchMm
  const tenth = boreDiameterMm / 10
  const fits = (valueMm: number) => valueMm >= least && valueMm <= most
  const question = fits(inches)
    ? `Is it inches? Then it is ${benchMm(inches)}.`
    : fits(tenth)
      ? `Is a decimal comma missing? Then it is ${benchMm(tenth)}.`
      : ''
  const expected = `${least} to ${most} mm`
  const message =
    `A bore of ${boreDiameterMm} mm is not one of a valve; expected ${expected}. ${question}`.trim()
  return [{ field, found: `${boreDiameterMm} mm`, expected, message }]
}

function wallSlips(path: string, { wallMm, boreDiameterMm }: SlideParts): readonly Finding[] {
  if (wallMm >= 0.2 && wallMm <= 1.5) return []
  const asDiameter = wallMm > boreDiameterMm && wallMm < boreDiameterMm + 3
  const question = asDiameter
    ? `Is it the outer diameter? Then the wall is ${(wallMm - boreDiameterMm) / 2} mm.`
    : 'Is a decimal point off?'
  const message = `A wall of ${wallMm} mm is not slide tube; 0.4 to 0.6 mm is usual. ${question}`
  return [{ field: `${path}.wallMm`, found: `${wallMm} mm`, expected: '0.2 to 1.5 mm', message }]
}

/** Legs that would run into each other, but not at twice the spacing. */
function spacingSlips(path: string, slide: SlideParts): readonly Finding[] {
  const { legSpacingMm } = slide
  const leastMm = outerTubeDiameterMm(slide)
  if (legSpacingMm >= leastMm || 2 * legSpacingMm < leastMm) return []
  const expected = `at least ${benchMm(leastMm)}`
  const message = `Legs ${benchMm(legSpacingMm)} apart would run into each other; expected ${expected}. Is it the bow’s radius? Then the spacing is ${benchMm(2 * legSpacingMm)}.`
  return [{ field: `${path}.legSpacingMm`, found: benchMm(legSpacingMm), expected, message }]
}

/** A slide farther out than it travels, but not by half. */
function outSlips(path: string, { outAtPitchMm, travelMm }: SlideParts): readonly Finding[] {
  if (outAtPitchMm <= travelMm || outAtPitchMm > 2 * travelMm) return []
  const message = `The slide stands ${benchMm(outAtPitchMm)} out, more than its travel of ${benchMm(travelMm)}. Is it tube where movement was asked for? Then it is ${benchMm(outAtPitchMm / 2)} out.`
  const expected = `at most ${benchMm(travelMm)}`
  return [{ field: `${path}.outAtPitchMm`, found: benchMm(outAtPitchMm), expected, message }]
}
