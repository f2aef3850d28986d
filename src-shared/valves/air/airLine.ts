import type { AirLayout, DrawnPoint } from './airLayout.ts'
import type { AirPassage } from './airPath.ts'

/** A stretch of the drawn air: along a loop's two legs, or between loops. */
export interface AirStretch {
  /** Id of the loop; `null` between loops. */
  readonly loop: string | null
  readonly points: readonly DrawnPoint[]
}

/**
 * The drawn line of the air through a layout, from the mouthpiece's end to the bell's, as stretches that join end
 * to end: one for each loop of the way, in the order in which the air meets them.
 *
 * @param path from `airPath` of the plan that the layout was drawn from
 * @throws RangeError when the path goes through a loop that is not drawn
 * @example airLine(layout, airPath(plan, 0b101)).flatMap(({ loop }) => loop ?? []) // ['L1', 'L3', 'C1']
 */
export function airLine(layout: AirLayout, path: readonly AirPassage[]): readonly AirStretch[] {
  const stretches: AirStretch[] = []
  let line: DrawnPoint[] = [{ x: 0, y: layout.lines[0]! }]
  let pass = 0
  for (const [i, passage] of path.entries()) {
    if (passage.pass > pass) {
      line.push(...turnBack(layout, pass, passage.pass))
      pass = passage.pass
    }
    for (const id of passage.loops) {
      const { points } = drawnLoop(layout, id)
      stretches.push({ loop: null, points: [...line, points[0]] }, { loop: id, points })
      line = [points[3]]
    }
    if (pass > 0 && path[i + 1]?.pass !== pass) {
      line.push(...leaveBlock(layout, pass, path[i + 1]?.pass ?? 0))
      if ((path[i + 1]?.pass ?? 0) === 0) pass = 0
    }
  }
  return [...stretches, { loop: null, points: [...line, { x: layout.width, y: layout.lines[0]! }] }]
}

function drawnLoop(layout: AirLayout, id: string) {
  const drawn = layout.loops.find(({ loop }) => loop.id === id)
  if (drawn === undefined) throw new RangeError(`no loop ${id} is drawn`)
  return drawn
}

/** From the end of one passage back ahead of the first valve, at the line of the next. */
function turnBack({ lines, turn, measures }: AirLayout, from: number, to: number): readonly DrawnPoint[] {
  const between = lines[to]! - 0.36 * measures.passGap
  return [
    { x: turn.back, y: lines[from]! },
    { x: turn.back, y: between },
    { x: turn.again, y: between },
    { x: turn.again, y: lines[to]! },
  ]
}

/** From the end of the last passage up to the line that leads on; nothing when another passage follows. */
function leaveBlock({ lines, turn }: AirLayout, pass: number, next: number): readonly DrawnPoint[] {
  if (next > pass) return []
  return [
    { x: turn.out, y: lines[pass]! },
    { x: turn.out, y: lines[0]! },
  ]
}

/**
 * A line through points as an SVG path, its corners rounded with radius `bow`, or less where a side is short.
 *
 * @example roundedPath([{ x: 0, y: 0 }, { x: 10, y: 0 }, { x: 10, y: 10 }], 2) // 'M0 0L8 0Q10 0 10 2L10 10'
 */
export function roundedPath(points: readonly DrawnPoint[], bow: number): string {
  const turns = withoutRepeats(points)
  return turns
    .map((point, i) => {
      if (i === 0) return `M${place(point)}`
      const after = turns[i + 1]
      if (after === undefined) return `L${place(point)}`
      const before = turns[i - 1]!
      const radius = Math.min(bow, distance(before, point) / 2, distance(point, after) / 2)
      return `L${place(toward(point, before, radius))}Q${place(point)} ${place(toward(point, after, radius))}`
    })
    .join('')
}

function withoutRepeats(points: readonly DrawnPoint[]): readonly DrawnPoint[] {
  return points.filter((point, i) => i === 0 || distance(point, points[i - 1]!) > 1e-9)
}

function distance(a: DrawnPoint, b: DrawnPoint): number {
  return Math.hypot(a.x - b.x, a.y - b.y)
}

function toward(from: DrawnPoint, to: DrawnPoint, by: number): DrawnPoint {
  const share = by / distance(from, to)
  return { x: from.x + share * (to.x - from.x), y: from.y + share * (to.y - from.y) }
}

function place({ x, y }: DrawnPoint): string {
  return `${Number(x.toFixed(2))} ${Number(y.toFixed(2))}`
}
