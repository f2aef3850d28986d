import type { Design } from '../workbook.ts'
import { likelySlip } from './likelySlip.ts'
import type { Warning } from './warning.ts'

/** Mouthpiece and bell usually add up to this share of the effective length. */
const mostCorrection = 0.1
/** No valve bore is as wide, mm. */
const widestValveBoreMm = 40
const narrowestValveBoreMm = 6
/** Most valve bores lie about here, trumpet to bass, mm. */
const usualValveBoreMm = 15.5
const mostFromUsualMm = 6.5

/** Bore length and diameter that do not belong to the stated fundamental. */
export function instrumentWarnings(design: Design, openMm: number, at: string): readonly Warning[] {
  return [...boreLengthWarnings(design, openMm, at), ...boreDiameterWarnings(design, at)]
}

function boreLengthWarnings(design: Design, openMm: number, at: string): readonly Warning[] {
  const lengthMm = design.instrument.boreLengthMm
  if (lengthMm === undefined) return []
  return lengthOfPitchWarnings(design, lengthMm, openMm, `${at}.instrument.boreLengthMm`)
}

/** A bore length, mm, that leaves no room for mouthpiece and bell in the open length, or too much. */
export function lengthOfPitchWarnings(
  design: Design,
  lengthMm: number,
  openMm: number,
  path: string,
): readonly Warning[] {
  const middleMm = (1 - mostCorrection / 2) * openMm
  const offBy = (mm: number): number => Math.abs(mm - middleMm)
  const mostOffMm = (mostCorrection / 2) * openMm
  if (offBy(lengthMm) <= mostOffMm) return []
  const found = `${lengthMm.toFixed(1)} mm for ${design.instrument.fundamentalHz.toFixed(2)} Hz`
  const expected = `${((1 - mostCorrection) * openMm).toFixed(1)} to ${openMm.toFixed(1)} mm`
  const question =
    likelyLengthSlip(lengthMm, offBy, mostOffMm) ?? 'do length and fundamental belong together?'
  return [
    {
      path,
      found,
      expected,
      message: `Found a bore length of ${found}; expected ${expected}: ${question}`,
    },
  ]
}

/** For a whole instrument a factor of two is the octave, not the leg. */
function likelyLengthSlip(lengthMm: number, offBy: (mm: number) => number, mostOffMm: number): string | null {
  const fits = (mm: number): boolean => offBy(mm) <= mostOffMm
  if (fits(lengthMm * 2) || fits(lengthMm / 2)) return 'is the fundamental an octave off?'
  if (fits(lengthMm / 3.28084)) return 'were feet read as metres?'
  return likelySlip(lengthMm, offBy, mostOffMm)
}

function boreDiameterWarnings(design: Design, at: string): readonly Warning[] {
  const diameterMm = design.instrument.boreDiameterMm
  if (diameterMm === undefined || (diameterMm <= widestValveBoreMm && diameterMm >= narrowestValveBoreMm))
    return []
  const found = `${diameterMm} mm`
  const expected = `${narrowestValveBoreMm} to ${widestValveBoreMm} mm at the valves`
  const slip = likelySlip(diameterMm, (mm) => Math.abs(mm - usualValveBoreMm), mostFromUsualMm)
  const question = diameterMm > 300 ? 'is it a length?' : slip
  return [
    {
      path: `${at}.instrument.boreDiameterMm`,
      found,
      expected,
      message: `Found a bore of ${found}; expected ${expected}${question === null ? '.' : `: ${question}`}`,
    },
  ]
}
