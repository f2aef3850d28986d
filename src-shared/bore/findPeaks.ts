import { admittanceSquared, admittanceSquaredOnGrid } from './admittance.ts'
import { type Bracket, describePeak, type Peak, refine } from './refinePeak.ts'
import type { Route } from './route.ts'

const finerParts = 8
/** Smaller ripples than this are not told from rounding. */
const leastRise = 1e-5

/**
 * All maxima of |Z| of a route up to `most`, lowest first, refined to 0.001 Hz. The grid is searched for minima of
 * |Y|²; where the curve through its points may hide a pair of a maximum and a minimum inside a step, that step is
 * searched again in finer parts.
 *
 * @example findPeaks(route, 16)
 */
export function findPeaks(route: Route, most: number): Peak[] {
  const brackets = findBrackets(route)
  const peaks: Peak[] = []
  for (let i = 0; i < brackets.length && peaks.length < most; i++) {
    const left = i === 0 ? route.startRootHz : brackets[i - 1]!.high
    const right = i === brackets.length - 1 ? endOf(route) : brackets[i + 1]!.low
    peaks.push(describePeak(route, refine(route, brackets[i]!), left, right))
  }
  return peaks
}

function endOf(route: Route): number {
  return route.startRootHz + (route.count - 1) * route.stepRootHz
}

function findBrackets(route: Route): Bracket[] {
  const { startRootHz, stepRootHz, count } = route
  const work = new Float64Array(count)
  for (let i = 0; i < count; i++) work[i] = admittanceSquaredOnGrid(route, i)
  const brackets: Bracket[] = []
  const at = (i: number) => startRootHz + i * stepRootHz
  for (let i = 1; i < count - 1; i++) {
    if (work[i]! < work[i - 1]! && work[i]! <= work[i + 1]!)
      brackets.push({
        index: i,
        low: at(i - 1),
        high: at(i + 1),
        yLow: work[i - 1]!,
        yMiddle: work[i]!,
        yHigh: work[i + 1]!,
      })
    else if (i > 1 && i < count - 2 && mayHidePair(work, i)) {
      const hidden = searchFiner(route, at(i), stepRootHz, work[i + 2]! >= work[i + 1]!)
      if (hidden !== undefined) brackets.push({ ...hidden, index: i })
    }
  }
  return brackets.filter(
    (bracket, i) =>
      standsOut(work, bracket, brackets[i - 1]?.index ?? 0) &&
      standsOut(work, bracket, brackets[i + 1]?.index ?? count - 1),
  )
}

/** Whether |Y|² rises between a minimum and its neighbour by more than the samples' own errors. */
function standsOut(work: Float64Array, { index, yMiddle }: Bracket, neighbour: number): boolean {
  const step = Math.sign(neighbour - index)
  for (let i = index; i !== neighbour; i += step) if (work[i]! > yMiddle * (1 + leastRise)) return true
  return work[neighbour]! > yMiddle * (1 + leastRise)
}

/** Whether the cubic with the slopes of the neighbours turns twice between points i and i + 1. */
function mayHidePair(y: Float64Array, i: number): boolean {
  const rise = y[i + 1]! - y[i]!
  const from = (y[i + 1]! - y[i - 1]!) / 2
  const to = (y[i + 2]! - y[i]!) / 2
  if (from * rise <= 0 || to * rise <= 0) return false
  const bend = 6 * rise - 2 * (2 * from + to)
  const cube = 3 * (from + to - 2 * rise)
  if (cube * rise <= 0) return false
  const turns = bend * bend - 4 * cube * from
  const middle = -bend / (2 * cube)
  return turns > -0.5 * bend * bend && middle > 0 && middle < 1
}

/**
 * The minimum of a pair inside the step from a point of the grid.
 *
 * @param endsLow whether the step ends in a minimum of the grid: what the step falls into is that one, and no pair,
 *   unless it has risen in between
 */
function searchFiner(
  route: Route,
  from: number,
  step: number,
  endsLow: boolean,
): Omit<Bracket, 'index'> | undefined {
  const part = step / finerParts
  const y = Array.from({ length: finerParts + 1 }, (_, i) => admittanceSquared(route, from + i * part))
  if (endsLow && y[finerParts]! >= y[finerParts - 1]!) return undefined
  for (let i = 1; i < finerParts; i++) {
    const [yLow, yMiddle, yHigh] = [y[i - 1]!, y[i]!, y[i + 1]!]
    if (yMiddle < yLow && yMiddle <= yHigh)
      return { low: from + (i - 1) * part, high: from + (i + 1) * part, yLow, yMiddle, yHigh }
  }
  return undefined
}
