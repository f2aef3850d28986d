import type { Loop } from '../loop.ts'
import type { PlacedLoop, ValvePlan } from './valvePlan.ts'

/** A place on the drawing, in its own units: x to the right, y down. */
export interface DrawnPoint {
  readonly x: number
  readonly y: number
}

/** Measures of the drawing, in its own units. */
export interface AirMeasures {
  /** Radius of a loop's bow. */
  readonly bow: number
  /** Between neighbouring loops of one valve. */
  readonly loopGap: number
  /** Between valves. */
  readonly valveGap: number
  /** From the last tube to the side of a valve's casing. */
  readonly casing: number
  /** From a passage to the top or foot of the casings. */
  readonly cheek: number
  /** Leg of the longest loop. */
  readonly longestLeg: number
  /** Between the passages, and from the first to the foot of the casing. */
  readonly passGap: number
  /** Kept free above the longest loop and below the lowest. */
  readonly wordRoom: number
  /** Straight tube ahead of the valves, and behind them. */
  readonly ends: number
}

/** One loop as drawn: a U of two legs from the line of its passage, up from the first and down from the others. */
export interface DrawnLoop {
  readonly loop: Loop
  readonly valve: number | null
  readonly pass: number
  /** The U from foot to foot, corners to be rounded by the bow. */
  readonly points: readonly [DrawnPoint, DrawnPoint, DrawnPoint, DrawnPoint]
  readonly up: boolean
}

/** One valve as drawn: a casing across the passages that the air makes through it. */
export interface DrawnValve {
  readonly valve: number
  readonly left: number
  readonly right: number
  readonly foot: number
}

/** A valve system drawn: legs to scale, the body broken. */
export interface AirLayout {
  readonly width: number
  readonly height: number
  readonly measures: AirMeasures
  /** Height of the line of each passage. */
  readonly lines: readonly number[]
  readonly valves: readonly DrawnValve[]
  readonly loops: readonly DrawnLoop[]
  /** Top of the casings, and foot of the longest. */
  readonly casingTop: number
  readonly casingFoot: number
  /** Where the air turns back for a further passage, where it comes in again, and where it leaves the block. */
  readonly turn: { readonly back: number; readonly again: number; readonly out: number }
  /** Units of leg for each millimetre of tube: half the scale, for a loop has two legs. */
  readonly legPerMm: number
}

/**
 * Draws a plan to scale: a loop's two legs together are as long as its tube at one scale for all loops.
 *
 * @param width to be filled by wider gaps when the drawing needs less; a drawing that needs more is wider
 * @example airLayout(valvePlan(valves, loops), measures, 800).loops[0]?.points // foot, tip, tip, foot
 */
export function airLayout(plan: ValvePlan, measures: AirMeasures, width = 0): AirLayout {
  const needed = placeColumns(plan, measures)
  const gaps = plan.valves.length + 1
  const more = Math.min(Math.max(0, width - needed.width) / gaps, 5 * measures.valveGap)
  const wider = { ...measures, valveGap: measures.valveGap + more }
  const columns = placeColumns(plan, wider)
  const spare = Math.max(0, width - columns.width)
  const legPerMm = measures.longestLeg / Math.max(1, ...plan.placed.map(({ loop }) => loop.lengthMm))
  const lines = placeLines(plan, measures, legPerMm)
  const shift = (x: number): number => x + spare / 2
  const blockEnd = columns.valves[plan.blockEnd]?.right ?? 0
  const lowest = lines.at(-1)! + (plan.passes > 1 ? longestLegOf(plan, plan.passes - 1, legPerMm) : 0)
  const shortFoot = lines[0]! + 0.6 * measures.passGap
  const casingFoot = plan.passes > 1 ? lines.at(-1)! + measures.cheek : shortFoot
  return {
    width: columns.width + spare,
    height: Math.max(casingFoot + 6, plan.passes > 1 ? lowest + measures.wordRoom : 0),
    measures,
    lines,
    valves: columns.valves.map(({ valve, left, right }) => ({
      valve,
      left: shift(left),
      right: shift(right),
      foot: valve > plan.blockEnd ? shortFoot : casingFoot,
    })),
    loops: columns.loops.map((drawn) => drawLoop(drawn, shift(drawn.centre), lines, legPerMm, measures.bow)),
    casingTop: lines[0]! - measures.cheek,
    casingFoot,
    turn: {
      back: shift(blockEnd + 0.3 * wider.valveGap),
      again: shift((columns.valves[0]?.left ?? 0) - 0.45 * measures.valveGap),
      out: shift(blockEnd + 0.65 * wider.valveGap),
    },
    legPerMm,
  }
}

interface Column extends PlacedLoop {
  readonly centre: number
}

/** Columns from left to right: the loops that are always in, then each valve with room for its loops. */
function placeColumns(plan: ValvePlan, measures: AirMeasures) {
  const { bow, loopGap, valveGap, casing, ends } = measures
  const slot = 2 * bow + loopGap
  const loops: Column[] = []
  const valves: Omit<DrawnValve, 'foot'>[] = []
  let x = ends
  for (const valve of [null, ...plan.valves.keys()]) {
    const here = plan.placed.filter((placed) => placed.valve === valve)
    if (valve === null && here.length === 0) continue
    const slots = Math.max(1, ...Array.from({ length: plan.passes }, (_, pass) => ofPass(here, pass).length))
    const inner = slots * slot - loopGap
    const left = x + casing
    for (let pass = 0; pass < plan.passes; pass++) {
      const own = ofPass(here, pass)
      const start = left + (inner - (own.length * slot - loopGap)) / 2 + bow
      for (const [i, placed] of own.entries()) loops.push({ ...placed, centre: start + i * slot })
    }
    const right = left + inner + casing
    if (valve !== null) valves.push({ valve, left: x, right })
    x = right + valveGap
  }
  return { loops, valves, width: x - valveGap + ends }
}

function ofPass(placed: readonly PlacedLoop[], pass: number): readonly PlacedLoop[] {
  return placed.filter((each) => each.pass === pass)
}

function placeLines(plan: ValvePlan, measures: AirMeasures, legPerMm: number): readonly number[] {
  const lines = [measures.wordRoom + Math.max(longestLegOf(plan, 0, legPerMm), measures.cheek)]
  for (let pass = 1; pass < plan.passes; pass++) {
    const hanging = pass > 1 ? longestLegOf(plan, pass - 1, legPerMm) + measures.wordRoom : 0
    lines.push(lines[pass - 1]! + hanging + measures.passGap)
  }
  return lines
}

function longestLegOf(plan: ValvePlan, pass: number, legPerMm: number): number {
  return ofPass(plan.placed, pass).reduce((most, { loop }) => Math.max(most, loop.lengthMm * legPerMm), 0)
}

function drawLoop(
  { loop, valve, pass }: Column,
  x: number,
  lines: readonly number[],
  legPerMm: number,
  bow: number,
): DrawnLoop {
  const up = pass === 0
  const y = lines[pass]!
  const end = y + (up ? -1 : 1) * loop.lengthMm * legPerMm
  return {
    loop,
    valve,
    pass,
    up,
    points: [
      { x: x - bow, y },
      { x: x - bow, y: end },
      { x: x + bow, y: end },
      { x: x + bow, y },
    ],
  }
}
