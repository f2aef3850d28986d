import { type KeyboardEvent, type ReactNode, useEffect, useRef } from 'react'
import { inksAt } from '../../curves/inkOfTheme.ts'
import { useTheme } from '../../look/useTheme.ts'
import { onLightPaper } from '../../picture/lightPaper.ts'
import { PictureOut } from '../../picture/PictureOut.tsx'
import 'uplot/dist/uPlot.min.css'
import { useWidth } from '../../look/useWidth.ts'
import { boreWords } from '../../words/bore.ts'
import { type LinePlot, mountLinePlot } from './linePlot.ts'
import { linePlotSvg } from './linePlotSvg.ts'
import type { PlotModel } from './plotModel.ts'

interface LinePlotViewProps {
  readonly model: PlotModel
  /** Of the picture when it is saved. */
  readonly title: string
  readonly height: number
  readonly label: string
  readonly pointedHz: number | null
  readonly point: (hz: number | null) => void
}

/** Least width of a saved picture, px. */
const leastPicturePx = 720

/** Room that the figures along the axis take of a plot's height, px. */
const figuresPx = 54

/** A plot over frequency with its size, theme, pointer and keyboard. */
export function LinePlotView(props: LinePlotViewProps): ReactNode {
  const { model, title, height, label, pointedHz, point } = props
  const [frame, width] = useWidth<HTMLDivElement>()
  const host = useRef<HTMLDivElement>(null)
  const plot = useRef<LinePlot>(null)
  const theme = useTheme()
  const latest = useRef(model)
  latest.current = model
  const shape = JSON.stringify([model.axisName, model.lines.map(({ key, series }) => [key, series])])

  // biome-ignore lint/correctness/useExhaustiveDependencies: the shape stands for the model's lines
  useEffect(() => {
    const element = host.current
    if (element === null || width === 0) return
    const mounted = mountLinePlot(element, latest.current, inksAt(element), { width, height })
    plot.current = mounted
    return () => {
      plot.current = null
      mounted.destroy()
    }
  }, [shape, theme, width, height])
  useEffect(() => plot.current?.update(model, pointedHz), [model, pointedHz])

  const key = (event: KeyboardEvent): void => {
    if (event.key === 'Escape') point(null)
    const to = steppedHz(model, pointedHz, event.key)
    if (to === null) return
    event.preventDefault()
    point(to)
  }
  const drawn = (): string => {
    const size = { title, widthPx: Math.max(width, leastPicturePx), plotPx: height - figuresPx }
    return onLightPaper(() => linePlotSvg(model, inksAt(host.current ?? document.body), size))
  }
  return (
    <PictureOut name={title} svg={drawn}>
      <div className="boreChart" ref={frame} style={{ height }}>
        {/* biome-ignore lint/a11y/useSemanticElements: a chart is no fieldset */}
        <div
          className="linePlot"
          ref={host}
          role="group"
          aria-roledescription={boreWords.chart}
          aria-label={label}
          // biome-ignore lint/a11y/noNoninteractiveTabindex: its peaks are read with the keyboard
          tabIndex={0}
          style={{ height }}
          onKeyDown={key}
          onBlur={() => point(null)}
          onPointerMove={(event) => point(plot.current?.hzAt(event.clientX) ?? null)}
          onPointerLeave={() => point(null)}
        />
      </div>
    </PictureOut>
  )
}

/** The marked frequency that an arrow key leads to; `null` for other keys and beyond the last. */
function steppedHz({ marks }: PlotModel, from: number | null, key: string): number | null {
  const hz = marks.map((mark) => mark.hz).sort((a, b) => a - b)
  switch (key) {
    case 'ArrowRight':
      return hz.find((each) => each > (from ?? 0) + 1e-9) ?? null
    case 'ArrowLeft':
      return hz.findLast((each) => each < (from ?? Number.POSITIVE_INFINITY) - 1e-9) ?? null
    case 'Home':
      return hz[0] ?? null
    case 'End':
      return hz.at(-1) ?? null
    default:
      return null
  }
}
