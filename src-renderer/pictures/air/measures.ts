import type { AirMeasures } from '#shared/valves/air/airLayout.ts'
import type { ValvePlan } from '#shared/valves/air/valvePlan.ts'

/** How a drawing on the page is measured, and how its loops are labelled. */
export interface PageMeasures {
  readonly measures: AirMeasures
  /** Labels run upwards where there is no room for them side by side. */
  readonly upright: boolean
}

const bow = 10
/** Room for a character of a label, px. */
const characterPx = 7
/** Labels longer than this are cut. */
export const mostCharacters = 14

/** Measures of the drawing on the page: loops as far apart as their labels need, or close, with labels upright. */
export function pageMeasures(plan: ValvePlan, width: number): PageMeasures {
  const beside = mostBeside(plan)
  const longest = plan.placed.reduce(
    (most, { loop }) => Math.max(most, Math.min(loop.id.length, mostCharacters)),
    6,
  )
  const labelPx = longest * characterPx + 10
  const ends = 74
  const wide = 2 * ends + beside * Math.max(labelPx, 2 * bow + 14) + plan.valves.length * 40
  const upright = wide > Math.max(width, 700)
  const slot = upright ? 28 : Math.max(labelPx, 2 * bow + 14)
  const single = beside <= plan.valves.length
  return {
    upright,
    measures: {
      bow,
      loopGap: (single ? 34 : slot) - 2 * bow,
      valveGap: single && !upright ? Math.max(30, labelPx - 2 * bow - 24) : 30,
      casing: 14,
      longestLeg: 128,
      passGap: 78,
      wordRoom: upright ? longest * characterPx + 60 : 46,
      ends,
    },
  }
}

/** Loops side by side along the whole drawing. */
function mostBeside(plan: ValvePlan): number {
  const homes = [null, ...plan.valves.keys()]
  return homes.reduce((sum: number, home) => {
    const here = plan.placed.filter(({ valve }) => valve === home)
    const counts = Array.from(
      { length: plan.passes },
      (_, pass) => here.filter((each) => each.pass === pass).length,
    )
    return sum + Math.max(home === null ? 0 : 1, ...counts)
  }, 0)
}

/** Measures of the small drawings of the gallery. */
export const smallMeasures: AirMeasures = {
  bow: 5,
  loopGap: 7,
  valveGap: 16,
  casing: 5,
  longestLeg: 46,
  passGap: 26,
  wordRoom: 6,
  ends: 24,
}
