import { admittanceSquared } from './admittance.ts'
import type { Route } from './route.ts'

/** A maximum of |Z|, before it has a number. */
export interface Peak {
  readonly hz: number
  /** |Z| there, Pa·s/m³. */
  readonly heightPaSPerM3: number
  /** Width at half power, Hz; `null` where a side does not fall to half before the next maximum. */
  readonly widthHz: number | null
}

/** Two points with one midway where |Y|² is lower than at both, and its three values. */
export interface Bracket {
  /** Point of the grid at or just before the middle. */
  readonly index: number
  readonly low: number
  readonly high: number
  readonly yLow: number
  readonly yMiddle: number
  readonly yHigh: number
}

const toleranceHz = 0.0005

/**
 * √f of the minimum of |Y|² in a bracket: parabolas through three points ever closer together; golden sections when
 * one leads out of the bracket.
 *
 * @example refine(route, bracket)
 */
export function refine(route: Route, bracket: Bracket): number {
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

/**
 * Height and width of the peak at `rootHz`; `left` and `right` are as far as its sides are followed.
 *
 * @example describePeak(route, refine(route, bracket), left, right)
 */
export function describePeak(route: Route, rootHz: number, left: number, right: number): Peak {
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
