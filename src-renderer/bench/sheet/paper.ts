import { flushSync } from 'react-dom'
import { create } from 'zustand'
import type { Drawing } from '#shared/bench/drawing/drawing.ts'
import { bridge } from '../../bridge/bridge.ts'
import { useFile } from '../../state/fileActions.ts'
import { useBench } from '../benchStore.ts'

/** Papers in millimetres, and the margin that is left all round; the style sheet for print has the same margin. */
const papers = { A4: [210, 297], Letter: [215.9, 279.4] } as const
const marginMm = 12

/** Room for a sheet that fits both papers, mm. */
export const sheetWidthMm = papers.A4[0] - 2 * marginMm
export const sheetHeightMm = Math.floor(papers.Letter[1] - 2 * marginMm) - 2

/** What is on the paper in place of the sheet while it is printed. */
interface OnPaper {
  readonly template: Drawing | null
}

export const useOnPaper = create<OnPaper>()(() => ({ template: null }))

/** Prints the sheet that the page holds ready, or keeps it as a PDF. */
export function printSheet(to: 'printer' | 'pdf', name: string): Promise<void> {
  return print(to, name, false)
}

async function print(to: 'printer' | 'pdf', name: string, landscape: boolean): Promise<void> {
  const { paper } = useBench.getState()
  const answer = await bridge.print({ to, paper, landscape, name })
  if (answer.kind === 'failed')
    useFile.setState({ trouble: { title: 'The sheet was not printed', message: answer.message } })
}

/** How a drawing fits both papers at full size; `null` when it fits neither way. */
export function templateFits({ bounds }: Drawing): 'portrait' | 'landscape' | null {
  const [widthMm, heightMm] = [bounds.rightMm - bounds.leftMm, bounds.topMm - bounds.bottomMm]
  if (widthMm <= sheetWidthMm && heightMm <= sheetHeightMm) return 'portrait'
  return widthMm <= sheetHeightMm && heightMm <= sheetWidthMm ? 'landscape' : null
}

/** Prints a drawing at full size in place of the sheet. */
export async function printTemplate(
  template: Drawing,
  name: string,
  way: 'portrait' | 'landscape',
): Promise<void> {
  flushSync(() => useOnPaper.setState({ template }))
  try {
    await print('printer', name, way === 'landscape')
  } finally {
    useOnPaper.setState({ template: null })
  }
}
