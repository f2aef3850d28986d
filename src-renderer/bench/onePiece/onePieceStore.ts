import { create } from 'zustand'
import { forgetWithWorkbook } from '../../state/perWorkbook.ts'

/** The one piece that could be measured, as typed; kept while the workbook is shown, in no file. */
export interface OnePieceTyped {
  readonly kind: 'loop' | 'bore' | 'fundamental'
  /** `null` for the design's first valve with a drop. */
  readonly valveId: string | null
  /** `null` for the design's own figure. */
  readonly loopMm: number | null
  readonly boreMm: number | null
  readonly correctionMm: number | null
  readonly fundamentalHz: number | null
}

const fresh: OnePieceTyped = {
  kind: 'loop',
  valveId: null,
  loopMm: null,
  boreMm: null,
  correctionMm: null,
  fundamentalHz: null,
}

export const useOnePiece = create<OnePieceTyped>()(() => fresh)

forgetWithWorkbook(() => useOnePiece.setState(fresh))
