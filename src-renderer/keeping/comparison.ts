import { create } from 'zustand'
import type { Difference } from '#shared/workbook/differences/difference.ts'
import type { Workbook } from '#shared/workbook/workbook.ts'

/** Two versions of a workbook set side by side, and what can be done about them. */
export interface Comparison {
  readonly title: string
  readonly lead: string
  /** Head of the column of the version that is not the file's. */
  readonly mine: string
  /** From the file's version to the other one; `null` when the file could not be read. */
  readonly differences: readonly Difference[] | null
  /** Why the file could not be read. */
  readonly trouble: string | null
  /** The first is the one that loses nothing and is offered first. Each closes the comparison. */
  readonly choices: readonly Choice[]
}

export interface Choice {
  readonly label: string
  readonly act: () => void
}

/** The comparison that is shown, if any. */
export const useComparison = create<{ readonly shown: Comparison | null }>()(() => ({ shown: null }))

export function closeComparison(): void {
  useComparison.setState({ shown: null })
}

/** What differs from the file's version to another. The comparing itself is loaded when it is first needed. */
export async function compared(file: Workbook, mine: Workbook): Promise<readonly Difference[]> {
  const { differences } = await import('#shared/workbook/differences/differences.ts')
  return differences(file, mine)
}
