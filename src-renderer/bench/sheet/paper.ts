import type { ReactNode } from 'react'
import { flushSync } from 'react-dom'
import { create } from 'zustand'
import { bridge } from '../../bridge/bridge.ts'
import { useFile } from '../../state/fileActions.ts'
import { takeWaitingEntries } from '../../state/waitingEntries.ts'
import { printingWords } from '../../words/benchPrinting.ts'
import { useBench } from '../benchStore.ts'

/** Papers in millimetres, and the margin that is left all round; the style sheet for print has the same margin. */
const papers = { A4: [210, 297], Letter: [215.9, 279.4] } as const
const marginMm = 12

/** Room for a sheet that fits both papers, mm. */
export const sheetWidthMm = papers.A4[0] - 2 * marginMm
export const sheetHeightMm = Math.floor(papers.Letter[1] - 2 * marginMm) - 2

/** What is on the paper in place of the sheet while it is printed. */
interface OnPaper {
  readonly instead: ReactNode | null
}

export const useOnPaper = create<OnPaper>()(() => ({ instead: null }))

/** Prints the sheet that the page holds ready, or keeps it as a PDF; not while what was typed is refused. */
export async function printSheet(to: 'printer' | 'pdf', name: string): Promise<void> {
  flushSync(takeWaitingEntries)
  if (document.querySelector('.jobPlace [aria-invalid=true]') !== null) {
    useFile.setState({ trouble: { title: printingWords.notPrinted, message: printingWords.refused } })
    return
  }
  await print({ to, name, landscape: false, notPrinted: printingWords.notPrinted })
}

/** How something is printed, and what is said when it was not. */
export interface Printing {
  readonly to: 'printer' | 'pdf'
  readonly name: string
  readonly landscape: boolean
  readonly notPrinted: string
  /** Stands at the foot of every page of a report. */
  readonly foot?: string
}

async function print({ to, name, landscape, notPrinted }: Printing): Promise<void> {
  const { paper } = useBench.getState()
  const answer = await bridge.print({ to, paper, landscape, name })
  if (answer.kind === 'failed') useFile.setState({ trouble: { title: notPrinted, message: answer.message } })
}

/** Prints something in place of the sheet; its faces are read before it is. */
export async function printInstead(instead: ReactNode, printing: Printing): Promise<void> {
  flushSync(() => useOnPaper.setState({ instead }))
  const footSheet = sheetOfFoot(printing.foot ?? '')
  document.adoptedStyleSheets = [...document.adoptedStyleSheets, footSheet]
  try {
    await document.fonts.ready
    await print(printing)
  } finally {
    document.adoptedStyleSheets = document.adoptedStyleSheets.filter((other) => other !== footSheet)
    useOnPaper.setState({ instead: null })
  }
}

/** A style sheet with the words at the foot of a report's pages, which no fixed sheet can know. */
function sheetOfFoot(foot: string): CSSStyleSheet {
  const content = foot.replace(/["\\\n\r\f]/g, (sign) => `\\${sign.charCodeAt(0).toString(16)} `)
  const sheet = new CSSStyleSheet()
  sheet.replaceSync(
    `@page report { @bottom-left { content: "${content}"; font: 8pt "IBM Plex Sans", sans-serif; color: #333 } }`,
  )
  return sheet
}
