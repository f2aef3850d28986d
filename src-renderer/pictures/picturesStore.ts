import { create } from 'zustand'
import type { Valve } from '#shared/valves/valve.ts'
import type { DerivedDesign } from '../state/derived.ts'
import { forgetWithWorkbook } from '../state/perWorkbook.ts'
import type { partWords } from '../words/pictures.ts'

export type PicturePart = keyof typeof partWords

/** How the pictures are looked at: outside the workbook, and not undone. */
export interface PicturesView {
  readonly part: PicturePart
  /** Valves pressed on the screen; `null` before any has been. */
  readonly pressed: readonly string[] | null
}

export const usePictures = create<PicturesView>()(() => ({ part: 'harmonics', pressed: null }))

forgetWithWorkbook(() => usePictures.setState({ pressed: null }))

/** The valves of a design that are pressed, in its order; at first its first and third together, if it uses them. */
export function usePressed({ design, tables }: DerivedDesign): readonly string[] {
  const pressed = usePictures((state) => state.pressed)
  if (pressed === null) return firstPressed(design.valves, tables)
  return design.valves.map(({ id }) => id).filter((id) => pressed.includes(id))
}

/** The fingering to begin with: the first and third valves, the first two of two, or none where they are not used. */
export function firstPressed(
  valves: readonly Valve[],
  { fingerings }: Pick<DerivedDesign['tables'], 'fingerings'>,
): readonly string[] {
  const pair = [valves[0], valves[2] ?? valves[1]].flatMap((valve) => valve?.id ?? [])
  const used = fingerings.some(
    ({ pressed }) => pressed.length === pair.length && pair.every((id) => pressed.includes(id)),
  )
  return used ? pair : []
}
