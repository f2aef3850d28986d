import type { LinearAnswer, LinearProgram, LinearProgrammer } from './linearProgrammer.ts'

/** The part of the loaded HiGHS runtime that is used here. */
export interface HighsRuntime {
  withModel(source: HighsModelData, operation: (model: HighsModel) => LinearAnswer): LinearAnswer
}

interface HighsModelData {
  readonly numCols: number
  readonly numRows: number
  readonly colCost: readonly number[]
  readonly colLower: readonly number[]
  readonly colUpper: readonly number[]
  readonly rowLower: readonly number[]
  readonly rowUpper: readonly number[]
  readonly matrix: {
    readonly format: 'csr'
    readonly numRows: number
    readonly numCols: number
    readonly starts: readonly number[]
    readonly indices: readonly number[]
    readonly values: readonly number[]
  }
}

interface HighsModel {
  readonly options: { set(options: Readonly<Record<string, string | number | boolean>>): unknown }
  run(): unknown
  getModelStatus(): number
  getSolution(): { readonly colValue: Float64Array; readonly colDual: Float64Array }
}

/** Model states of HiGHS's C interface. */
const optimal = 7
const infeasible = 8
const unbounded = 10

/**
 * A linear programmer on a loaded HiGHS runtime. Each program has its own native model, freed before the
 * answer is handed back; the answer is the runtime's copy.
 *
 * @example const programmer = highsProgrammer(await loadHighs())
 */
export function highsProgrammer(highs: HighsRuntime): LinearProgrammer {
  return { solve: (program) => highs.withModel(modelData(program), run) }
}

function run(model: HighsModel): LinearAnswer {
  model.options.set({
    output_flag: false,
    // Programs of a few columns have nothing to presolve, and it takes as long as solving them.
    presolve: 'off',
    primal_feasibility_tolerance: 1e-9,
    dual_feasibility_tolerance: 1e-9,
  })
  model.run()
  const status = model.getModelStatus()
  if (status === infeasible) return { kind: 'infeasible' }
  if (status === unbounded) return { kind: 'unbounded' }
  if (status !== optimal) return { kind: 'failed', reason: `model status ${status}` }
  const { colValue, colDual } = model.getSolution()
  return { kind: 'optimal', columnValues: colValue, columnPulls: colDual }
}

function modelData(program: LinearProgram): HighsModelData {
  const numCols = program.columnCosts.length
  const numRows = program.rowLower.length
  return {
    numCols,
    numRows,
    colCost: program.columnCosts,
    colLower: program.columnLower,
    colUpper: program.columnUpper,
    rowLower: program.rowLower,
    rowUpper: program.rowUpper,
    matrix: {
      format: 'csr',
      numRows,
      numCols,
      starts: program.rowStarts,
      indices: program.columnIndices,
      values: program.values,
    },
  }
}
