import type { AirMeasures } from '#shared/valves/air/airLayout.ts'
import type { ValvePlan } from '#shared/valves/air/valvePlan.ts'

/** How a drawing on the page is measured, and how its loops are labelled. */
export interface PageMeasures {
  readonly measures: AirMeasures
  /** Labels run upwards where there is no room for them side by side. */
  readonly upright: boolean
}

/** Room for a character of a label, px. */
const characterPx = 7
/** Labels longer than this are cut. */
const mostCharacters = 14
/** Between the tubes of neighbouring loops, px, at the least. */
const apart = 14

/** Measures of the drawing on the page: loops as far apart as their labels need, or close, with labels upright. */
export function pageMeasures(plan: ValvePlan, width: number): PageMeasures {
  const beside = mostBeside(plan)
  const characters = longestName(plan)
  const labelPx = Math.max(characters, 6) * characterPx + 10
  const wide = 2 * 74 + beside * Math.max(labelPx, 34) + plan.valves.length * 40
  const upright = wide > Math.max(width, 700)
  return {
    upright,
    measures: upright ? closeMeasures(plan, characters) : wideMeasures(plan, beside, labelPx),
  }
}

function wideMeasures(plan: ValvePlan, beside: number, labelPx: number): AirMeasures {
  const isSingle = beside <= plan.valves.length
  return {
    bow: 10,
    loopGap: isSingle ? apart : labelPx - 20,
    valveGap: isSingle ? Math.max(34, labelPx - 44) : 34,
    casing: 14,
    cheek: 9,
    longestLeg: 112,
    passGap: 78,
    wordRoom: 42 + labelLinePx * (mostLines(plan) - 1),
    ends: 74,
  }
}

function closeMeasures(plan: ValvePlan, characters: number): AirMeasures {
  return {
    bow: 8,
    loopGap: apart,
    valveGap: plan.passes > 1 ? 34 : 14,
    casing: 8,
    cheek: 9,
    longestLeg: 104,
    passGap: 78,
    wordRoom: (characters + 8) * characterPx + 12,
    ends: 64,
  }
}

/**
 * The lines that a loop's name takes: one, or two where it is long and its comma says where it divides. What is still too
 * long is cut.
 *
 * @example labelLines('first, compensating') // ['first,', 'compensating']
 */
export function labelLines(name: string): readonly string[] {
  const comma = name.indexOf(', ')
  const lines =
    name.length > mostCharacters && comma > 0 ? [name.slice(0, comma + 1), name.slice(comma + 2)] : [name]
  return lines.map(cut)
}

/** A label no longer than there is room for. */
export function cut(label: string): string {
  return label.length > mostCharacters ? `${label.slice(0, mostCharacters - 1)}…` : label
}

/** Height of a line of a label, px. */
export const labelLinePx = 15

function mostLines(plan: ValvePlan): number {
  return plan.placed.reduce((most, { loop }) => Math.max(most, labelLines(loop.name ?? loop.id).length), 1)
}

function longestName(plan: ValvePlan): number {
  return plan.placed.reduce(
    (most, { loop }) => Math.max(most, Math.min((loop.name ?? loop.id).length, mostCharacters)),
    0,
  )
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
  cheek: 5,
  longestLeg: 46,
  passGap: 26,
  wordRoom: 6,
  ends: 24,
}
