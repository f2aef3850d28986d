import type { Design, Workbook } from '../workbook.ts'

/** A named change of the workbook: a pure function, with what undo makes of it. */
export interface Command {
  /** As the menu says it after "Undo": `Third loop length`. */
  readonly name: string
  /**
   * `record`: a step of its own. `coalesce`: joins the step before it when that has the same `burst`, as while
   * dragging or typing.
   */
  readonly undo: 'record' | 'coalesce'
  /** What is being changed; commands of one burst make one step. */
  readonly burst?: string
  readonly apply: (workbook: Workbook) => Workbook
}

/** A command that is a step of its own. */
export function recorded(name: string, apply: (workbook: Workbook) => Workbook): Command {
  return { name, undo: 'record', apply }
}

/** A command that joins the step before it while the same thing is being changed. */
export function coalesced(name: string, burst: string, apply: (workbook: Workbook) => Workbook): Command {
  return { name, undo: 'coalesce', burst, apply }
}

/** The workbook with one design changed; the same workbook when no design has that id or nothing changed. */
export function withDesign(
  workbook: Workbook,
  designId: string,
  change: (design: Design) => Design,
): Workbook {
  let changed = false
  const designs = workbook.designs.map((design) => {
    if (design.id !== designId) return design
    const next = change(design)
    changed ||= next !== design
    return next
  })
  return changed ? { ...workbook, designs } : workbook
}

/** The list with one item moved by `by` places, kept within the list. */
export function moved<T>(items: readonly T[], from: number, by: number): readonly T[] {
  const to = Math.min(items.length - 1, Math.max(0, from + by))
  if (from < 0 || from >= items.length || to === from) return items
  const rest = items.filter((_, i) => i !== from)
  return [...rest.slice(0, to), items[from]!, ...rest.slice(to)]
}

/** The object with an optional key set, or left out when the value is `undefined`. */
export function withOptional<T extends object, K extends keyof T>(
  object: T,
  key: K,
  value: T[K] | undefined,
): T {
  if (value !== undefined) return { ...object, [key]: value }
  const { [key]: _gone, ...rest } = object
  return rest as T
}
