import type { ReactNode } from 'react'
import type { AirLayout, DrawnLoop } from '#shared/valves/air/airLayout.ts'
import { type AirStretch, roundedPath } from '#shared/valves/air/airLine.ts'
import { Bell, Mouthpiece } from './Ends.tsx'

/** Widths of the strokes, px: the tube's outline, its inside, and the air in it. */
export interface Strokes {
  readonly tube: number
  readonly air: number
}

interface AirDrawingProps {
  readonly layout: AirLayout
  readonly stretches: readonly AirStretch[]
  readonly strokes: Strokes
  /** Ids of the valves by index, and which of them are down; no names where they would be too small to read. */
  readonly valves: readonly { readonly id: string; readonly isDown: boolean; readonly press?: () => void }[]
  readonly named: boolean
}

/** The drawing of a system with the air in it: every tube in outline, the air's line in brass. */
export function AirDrawing({ layout, stretches, strokes, valves, named }: AirDrawingProps): ReactNode {
  const { bow } = layout.measures
  const inRoute = new Set(stretches.flatMap(({ loop }) => loop ?? []))
  const air = roundedPath(
    stretches.flatMap(({ points }) => points),
    bow,
  )
  return (
    <>
      <Tube d={resting(layout)} width={strokes.tube} ink="var(--line)" />
      {layout.loops.map((drawn) => (
        <Tube
          key={drawn.loop.id}
          d={roundedPath(drawn.points, bow)}
          width={strokes.tube}
          ink={inRoute.has(drawn.loop.id) ? 'var(--ink)' : 'var(--line)'}
        />
      ))}
      <Mouthpiece layout={layout} tube={strokes.tube} />
      <Bell layout={layout} tube={strokes.tube} />
      {layout.valves.map(({ valve, left, right, foot }) => (
        <rect
          key={valve}
          x={left}
          y={layout.casingTop}
          width={right - left}
          height={foot - layout.casingTop}
          fill="var(--paper)"
          stroke="var(--ink)"
        />
      ))}
      <path d={air} fill="none" stroke="var(--brass)" strokeWidth={strokes.air} strokeLinejoin="round" />
      {named ? (
        <>
          <path
            className="airFlow"
            d={air}
            fill="none"
            stroke="var(--paper)"
            strokeWidth={strokes.air - 2.4}
            strokeLinecap="round"
            strokeDasharray="0.1 13.9"
          />
          {stretches.map((stretch) => (
            <Arrow
              key={`${stretch.loop} ${stretch.points[0]!.x} ${stretch.points[0]!.y}`}
              stretch={stretch}
            />
          ))}
          <ValveDiscs layout={layout} valves={valves} />
        </>
      ) : (
        layout.valves.map(({ valve, left, right, foot }) =>
          valves[valve]?.isDown ? (
            <rect key={valve} x={left} y={foot - 4} width={right - left} height={4} fill="var(--ink)" />
          ) : null,
        )
      )}
    </>
  )
}

interface TubeProps {
  readonly d: string
  readonly width: number
  readonly ink: string
}

/** A tube in outline: a wide stroke with a narrower one of paper in it. */
function Tube({ d, width, ink }: TubeProps): ReactNode {
  return (
    <>
      <path d={d} fill="none" stroke={ink} strokeWidth={width} />
      <path d={d} fill="none" stroke="var(--paper)" strokeWidth={width - 2} />
    </>
  )
}

/** Tube between valves: the line of each passage, and the way back from one to the next. */
function resting({ lines, turn, width, measures }: AirLayout): string {
  const first = lines[0]!
  const further = lines.slice(1).flatMap((line, i) => {
    const from = lines[i]!
    const between = line - 0.36 * measures.passGap
    const back = [
      { x: turn.back - measures.bow * 2, y: from },
      { x: turn.back, y: from },
      { x: turn.back, y: between },
      { x: turn.again, y: between },
      { x: turn.again, y: line },
      { x: turn.out, y: line },
      { x: turn.out, y: first },
      { x: turn.out + measures.bow * 2, y: first },
    ]
    return roundedPath(back, measures.bow)
  })
  return [...further, `M0 ${first}H${width}`].join('')
}

/** An arrow on a stretch: on a loop's first leg, or on the longest side between loops. */
function Arrow({ stretch }: { readonly stretch: AirStretch }): ReactNode {
  const { points, loop } = stretch
  const sides = points.slice(1).map((to, i) => ({ from: points[i]!, to }))
  const side =
    loop === null
      ? sides.reduce((longest, each) => (sizeOf(each) > sizeOf(longest) ? each : longest))
      : sides[0]!
  if (sizeOf(side) < (loop === null ? 16 : 34)) return null
  const x = (side.from.x + side.to.x) / 2
  const y = (side.from.y + side.to.y) / 2
  const degrees = (Math.atan2(side.to.y - side.from.y, side.to.x - side.from.x) * 180) / Math.PI
  return (
    <path
      d="M6 0L-5 -6V6Z"
      fill="var(--ink)"
      stroke="var(--paper)"
      transform={`translate(${x.toFixed(1)} ${y.toFixed(1)}) rotate(${degrees.toFixed(0)})`}
    />
  )
}

function sizeOf({ from, to }: { from: DrawnLoop['points'][0]; to: DrawnLoop['points'][0] }): number {
  return Math.hypot(to.x - from.x, to.y - from.y)
}

const discPx = 12

/** The valves by name: a disc below the first line, filled and lower while the valve is down. */
function ValveDiscs({ layout, valves }: Pick<AirDrawingProps, 'layout' | 'valves'>): ReactNode {
  return layout.valves.map(({ valve, left, right, foot }) => {
    const { id, isDown, press } = valves[valve]!
    const y = layout.lines[0]! + (isDown ? 29 : 24)
    return (
      // biome-ignore lint/a11y/noStaticElementInteractions: a mouse's way to what the keys beside the picture do
      <g key={valve} onClick={press} textAnchor="middle" className={press ? 'pressable' : undefined}>
        <rect
          x={left}
          y={layout.casingTop}
          width={right - left}
          height={foot - layout.casingTop}
          fill="transparent"
        />
        <circle
          cx={(left + right) / 2}
          cy={y}
          r={discPx}
          fill={isDown ? 'var(--ink)' : 'var(--paper)'}
          stroke="var(--ink)"
          strokeWidth="1.4"
        />
        <text
          x={(left + right) / 2}
          y={y + 5}
          fontWeight={600}
          fontSize={id.length > 2 ? 12.5 : 15}
          fill={isDown ? 'var(--paper)' : 'var(--ink)'}
        >
          {id.slice(0, 3)}
        </text>
      </g>
    )
  })
}
