import type { LengthProblem } from '#shared/solve/lengthProblem.ts'
import type { LinearProgrammer } from '#shared/solve/linearProgrammer.ts'
import { solveLengths } from '#shared/solve/solveLengths.ts'
import { tradeOff } from '#shared/solve/tradeOff.ts'
import { loadHighs } from '../../src-main/headless/loadHighs.ts'
import { manyValves } from '../shared/solve/manyValves.ts'
import { plainOf } from '../shared/solve/plainProblem.ts'
import { type Figure, medianMs } from './figure.ts'

/** Measures the solver: medians of warm runs in this process, each from the design's exact loops. */
export async function measureSolve(): Promise<readonly Figure[]> {
  const begun = performance.now()
  const programmer = await loadHighs()
  const loading = performance.now() - begun
  const figure = (name: string, value: number, target: number | null = null): Figure => ({
    name,
    value,
    unit: 'ms',
    target,
  })
  const seven = (objective: LengthProblem['objective']) => plainOf(7, objective)
  return [
    figure('solver loaded', loading),
    figure('rms, 127 fingerings, 7 loops', solveMs(30, seven('rms'), programmer), 5),
    figure('largest, 127 fingerings, 7 loops', solveMs(30, seven('largest'), programmer), 30),
    figure('trade-off of 9 points, 127 fingerings, 7 loops', tradeOffMs(seven('rms'), programmer)),
    figure('rms, 1270 notes, 7 loops', solveMs(15, tenNotesEach(seven('rms')), programmer)),
    figure('largest, 1270 notes, 7 loops', solveMs(15, tenNotesEach(seven('largest')), programmer)),
    figure('rms, 1023 fingerings, 70 loops', solveMs(5, manyValves(10, 70, 'rms'), programmer)),
    figure('largest, 1023 fingerings, 70 loops', solveMs(5, manyValves(10, 70, 'largest'), programmer)),
    figure('rms, 4095 fingerings, 200 loops', solveMs(1, manyValves(12, 200, 'rms'), programmer)),
    figure('largest, 4095 fingerings, 200 loops', solveMs(1, manyValves(12, 200, 'largest'), programmer)),
  ]
}

/** Ten times the rows: each fingering at ten harmonics, with their offsets from the tempered scale. */
function tenNotesEach(problem: LengthProblem): LengthProblem {
  const offsets = [0, 2, 0, -14, 2, -31, 0, 4, -14, -49]
  const rows = problem.rows.flatMap((row) =>
    offsets.map((offsetCents, at) => ({ ...row, name: `${row.name}/${at + 2}`, offsetCents })),
  )
  return { ...problem, rows }
}

function solveMs(runs: number, problem: LengthProblem, programmer: LinearProgrammer): number {
  return medianMs(runs, () => solveWhole(problem, programmer), Math.min(runs - 1, 20))
}

/** A problem left unsolved is not a figure. */
function solveWhole(problem: LengthProblem, programmer: LinearProgrammer): void {
  const answer = solveLengths(problem, programmer)
  if (answer.status !== 'converged') throw new Error(`${problem.rows.length} rows: ${answer.status}`)
}

function tradeOffMs(problem: LengthProblem, programmer: LinearProgrammer): number {
  const begun = performance.now()
  const answer = tradeOff(problem, 9, programmer)
  const taken = performance.now() - begun
  if (answer.status !== 'converged') throw new Error(`trade-off: ${answer.status}`)
  return taken
}
