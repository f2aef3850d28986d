/** What a command comes to: text for standard output with remarks for standard error, or a reason for refusing. */
export type Outcome =
  | { readonly kind: 'done'; readonly output: string; readonly remarks: readonly string[] }
  | { readonly kind: 'refused'; readonly reason: string }

/** One command of `ferrule`. */
export interface Command {
  /** What follows `ferrule`, for the list of commands. */
  readonly usage: string
  /** Loads what `run` cannot do without. */
  readonly ready?: () => Promise<unknown>
  readonly run: (args: readonly string[]) => Outcome
}

/** A value, or the reason why there is none. */
export type Result<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly reason: string }

export function refused(reason: string): { readonly ok: false; readonly reason: string } {
  return { ok: false, reason }
}
