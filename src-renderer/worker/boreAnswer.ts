import type { Body } from '#shared/bore/body.ts'
import { type BoreFingering, describeFingerings, type FingeringModes } from '#shared/bore/fingeringModes.ts'
import { type ImpedanceCurve, impedanceCurve } from '#shared/bore/inputImpedance.ts'
import { accepted, type BoreResult } from '#shared/bore/refusal.ts'
import type { BoreConditions, BoreSection } from '#shared/bore/section.ts'
import type { SliceReport } from '#shared/bore/slicing.ts'

/** A bore without its loops. */
export interface BoreBody {
  /** Stands for sections and conditions: the same key, the same bore. */
  readonly bodyKey: string
  readonly sections: readonly BoreSection[]
  readonly conditions: BoreConditions
}

/** What is asked about a bore with its loops. */
export interface BoreQuestion {
  readonly bodyKey: string
  readonly highestMode: number
  readonly open: BoreFingering
  readonly fingerings: readonly BoreFingering[]
  /** Names of the fingerings whose impedance is drawn. */
  readonly drawn: readonly string[]
  readonly points: number
}

/** Input impedance of one fingering for drawing. */
export interface DrawnImpedance {
  readonly fingering: string
  /** |Z|, MPa·s/m³. */
  readonly magnitude: Float64Array
  readonly phaseDegrees: Float64Array
}

/** What the worker says about a bore with its loops. */
export interface BoreAnswer {
  readonly lengthMm: number
  readonly slicing: SliceReport
  readonly modes: readonly FingeringModes[]
  /** Frequencies that all curves have in common. */
  readonly hz: Float64Array
  readonly curves: readonly DrawnImpedance[]
}

/** Fingerings reckoned before progress is told again. */
const atATime = 16

/**
 * Everything but the weighted sum about a bore: modes of all fingerings, curves of those that are drawn. Tells how many
 * fingerings are done.
 */
export async function describeBore(
  question: BoreQuestion,
  body: BoreResult<Body>,
  tell: (done: number, of: number) => void,
): Promise<BoreResult<BoreAnswer>> {
  if (!body.ok) return body
  const { open, fingerings } = question
  const modes: FingeringModes[] = []
  for (let from = 0; from < fingerings.length; from += atATime) {
    if (fingerings.length > atATime) tell(from, fingerings.length)
    const some = describeFingerings(body.value, open, fingerings.slice(from, from + atATime))
    if (!some.ok) return some
    modes.push(...some.value)
  }
  if (fingerings.length > atATime) tell(fingerings.length, fingerings.length)
  const curves = drawnCurves(question, body.value)
  if (!curves.ok) return curves
  const { lengthMm, slicing } = body.value
  return accepted({ lengthMm, slicing, modes, ...curves.value })
}

function drawnCurves(
  { fingerings, drawn, points }: BoreQuestion,
  body: Body,
): BoreResult<Pick<BoreAnswer, 'hz' | 'curves'>> {
  let hz: ImpedanceCurve['hz'] = new Float64Array()
  const curves: DrawnImpedance[] = []
  for (const name of drawn) {
    const found = fingerings.find(({ fingering }) => fingering === name)
    if (found === undefined) continue
    const curve = impedanceCurve(body, found.inserts, points)
    if (!curve.ok) return curve
    hz = curve.value.hz
    curves.push(drawnOf(name, curve.value))
  }
  return accepted({ hz, curves })
}

function drawnOf(fingering: string, { re, im }: ImpedanceCurve): DrawnImpedance {
  return {
    fingering,
    magnitude: re.map((real, i) => Math.hypot(real, im[i]!) / 1e6),
    phaseDegrees: re.map((real, i) => (Math.atan2(im[i]!, real) * 180) / Math.PI),
  }
}
