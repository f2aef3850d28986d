import type { ReactNode } from 'react'
import { lengthText } from '#shared/quantity/figures.ts'
import { airLayout, type DrawnLoop } from '#shared/valves/air/airLayout.ts'
import { airLine } from '#shared/valves/air/airLine.ts'
import type { AirPassage } from '#shared/valves/air/airPath.ts'
import type { ValvePlan } from '#shared/valves/air/valvePlan.ts'
import { loopNamed } from '#shared/valves/loop.ts'
import { lengthFigure } from '../../fields/LengthField.tsx'
import { useSettings } from '../../state/settings.ts'
import { companyWords, airWords as words } from '../../words/pictures.ts'
import { Picture } from '../Picture.tsx'
import { roundTicks } from '../roundTicks.ts'
import { AirDrawing } from './AirDrawing.tsx'
import { cut, labelLinePx, labelLines, pageMeasures } from './measures.ts'
import { pressValve } from './useValveKeys.ts'

interface AirPictureProps {
  readonly design: string
  readonly plan: ValvePlan
  readonly path: readonly AirPassage[]
  readonly pressed: readonly string[]
  readonly width: number
}

const footPx = 30

/** The whole way of the air, loops to scale and labelled with their tube. */
export function AirPicture({ design, plan, path, pressed, width }: AirPictureProps): ReactNode {
  const unit = useSettings((settings) => settings.unit)
  const { measures, upright } = pageMeasures(plan, width)
  const layout = airLayout(plan, measures, width)
  const stretches = airLine(layout, path)
  const through = path.flatMap(({ loops }) => loops)
  const inRoute = new Set(through)
  const loops = plan.placed.map(({ loop }) => loop)
  const names = through.map((id) => loopNamed(loops, id))
  const fingering = pressed.length === 0 ? words.open : pressed.join('-')
  const height = Math.ceil(layout.height) + footPx
  return (
    <Picture
      name="air"
      title={words.title(fingering, design)}
      description={words.describe(
        through.length === 0 ? words.straight : words.through(companyWords.and(names)),
      )}
      width={Math.ceil(layout.width)}
      height={height}
    >
      <AirDrawing
        layout={layout}
        stretches={stretches}
        strokes={{ tube: 11, air: 5 }}
        named
        valves={plan.valves.map(({ id }) => ({
          id,
          isDown: pressed.includes(id),
          press: () => pressValve(pressed, id),
        }))}
      />
      {layout.loops.map((drawn) => (
        <LoopLabel
          key={drawn.loop.id}
          drawn={drawn}
          length={lengthFigure(drawn.loop.lengthMm, unit)}
          casing={drawn.up ? layout.casingTop : layout.casingFoot}
          upright={upright}
          on={inRoute.has(drawn.loop.id)}
        />
      ))}
      {layout.loops.length === 0 ? null : (
        <ScaleBar y={height - 12} pxPerMm={2 * layout.legPerMm} unit={unit} />
      )}
    </Picture>
  )
}

interface LoopLabelProps {
  readonly drawn: DrawnLoop
  readonly length: string
  /** Edge of the casings on the loop's side, beyond which a label stands. */
  readonly casing: number
  readonly upright: boolean
  readonly on: boolean
}

/** The name of a loop and its tube, beyond its bow. */
function LoopLabel({ drawn, length, casing, upright, on }: LoopLabelProps): ReactNode {
  const { points, up, loop } = drawn
  const x = (points[1].x + points[2].x) / 2
  const tip = (up ? Math.min : Math.max)(points[1].y, casing)
  const whole = loop.name ?? loop.id
  const ink = on ? { fill: 'var(--ink)', fontWeight: 600 } : { fill: 'var(--soft)' }
  if (upright) {
    const y = up ? tip - 10 : tip + 10
    return (
      <text
        transform={`translate(${x + 4.5} ${y}) rotate(-90)`}
        textAnchor={up ? 'start' : 'end'}
        fontSize={13}
        {...ink}
      >
        {cut(whole)} {length}
      </text>
    )
  }
  const lines = [...labelLines(whole), length]
  const firstY = up ? tip - 10 - labelLinePx * (lines.length - 1) : tip + 21
  return (
    <g textAnchor="middle" fontSize={13} {...ink}>
      {lines.map((line, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: lines of one label, in their order
        <text key={i} x={x} y={firstY + labelLinePx * i}>
          {line}
        </text>
      ))}
    </g>
  )
}

/** A bar of a round length of tube at the loops' scale. */
function ScaleBar({
  y,
  pxPerMm,
  unit,
}: {
  readonly y: number
  readonly pxPerMm: number
  readonly unit: 'mm' | 'in'
}): ReactNode {
  const mm = roundTicks(0, 1e6, pxPerMm, unit, 60)[1] ?? 0
  const px = mm * pxPerMm
  return (
    <g fontSize={13} fill="var(--soft)">
      <path d={`M4 ${y - 9}v8M4 ${y - 5}h${px}M${4 + px} ${y - 9}v8`} stroke="var(--soft)" fill="none" />
      <text x={14 + px} y={y}>
        {words.scaleBar(lengthText(mm, unit, 0))}
      </text>
    </g>
  )
}
