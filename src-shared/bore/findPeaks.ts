import { admittanceSquared, admittanceSquaredOnGrid, type Route } from './route.ts'

/** A maximum of |Z|, before it has a number. */
export interface Peak {
  readonly hz: number
  /** |Z| there, Pa·s/m³. */
  readonly heightPaSPerM3: number
  /** Width at half power, Hz; `null` where a side does not fall to half before the next maximum. */
  readonly widthHz: number | null
}

/** Two points with one midway where |Y|² is lower than at both, and its three values. */
interface Bracket {
  readonly low: number
  readonly high: number
  readonly yLow: number
  readonly yMiddle: number
  readonly yHigh: number
}

const toleranceHz = 0.0005
const finerParts = 8

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
        low: at(i - 1),
        high: at(i + 1),
        yLow: work[i - 1]!,
        yMiddle: work[i]!,
        yHigh: work[i + 1]!,
      })
    else if (i > 1 && i < count - 2 && mayHidePair(work, i)) {
      const hidden = searchFiner(route, at(i), stepRootHz)
      if (hidden !== undefined) brackets.push(hidden)
    }
  }
  return brackets
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

function searchFiner(route: Route, from: number, step: number): Bracket | undefined {
  const part = step / finerParts
  let before = admittanceSquared(route, from)
  let here = admittanceSquared(route, from + part)
  for (let i = 1; i < finerParts; i++) {
    const next = admittanceSquared(route, from + (i + 1) * part)
    if (here < before && here <= next)
      return {
        low: from + (i - 1) * part,
        high: from + (i + 1) * part,
        yLow: before,
        yMiddle: here,
        yHigh: next,
      }
    before = here
    here = next
  }
  return undefined
}

/** Parabolas through three points ever closer together; golden sections when one leads out of the bracket. */
function refine(route: Route, bracket: Bracket): number {
  const { low, high } = bracket
  let { yLow, yMiddle, yHigh } = bracket
  let middle = (low + high) / 2
  let arm = (high - low) / 2
  for (let round = 0; round < 12; round++) {
    const move = (arm * (yLow - yHigh)) / (2 * (yLow - 2 * yMiddle + yHigh))
    if (!(Math.abs(move) <= 2 * arm) || yLow + yHigh <= 2 * yMiddle) break
    middle += move
    if (middle <= low || middle >= high) break
    if (Math.abs(move) * 2 * middle < toleranceHz) return middle
    arm = Math.max(Math.min(arm / 8, 4 * Math.abs(move)), 1e-4 * arm)
    yLow = admittanceSquared(route, middle - arm)
    yMiddle = admittanceSquared(route, middle)
    yHigh = admittanceSquared(route, middle + arm)
  }
  return goldenSection(route, bracket)
}

function goldenSection(route: Route, bracket: Bracket): number {
  const share = (Math.sqrt(5) - 1) / 2
  let { low, high } = bracket
  let left = high - share * (high - low)
  let right = low + share * (high - low)
  let yLeft = admittanceSquared(route, left)
  let yRight = admittanceSquared(route, right)
  while ((high - low) * 2 * high > toleranceHz) {
    if (yLeft < yRight) {
      high = right
      right = left
      yRight = yLeft
      left = high - share * (high - low)
      yLeft = admittanceSquared(route, left)
    } else {
      low = left
      left = right
      yLeft = yRight
      right = low + share * (high - low)
      yRight = admittanceSquared(route, right)
    }
  }
  return (low + high) / 2
}

function describePeak(route: Route, rootHz: number, left: number, right: number): Peak {
  const least = Math.max(admittanceSquared(route, rootHz), Number.MIN_VALUE)
  const below = halfPower(route, rootHz, left, least)
  const above = halfPower(route, rootHz, right, least)
  return {
    hz: rootHz * rootHz,
    heightPaSPerM3: 1 / Math.sqrt(least),
    widthHz: below === undefined || above === undefined ? null : above * above - below * below,
  }
}

/**
 * √f where |Y|² has doubled, going from the peak towards `limit`. √(|Y|² − least) is nearly a straight line there, so
 * the line through the two points around the place is followed.
 */
function halfPower(route: Route, peak: number, limit: number, least: number): number | undefined {
  const room = limit - peak
  const height = (reach: number) => Math.sqrt(Math.max(0, admittanceSquared(route, peak + reach) - least))
  const goal = Math.sqrt(least)
  const probe = Math.sign(room) * Math.min(Math.abs(room), route.stepRootHz * 0.5)
  let near = 0
  let nearHeight = 0
  let far = probe
  let farHeight = height(probe)
  while (farHeight < goal) {
    if (far === room) return undefined
    near = far
    nearHeight = farHeight
    const reach = Math.abs(far) * Math.min(4, Math.max(1.3, (1.1 * goal) / farHeight))
    far = Math.sign(room) * Math.min(Math.abs(room), reach)
    farHeight = height(far)
  }
  for (let round = 0; round < 30; round++) {
    const next = near + ((far - near) * (goal - nearHeight)) / (farHeight - nearHeight)
    const nextHeight = height(next)
    if (Math.abs(nextHeight - goal) < 5e-4 * goal) return peak + next
    if (nextHeight < goal) {
      near = next
      nearHeight = nextHeight
    } else {
      far = next
      farHeight = nextHeight
    }
  }
  return peak + (near + far) / 2
}
