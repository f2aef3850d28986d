import type { LengthProblem, SolverLoop, SolverRow } from '#shared/solve/lengthProblem.ts'

/** Nominal drops of valves 1, 2, 3 and so on. */
export const usualDrops = [2, 1, 3, 5, 4, 6, 7] as const

/** The exact length of a loop of k semitones taken alone. */
export function exactLoop(openLengthMm: number, semitones: number): number {
  return openLengthMm * (2 ** (semitones / 12) - 1)
}

/** A fingering of a plain design, by its name: `0`, `2`, `1-3`. */
export function plainRow(name: string): SolverRow {
  const pressed = name === '0' ? [] : name.split('-').map(Number)
  return {
    name,
    semitones: pressed.reduce((sum, valve) => sum + usualDrops[valve - 1]!, 0),
    loops: pressed.map((valve) => `L${valve}`),
  }
}

export const sevenFingerings = ['1', '2', '3', '1-2', '1-3', '2-3', '1-2-3'] as const
export const thirdAloneLeftOut = sevenFingerings.filter((name) => name !== '3')

export function freeLoop(id: string, lengthMm = 200): SolverLoop {
  return { id, lengthMm, freedom: { kind: 'free' } }
}

/** Three free loops of a plain design whose open route is 2000 mm long. */
export function plainThree(
  fingerings: readonly string[],
  objective: LengthProblem['objective'],
  changes: Partial<LengthProblem> = {},
): LengthProblem {
  return {
    openLengthMm: 2000,
    open: { kind: 'held' },
    loops: ['L1', 'L2', 'L3'].map((id) => freeLoop(id)),
    rows: fingerings.map(plainRow),
    objective,
    ...changes,
  }
}

/** A plain design of `valves` valves with every fingering but the open one. */
export function plainOf(valves: number, objective: LengthProblem['objective']): LengthProblem {
  const all = Array.from({ length: valves }, (_, at) => at + 1)
  const rows = Array.from({ length: 2 ** valves - 1 }, (_, at) =>
    plainRow(all.filter((valve) => ((at + 1) >> (valve - 1)) & 1).join('-')),
  )
  const loops = all.map((valve) => freeLoop(`L${valve}`, exactLoop(2000, usualDrops[valve - 1]!)))
  return { openLengthMm: 2000, open: { kind: 'held' }, loops, rows, objective }
}
