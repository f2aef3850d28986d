import { boreLengthMm } from '../../bore/checkBore.ts'
import type { Bore } from '../bore.ts'
import { valvesDiameterMm } from '../boreInput.ts'
import type { Design } from '../workbook.ts'
import { lengthOfPitchWarnings } from './instrumentWarnings.ts'
import { likelySlip } from './likelySlip.ts'
import type { Warning } from './warning.ts'

/** Two measurements of one bore length may differ by a mouthpiece counted or not, and a little, mm and share. */
const mouthpieceMm = 100
const mostOffShare = 0.02
/** Two figures for the bore at the valves may differ by this share. */
const mostDiameterShare = 0.05

/**
 * A bore, section by section, that does not belong to the rest of its design: its length to the bore length given (or,
 * without one, to the fundamental), its diameter at the valves to the one given.
 */
export function boreWarnings(design: Design, openMm: number, at: string): readonly Warning[] {
  const { bore } = design
  if (bore === undefined) return []
  return [...lengthWarnings(design, bore, openMm, at), ...diameterWarnings(design, bore, at)]
}

function lengthWarnings(design: Design, bore: Bore, openMm: number, at: string): readonly Warning[] {
  const path = `${at}.bore.sections`
  const lengthMm = boreLengthMm(bore.sections) + inOpenRouteMm(design)
  const givenMm = design.instrument.boreLengthMm
  if (givenMm === undefined) return lengthOfPitchWarnings(design, lengthMm, openMm, path)
  const offBy = (mm: number): number => Math.abs(mm - givenMm)
  const mostOffMm = mouthpieceMm + mostOffShare * givenMm
  if (offBy(lengthMm) <= mostOffMm) return []
  const found = `${lengthMm.toFixed(0)} mm of sections`
  const expected = `${givenMm.toFixed(0)} mm, the bore length given`
  return [warning(path, found, expected, likelySlip(lengthMm, offBy, mostOffMm))]
}

/** Loops that the open route goes through are in its length and not among the sections. */
function inOpenRouteMm({ loops }: Design): number {
  return loops.reduce((sum, { pressed, lengthMm }) => (pressed.length === 0 ? sum + lengthMm : sum), 0)
}

function diameterWarnings(design: Design, bore: Bore, at: string): readonly Warning[] {
  const givenMm = design.instrument.boreDiameterMm
  const diameterMm = valvesDiameterMm(bore)
  if (givenMm === undefined || Math.abs(diameterMm - givenMm) <= mostDiameterShare * givenMm) return []
  const index = bore.sections.findIndex(({ kind }) => kind === 'valves')
  const offBy = (mm: number): number => Math.abs(mm - givenMm)
  const slip = likelySlip(diameterMm, offBy, mostDiameterShare * givenMm)
  const question = slip === 'is it the length of one leg?' ? 'is it the radius?' : slip
  const path = `${at}.bore.sections[${index}].diameterMm`
  return [warning(path, `${diameterMm} mm`, `${givenMm} mm, the bore at the valves given`, question)]
}

function warning(path: string, found: string, expected: string, question: string | null): Warning {
  const message = `Found ${found}; expected ${expected}${question === null ? '.' : `: ${question}`}`
  return { path, found, expected, message }
}
