import type { ReactNode } from 'react'
import { dxfText } from '#shared/bench/drawing/dxf.ts'
import { svgText } from '#shared/bench/drawing/svg.ts'
import { templateDrawing } from '#shared/bench/drawing/template.ts'
import type { SizedSlide } from '#shared/bench/slide/sizeSlide.ts'
import { slideDrawing } from '#shared/bench/slide/slideDrawing.ts'
import { Actions } from '../../fields/Actions.tsx'
import { keepExport } from '../sheet/keepExport.ts'
import { PrintButtons } from '../sheet/PrintButtons.tsx'
import { printTemplate, templateFits } from '../sheet/paper.ts'
import { Template } from '../sheet/Template.tsx'

interface SlideButtonsProps {
  readonly name: string
  readonly title: string
  readonly sized: SizedSlide
}

/** What can be taken to the bench: the sheet, the drawing in a file, the template at full size. */
export function SlideButtons({ name, title, sized }: SlideButtonsProps): ReactNode {
  const drawing = slideDrawing(sized, title)
  const template = templateDrawing(drawing)
  const fits = templateFits(template)
  return (
    <div className="jobButtons">
      <PrintButtons name={name} />
      <Actions
        label="Drawing and template"
        text="Drawing ▾"
        items={[
          {
            text: 'Drawing as SVG',
            act: () =>
              keepExport({ name: `${name}.svg`, mediaType: 'image/svg+xml', content: svgText(drawing) }),
          },
          {
            text: 'Drawing as DXF',
            act: () =>
              keepExport({ name: `${name}.dxf`, mediaType: 'image/vnd.dxf', content: dxfText(drawing) }),
          },
          {
            text: 'Template 1 : 1 as SVG',
            act: () =>
              keepExport({
                name: `${name}, template.svg`,
                mediaType: 'image/svg+xml',
                content: svgText(template),
              }),
          },
          {
            text: fits === null ? 'Template 1 : 1, too large for the paper' : 'Print template 1 : 1',
            off: fits === null,
            act: () => void printTemplate(template, `${name}, template`, fits ?? 'portrait'),
          },
        ]}
      />
      <Template />
    </div>
  )
}
