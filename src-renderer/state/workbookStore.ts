import { temporal } from 'zundo'
import { create } from 'zustand'
import type { Command } from '#shared/workbook/commands/command.ts'
import type { Failure } from '#shared/workbook/failure.ts'
import { brokenRule } from '#shared/workbook/rules.ts'
import type { Design, Workbook } from '#shared/workbook/workbook.ts'

/** The open workbook and the name of the step that made it what it is. Undo keeps past and future values of both. */
export interface WorkbookState {
  readonly workbook: Workbook | null
  readonly step: string | null
}

export const useWorkbook = create<WorkbookState>()(
  temporal((): WorkbookState => ({ workbook: null, step: null }), {
    limit: 500,
    equality: (past, present) => past.workbook === present.workbook,
  }),
)

/** A design as it is at this moment: a drag may be ahead of what is drawn. */
export function presentDesign(designId: string): Design | undefined {
  return useWorkbook.getState().workbook?.designs.find(({ id }) => id === designId)
}

/** A pause longer than this ends a burst of typing, ms. */
const burstPauseMs = 1500

let burst: { readonly key: string; readonly at: number } | null = null

/**
 * Carries out a command on the open workbook. A result that breaks a rule of the file is refused and nothing
 * changes.
 *
 * @returns the rule that the result would break, or `null`
 */
export function run(command: Command): Failure | null {
  const { workbook } = useWorkbook.getState()
  if (workbook === null) return null
  const next = command.apply(workbook)
  if (next === workbook) return null
  const broken = brokenRule(next)
  if (broken !== null) return broken
  const joins = command.undo === 'coalesce' && continues(command.burst ?? command.name)
  const history = useWorkbook.temporal.getState()
  if (joins) history.pause()
  useWorkbook.setState({ workbook: next, step: command.name })
  if (joins) history.resume()
  burst = command.undo === 'coalesce' ? { key: command.burst ?? command.name, at: Date.now() } : null
  return null
}

function continues(key: string): boolean {
  return burst !== null && burst.key === key && Date.now() - burst.at < burstPauseMs
}

/** Ends a drag or a burst of typing: what follows is a step of its own. */
export function endBurst(): void {
  burst = null
}

/** Shows another workbook; there is nothing to undo in it yet. */
export function showWorkbook(workbook: Workbook | null): void {
  endBurst()
  useWorkbook.setState({ workbook, step: null })
  useWorkbook.temporal.getState().clear()
}

/** Takes the last step back. */
export function undo(): void {
  endBurst()
  useWorkbook.temporal.getState().undo()
}

/** How many steps can be taken back. */
export function stepsDone(): number {
  return useWorkbook.temporal.getState().pastStates.length
}

/**
 * Drops the steps after the first `done`, as if they had never been: what was typed and then thought better of is
 * nothing to undo or redo.
 *
 * @returns whether there were any
 */
export function dropStepsAfter(done: number): boolean {
  const { pastStates, undo: back } = useWorkbook.temporal.getState()
  const steps = pastStates.length - done
  if (steps <= 0) return false
  endBurst()
  back(steps)
  useWorkbook.temporal.setState({ futureStates: [] })
  return true
}

/** Does the step again that was taken back last. */
export function redo(): void {
  endBurst()
  useWorkbook.temporal.getState().redo()
}
