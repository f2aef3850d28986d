import type { ReactNode } from 'react'
import type { AirLayout } from '#shared/valves/air/airLayout.ts'
import { type AirStretch, roundedPath } from '#shared/valves/air/airLine.ts'
import { Arrow } from './Arrow.tsx'
import { Bell, Mouthpiece } from './Ends.tsx'
import { type DrawnKey, ValveDiscs } from './ValveDiscs.tsx'

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
  readonly valves: readonly DrawnKey[]
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
