import { type RefObject, useEffect, useLayoutEffect, useReducer } from 'react'
import { inchMm } from '#shared/quantity/units.ts'
import { sheetHeightMm } from './paper.ts'

/** Sizes of type for a sheet, points, from what is read at arm’s length to what is still read with good light. */
const sizesPt = [13, 12.5, 12, 11.5, 11, 10.5, 10, 9.5, 9, 8.5, 8, 7.5, 7, 6.5, 6]
const pxPerMm = 96 / inchMm

/** Sets a sheet as large as one page of either paper holds: in smaller type, and at last smaller altogether. */
export function useOnePage(sheet: RefObject<HTMLElement | null>): void {
  const [, anew] = useReducer((count: number) => count + 1, 0)
  useLayoutEffect(() => {
    if (sheet.current !== null) fitOnPage(sheet.current)
  })
  useEffect(() => {
    // Type that arrives late has other widths.
    document.fonts.addEventListener('loadingdone', anew)
    return () => document.fonts.removeEventListener('loadingdone', anew)
  }, [])
}

function fitOnPage(element: HTMLElement): void {
  const mostPx = sheetHeightMm * pxPerMm
  const { style } = element
  style.zoom = ''
  for (const size of sizesPt) {
    style.fontSize = `${size}pt`
    if (element.scrollHeight <= mostPx) return
  }
  // A narrower column is a longer one, so the share is tried again until it fits.
  for (let share = mostPx / element.scrollHeight; share > 0.1; share *= 0.95) {
    style.zoom = String(share)
    if (element.getBoundingClientRect().height <= mostPx) return
  }
}
