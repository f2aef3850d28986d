/** One step of the file's history: turns a value of version `from` into one of the next version. */
export interface Migration {
  readonly from: number
  readonly change: (value: Readonly<Record<string, unknown>>) => Readonly<Record<string, unknown>>
}

/** The steps from the oldest version to the present one, in order. Version 1 is the first. */
export const migrations: readonly Migration[] = []

/**
 * Brings a value of an older version up to `to`, one numbered step after the other; each step's result carries
 * its new version number.
 *
 * @returns the value at version `to`, or `null` when a step is missing
 */
export function migrate(
  value: Readonly<Record<string, unknown>>,
  from: number,
  to: number,
  steps: readonly Migration[] = migrations,
): Readonly<Record<string, unknown>> | null {
  let present = value
  for (let version = from; version < to; version++) {
    const step = steps.find((each) => each.from === version)
    if (step === undefined) return null
    present = { ...step.change(present), version: version + 1 }
  }
  return present
}
