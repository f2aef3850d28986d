import { ratioOfCents } from '../pitch/cents.ts'
import type { LengthsAndErrors, RowOutcome } from './lengthAnswer.ts'
import type { PreparedProblem } from './prepareProblem.ts'
import { type ModelRow, naturalCents, routeAt } from './routeModel.ts'
import type { SoundedNote } from './sounding.ts'

/**
 * The problem with a row for each note, such that the errors at `point` and their slopes there are the notes': the model of
 * lengths with a route, and coefficients, for each note. What the solvers find in it is a step towards the answer.
 *
 * @example soundedModel(prepared, point, notes).model.rows.length
 */
export function soundedModel(
  prepared: PreparedProblem,
  point: Float64Array,
  notes: readonly SoundedNote[],
): PreparedProblem {
  const rows = notes.map((note) => noteRow(prepared, point, note))
  return { ...prepared, model: { ...prepared.model, rows }, start: point }
}

function noteRow(prepared: PreparedProblem, point: Float64Array, note: SoundedNote): ModelRow {
  const { problem, rooted, model } = prepared
  const row = model.rows[note.row]!
  const { reach } = problem.rows[note.row]!
  const route = routeAt(row, point)
  const target = route * ratioOfCents(note.cents)
  const slopes = new Map<number, number>()
  for (const [loopId, centsPerMm] of note.centsPerMm) {
    const { root, factor } = loopId === null ? { root: { id: null }, factor: 1 } : rooted.get(loopId)!
    const column = model.columns.findIndex(({ rootId }) => rootId === root.id)
    if (column >= 0) slopes.set(column, (slopes.get(column) ?? 0) + factor * centsPerMm * model.unitMm)
  }
  const columns = [...slopes.keys()].filter((column) => slopes.get(column) !== 0)
  const coefficients = columns.map((column) => (-slopes.get(column)! * route) / naturalCents)
  return {
    name: `${row.name} ${note.name}`,
    weight: row.weight * note.weight,
    offsetCents: 0,
    constant: coefficients.reduce((left, each, at) => left - each * point[columns[at]!]!, route),
    columns,
    coefficients,
    target,
    tubeOut: target * (1 - ratioOfCents(-(reach?.sharpCents ?? 0))),
    tubeIn: target * (ratioOfCents(reach?.flatCents ?? 0) - 1),
  }
}

/**
 * The outcome of a sounded model's rows gathered into the problem's: of each row the weighted mean of its notes. Its
 * target is the length that would have that error in the model of lengths. A row without notes has none.
 *
 * @example gathered(prepared, notes, found).rows[0]?.errorCents
 */
export function gathered<Found extends LengthsAndErrors>(
  { problem, model }: PreparedProblem,
  notes: readonly SoundedNote[],
  found: Found,
): Found {
  const rows = problem.rows.flatMap(({ name }, at) => {
    const own = notes.flatMap((note, i) => (note.row === at ? [{ note, outcome: found.rows[i]! }] : []))
    const sum = own.reduce((total, { note }) => total + note.weight, 0)
    if (sum === 0) return []
    const mean = (value: (outcome: RowOutcome) => number) =>
      own.reduce((total, { note, outcome }) => total + note.weight * value(outcome), 0) / sum
    const errorCents = mean((outcome) => outcome.errorCents)
    const routeLengthMm = own[0]!.outcome.routeLengthMm
    return {
      name,
      weight: model.rows[at]!.weight,
      routeLengthMm,
      targetLengthMm: routeLengthMm * ratioOfCents(errorCents),
      errorCents,
      leftCents: mean((outcome) => outcome.leftCents),
      holdsLargest: own.some(({ outcome }) => outcome.holdsLargest),
      notes: own.map(({ note, outcome: { leftCents, holdsLargest } }) => ({
        name: note.name,
        weight: note.weight,
        leftCents,
        holdsLargest,
      })),
    }
  })
  return { ...found, rows }
}
