import type { ReactNode } from 'react'
import { createPortal } from 'react-dom'
import { DrawingSvg } from '../DrawingView.tsx'
import { useOnPaper } from './paper.ts'

/** A template at full size, on paper only while it is printed. */
export function Template(): ReactNode {
  const template = useOnPaper((state) => state.template)
  if (template === null) return null
  return createPortal(
    <div className="onPaper template">
      <DrawingSvg drawing={template} label={template.title} unitsPerMm={1} unit="mm" />
    </div>,
    document.body,
  )
}
