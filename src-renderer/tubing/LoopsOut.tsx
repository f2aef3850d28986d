import { memo, type ReactNode } from 'react'
import { dxfText } from '#shared/bench/drawing/dxf.ts'
import { svgText } from '#shared/bench/drawing/svg.ts'
import { tubingDrawing } from '#shared/bench/tubing/tubingDrawing.ts'
import { csvText } from '#shared/table/csv.ts'
import type { Design } from '#shared/workbook/workbook.ts'
import { keepExport } from '../bridge/keepExport.ts'
import { Actions } from '../fields/Actions.tsx'
import { openLoops } from '../loopsIn/loopsText.ts'
import { useFile } from '../state/fileActions.ts'
import { useSettings } from '../state/settings.ts'
import { presentDesign } from '../state/workbookStore.ts'
import { copyTable } from '../tables/copyTable.ts'
import { loopsTable } from '../tables/loopsTable.ts'
import { loopsInWords } from '../words/loopsIn.ts'
import { tableWords } from '../words/table.ts'
import { titles } from '../words/tableHeadings.ts'
import { tubingWords as words } from '../words/tubing.ts'

interface LoopsOutProps {
  readonly designId: string
  readonly designName: string
  readonly none: boolean
}

/**
 * The loops of a design taken along: copied, as a table, as a drawing to scale; and loops taken in from a table.
 * They are looked up when they are asked for, so that a dragged loop does not draw the menu anew.
 */
export const LoopsOut = memo(function LoopsOut({ designId, designName, none }: LoopsOutProps): ReactNode {
  const unit = useSettings((settings) => settings.unit)
  const name = titles.loops(designName)
  const design = (): Design => {
    const present = presentDesign(designId)
    if (present === undefined) throw new Error(`the design ${designId} is gone`)
    return present
  }
  const table = () => loopsTable(design(), unit)
  const drawn = () => {
    const { loops, instrument } = design()
    return tubingDrawing(designName, loops, instrument.boreDiameterMm)
  }
  const keep = (ending: string, mediaType: string, content: string): void =>
    void keepExport({ name: `${name}.${ending}`, mediaType, content })
  const copy = (): void => {
    if (!copyTable(table())) useFile.setState({ trouble: { title: name, message: tableWords.notCopied } })
  }
  return (
    <Actions
      label={words.menu}
      text={words.shown}
      items={[
        { text: loopsInWords.open, act: () => openLoops() },
        { text: words.copy, off: none, act: copy },
        {
          text: words.csv,
          off: none,
          act: () => keep('csv', 'text/csv;charset=utf-8', csvText(table())),
        },
        { text: words.svg, off: none, act: () => keep('svg', 'image/svg+xml', svgText(drawn())) },
        { text: words.dxf, off: none, act: () => keep('dxf', 'image/vnd.dxf', dxfText(drawn())) },
      ]}
    />
  )
})
