import { create } from 'zustand'
import { forgetWithWorkbook } from '../state/perWorkbook.ts'

/** The pictures of a bore. */
export type BorePicture = 'models' | 'impedance' | 'fundamental' | 'groupLength' | 'sum'

/** How bores are looked at: outside the workbook, and not undone. */
export interface BoreView {
  readonly picture: BorePicture
  readonly showTable: boolean
  /** Drawing of the bore: to scale, or with its diameters stretched. */
  readonly stretched: boolean
  /** The section that is marked in the drawing and in the list. */
  readonly section: number | null
  /** Fingerings laid over each other, by design; the first and the last of those listed when there is none. */
  readonly shown: ReadonlyMap<string, readonly string[]>
  readonly which: 'usual' | 'all'
  /** Modes from the first to the last are shown in the pictures by mode. */
  readonly firstMode: number
  readonly lastMode: number
  /** In the picture of both models: each against the target, or only how they differ. */
  readonly against: 'target' | 'lengthModel'
  readonly peakFigure: 'hz' | 'height' | 'width'
}

const fresh: BoreView = {
  picture: 'models',
  showTable: false,
  stretched: false,
  section: null,
  shown: new Map(),
  which: 'usual',
  firstMode: 2,
  lastMode: 8,
  against: 'target',
  peakFigure: 'hz',
}

export const useBoreView = create<BoreView>()(() => fresh)

/** Unit of the numbers of a measured profile; `auto` where its headings or sizes say it. */
export type ProfileUnit = 'auto' | 'mm' | 'in'

const emptyProfile = { text: '', readIn: 'auto' } as const

/** A measured profile as it was typed or pasted, until it is taken. */
export const useProfileText = create<{ readonly text: string; readonly readIn: ProfileUnit }>()(
  () => emptyProfile,
)

/** The profile was taken: there is nothing more to type about it. */
export function clearProfileText(): void {
  useProfileText.setState(emptyProfile)
}

forgetWithWorkbook(() => {
  useBoreView.setState({ section: null, shown: new Map() })
  clearProfileText()
})

/** Fingerings that can be laid over each other. */
export const mostShown = 8

/** Lays a fingering over the others, or takes it away; the last one stays. */
export function toggleShown(designId: string, present: readonly string[], name: string): void {
  const without = present.filter((each) => each !== name)
  const next = without.length < present.length ? without : [...present, name]
  if (next.length === 0 || next.length > mostShown) return
  useBoreView.setState(({ shown }) => ({ shown: new Map(shown).set(designId, next) }))
}
