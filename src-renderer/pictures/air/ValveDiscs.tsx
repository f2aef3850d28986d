import type { ReactNode } from 'react'
import type { AirLayout } from '#shared/valves/air/airLayout.ts'

/** A valve as the drawing needs it. */
export interface DrawnKey {
  readonly id: string
  readonly isDown: boolean
  readonly press?: () => void
}

interface ValveDiscsProps {
  readonly layout: AirLayout
  readonly valves: readonly DrawnKey[]
}

const discPx = 12

/** The valves by name: a disc below the first line, filled and lower while the valve is down. */
export function ValveDiscs({ layout, valves }: ValveDiscsProps): ReactNode {
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
