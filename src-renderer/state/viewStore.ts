import { create } from 'zustand'

/** What the account panel explains. */
export type Selection =
  | { readonly kind: 'fingering'; readonly designId: string; readonly fingering: string }
  | {
      readonly kind: 'note'
      readonly designId: string
      readonly midi: number
      readonly pressed: readonly string[]
      readonly harmonic: number
    }

export type Page = 'curves' | 'fingerings' | 'lengths' | 'compare' | 'bore' | 'bench' | 'pictures'

/** How things are looked at: outside the workbook, and not undone. */
export interface ViewState {
  readonly page: Page
  readonly designId: string | null
  readonly selection: Selection | null
  readonly loopId: string | null
  readonly by: 'fingering' | 'note'
  readonly which: 'usual' | 'all'
  readonly hidden: ReadonlySet<string>
}

export const useView = create<ViewState>()(() => ({
  page: 'curves',
  designId: null,
  selection: null,
  loopId: null,
  by: 'fingering',
  which: 'usual',
  hidden: new Set<string>(),
}))

/** Selects a design; what was selected in another is let go. */
export function selectDesign(designId: string | null): void {
  useView.setState(({ selection }) => ({
    designId,
    loopId: null,
    selection: selection?.designId === designId ? selection : null,
  }))
}

/** Selects what the account explains, and its design. */
export function select(selection: Selection): void {
  useView.setState(({ designId, loopId }) => ({
    selection,
    designId: selection.designId,
    loopId: designId === selection.designId ? loopId : null,
  }))
}

/** Shows a hidden design's curve, or hides it. */
export function toggleHidden(designId: string): void {
  useView.setState(({ hidden }) => {
    const next = new Set(hidden)
    if (!next.delete(designId)) next.add(designId)
    return { hidden: next }
  })
}
