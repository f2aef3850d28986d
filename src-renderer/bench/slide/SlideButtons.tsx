import type { ReactNode } from 'react'
import { dxfText } from '#shared/bench/drawing/dxf.ts'
import { svgText } from '#shared/bench/drawing/svg.ts'
import { templateDrawing } from '#shared/bench/drawing/template.ts'
import type { SizedSlide } from '#shared/bench/slide/sizeSlide.ts'
import { slideDrawing } from '#shared/bench/slide/slideDrawing.ts'
import { keepExport } from '../../bridge/keepExport.ts'
import { Actions } from '../../fields/Actions.tsx'
import { slideWords } from '../../words/benchSlide.ts'
import { templateWords as words } from '../../words/template.ts'
import { PrintButtons } from '../sheet/PrintButtons.tsx'
import { printInstead } from '../sheet/paper.ts'
import { mostSheets, Template, templateLayout } from '../sheet/Template.tsx'

interface SlideButtonsProps {
  readonly name: string
  readonly title: string
  readonly sized: SizedSlide
}

/** What can be taken to the bench: the sheet, the drawing in a file, the template at full size. */
export function SlideButtons({ name, title, sized }: SlideButtonsProps): ReactNode {
  const drawing = slideDrawing(sized, title)
  const template = templateDrawing(drawing)
  const layout = templateLayout(template)
  const sheets = layout.tiling?.tiles.length ?? 1
  const printTemplate = (): void =>
    void printInstead(<Template template={template} layout={layout} />, {
      to: 'printer',
      name: words.name(name),
      landscape: layout.landscape,
      notPrinted: words.notPrinted,
    })
  return (
    <div className="jobButtons">
      <PrintButtons name={name} />
      <Actions
        label={slideWords.drawingMenu}
        text={slideWords.drawingShown}
        items={[
          {
            text: slideWords.drawingSvg,
            act: () =>
              keepExport({ name: `${name}.svg`, mediaType: 'image/svg+xml', content: svgText(drawing) }),
          },
          {
            text: slideWords.drawingDxf,
            act: () =>
              keepExport({
                name: `${name}.dxf`,
                mediaType: 'image/vnd.dxf',
                // Such a file says of itself that it is in millimetres.
                content: dxfText(slideDrawing({ ...sized, unit: 'mm' }, title)),
              }),
          },
          {
            text: slideWords.templateSvg,
            act: () =>
              keepExport({
                name: slideWords.templateFile(name),
                mediaType: 'image/svg+xml',
                content: svgText(template),
              }),
          },
          {
            text: templateText(sheets),
            off: sheets > mostSheets,
            act: printTemplate,
          },
        ]}
      />
    </div>
  )
}

function templateText(sheets: number): string {
  if (sheets === 1) return words.print
  return sheets > mostSheets ? words.tooMany(sheets) : words.printOn(sheets)
}
