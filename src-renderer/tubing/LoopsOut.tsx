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
import { copyTable } from '../tables/copyTable.ts'
import { loopsTable } from '../tables/loopsTable.ts'
import { loopsInWords } from '../words/loopsIn.ts'
import { tableWords } from '../words/table.ts'
import { titles } from '../words/tableHeadings.ts'
import { tubingWords as words } from '../words/tubing.ts'

/** The loops of a design taken along: copied, as a table, as a drawing to scale; and loops taken in from a table. */
export const LoopsOut = memo(function LoopsOut({ design }: { readonly design: Design }): ReactNode {
  const unit = useSettings((settings) => settings.unit)
  const name = titles.loops(design.name)
  const drawn = () => tubingDrawing(design.name, design.loops, design.instrument.boreDiameterMm)
  const keep = (ending: string, mediaType: string, content: string): void =>
    void keepExport({ name: `${name}.${ending}`, mediaType, content })
  const none = design.loops.length === 0
  const copy = (): void => {
    if (!copyTable(loopsTable(design, unit)))
      useFile.setState({ trouble: { title: name, message: tableWords.notCopied } })
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
          act: () => keep('csv', 'text/csv;charset=utf-8', csvText(loopsTable(design, unit))),
        },
        { text: words.svg, off: none, act: () => keep('svg', 'image/svg+xml', svgText(drawn())) },
        { text: words.dxf, off: none, act: () => keep('dxf', 'image/vnd.dxf', dxfText(drawn())) },
      ]}
    />
  )
})
