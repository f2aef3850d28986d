import type { LengthProblem } from '#shared/solve/lengthProblem.ts'
import { exactLoop, freeLoop } from './plainProblem.ts'

const drops = [2, 1, 3, 5, 6, 4, 7, 8, 9, 10, 11, 12] as const

/** Every fingering of many valves; a free loop for each valve, then for each two and each three until there are `loopCount`. */
export function manyValves(
  valveCount: number,
  loopCount: number,
  objective: LengthProblem['objective'],
): LengthProblem {
  const gates = gatesOf(valveCount).slice(0, loopCount)
  const rows = Array.from({ length: 2 ** valveCount - 1 }, (_, at) => {
    const isDown = (valve: number) => (((at + 1) >> valve) & 1) === 1
    return {
      name: String(at + 1),
      semitones: drops.reduce((sum, drop, valve) => sum + (isDown(valve) ? drop : 0), 0),
      loops: gates.flatMap((gate, loop) => (gate.every(isDown) ? [`L${loop}`] : [])),
    }
  })
  const loops = gates.map((gate, at) =>
    freeLoop(`L${at}`, gate.length === 1 ? exactLoop(2000, drops[gate[0]!]!) : 20),
  )
  return { openLengthMm: 2000, open: { kind: 'held' }, loops, rows, objective }
}

function gatesOf(valveCount: number): readonly (readonly number[])[] {
  const valves = Array.from({ length: valveCount }, (_, at) => at)
  const after = (first: number) => valves.filter((valve) => valve > first)
  const twos = valves.flatMap((a) => after(a).map((b) => [a, b]))
  return [...valves.map((a) => [a]), ...twos, ...twos.flatMap(([a, b]) => after(b!).map((c) => [a!, b!, c]))]
}
