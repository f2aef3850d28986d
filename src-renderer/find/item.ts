import type { Findable } from '#shared/find/ranked.ts'
import type { findWords } from '../words/find.ts'

export type ItemKind = keyof typeof findWords.kinds

/** Something that can be found and gone to. */
export interface Item extends Findable {
  readonly kind: ItemKind
  /** Further said of it, beside its name. */
  readonly detail?: string
  readonly keys?: string | undefined
  readonly act: () => void
}
