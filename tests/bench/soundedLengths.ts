import { chosenProblem } from '#shared/solve/lengthChoices.ts'
import type { LengthObjective, LengthProblem } from '#shared/solve/lengthProblem.ts'
import type { LinearProgrammer } from '#shared/solve/linearProgrammer.ts'
import { solveSounding } from '#shared/solve/solveSounding.ts'
import { tuningTables } from '#shared/tuning/tables.ts'
import { boreInput } from '#shared/workbook/boreInput.ts'
import { boreSounding } from '#shared/workbook/boreSounding.ts'
import { examples } from '#shared/workbook/examples/examples.ts'
import { instrumentOf } from '#shared/workbook/instrumentOf.ts'
import type { Workbook } from '#shared/workbook/workbook.ts'
import { loadHighs } from '../../src-main/headless/loadHighs.ts'
import { boreWorkbook } from '../fixtures/boreWorkbook.ts'
import { exampleWorkbook } from '../fixtures/exampleFiles.ts'
import { demand } from '../shared/bore/bores.ts'
import { type Figure, medianMs } from './figure.ts'

const runs = 9

/** Measures lengths found for the resonances, the bore's sampling included: medians of warm runs, modes 2 to 8. */
export async function measureSoundedLengths(): Promise<readonly Figure[]> {
  const programmer = await loadHighs()
  const bass = exampleWorkbook(examples[0]!)
  const figure = (name: string, workbook: Workbook, objective: LengthObjective): Figure => ({
    name,
    value: solveMs(workbook, objective, programmer),
    unit: 'ms',
    target: null,
  })
  return [
    figure('resonances, rms, 8 fingerings, 3 loops', boreWorkbook(), 'rms'),
    figure('resonances, largest, 8 fingerings, 3 loops', boreWorkbook(), 'largest'),
    figure('resonances, rms, 16 fingerings, 4 loops', bass, 'rms'),
    figure('resonances, largest, 16 fingerings, 4 loops', bass, 'largest'),
  ]
}

function problemOf(workbook: Workbook, objective: LengthObjective): LengthProblem {
  const design = workbook.designs[0]!
  const { mainSlide, fingerings } = tuningTables(instrumentOf(workbook, design))
  const problem = chosenProblem(
    { openLengthMm: mainSlide.inTuneOpenMm, valves: design.valves, loops: design.loops, fingerings },
    { objective, open: { kind: 'held' }, freedoms: new Map(), weights: new Map(), slides: [] },
  )
  if ('refusals' in problem) throw new Error('The bench asked for what is refused.')
  return problem
}

function solveMs(workbook: Workbook, objective: LengthObjective, programmer: LinearProgrammer): number {
  const problem = problemOf(workbook, objective)
  const input = boreInput(workbook, workbook.designs[0]!)!
  const once = (): void => {
    const answer = solveSounding(problem, demand(boreSounding(input, problem)), programmer)
    if (answer.status !== 'converged') throw new Error(`resonances, ${objective}: ${answer.status}`)
  }
  return medianMs(runs, once, 3)
}
