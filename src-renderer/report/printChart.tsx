import type { Workbook } from '#shared/workbook/workbook.ts'
import { printInstead } from '../bench/sheet/paper.ts'
import '../look/report.css'
import type { DerivedDesign } from '../state/derived.ts'
import { chartWords as words } from '../words/report.ts'
import { FingeringSheet } from './FingeringSheet.tsx'

/** Prints the fingering chart of a design on one page, or keeps it as a PDF. */
export function printChart(derived: DerivedDesign, workbook: Workbook, to: 'printer' | 'pdf'): Promise<void> {
  const sheet = (
    <div className="onPaper report">
      <FingeringSheet derived={derived} workbook={workbook} />
    </div>
  )
  const name = words.fileName(derived.design.name)
  return printInstead(sheet, { to, name, landscape: false, notPrinted: words.notPrinted })
}
