import type { Command } from '#shared/workbook/commands/command.ts'
import type { Workbook } from '#shared/workbook/workbook.ts'

/** Steps that undo can take back, as many as the store keeps. */
export const mostSteps = 500

/**
 * What the store should hold, kept in another way: not the workbooks but the commands that made them, one list a
 * step. Steps too old to be taken back are carried out on the base for good, so that it stays as small as undo is.
 */
export class Shadow {
  private base: Workbook
  private done: Command[][] = []
  private undone: Command[][] = []

  constructor(start: Workbook) {
    this.base = start
  }

  /** A command was carried out: as a step of its own, or joined to the one before. */
  take(command: Command, joins: boolean): void {
    this.undone = joins ? this.undone : []
    const last = this.done.at(-1)
    if (joins && last !== undefined) last.push(command)
    else this.done.push([command])
    if (this.done.length <= mostSteps) return
    this.base = applied(this.base, this.done.shift()!)
  }

  undo(): void {
    const step = this.done.pop()
    if (step !== undefined) this.undone.push(step)
  }

  redo(): void {
    const step = this.undone.pop()
    if (step !== undefined) this.done.push(step)
  }

  /** The workbook made anew, by every command from the base on. */
  replayed(): Workbook {
    return this.done.reduce(applied, this.base)
  }

  /** Steps that can be taken back and done again. */
  depth(): { readonly undo: number; readonly redo: number } {
    return { undo: this.done.length, redo: this.undone.length }
  }
}

function applied(workbook: Workbook, step: readonly Command[]): Workbook {
  return step.reduce((present, command) => command.apply(present), workbook)
}
