import type { ReactNode } from 'react'
import type { AirLayout } from '#shared/valves/air/airLayout.ts'

interface EndProps {
  readonly layout: AirLayout
  /** Width of the tube, px. */
  readonly tube: number
}

/** The cup on the left, and behind it the cut that says the body is not all drawn. */
export function Mouthpiece({ layout, tube }: EndProps): ReactNode {
  const y = layout.lines[0]!
  const half = tube / 2
  const cup = 1.7 * half
  const cut = 0.55 * layout.measures.ends
  return (
    <>
      <path
        d={`M1 ${y - cup}V${y + cup}Q${1.6 * tube} ${y + half} ${2 * tube} ${y + half}V${y - half}Q${1.6 * tube} ${y - half} 1 ${y - cup}Z`}
        fill="var(--paper)"
        stroke="var(--ink)"
      />
      <path d={`M${cut - 3} ${y + half + 4}l6 ${-tube - 8}h5l-6 ${tube + 8}Z`} fill="var(--paper)" />
      <path
        d={`M${cut - 3} ${y + half + 4}l6 ${-tube - 8}M${cut + 2} ${y + half + 4}l6 ${-tube - 8}`}
        stroke="var(--line)"
      />
    </>
  )
}

/** The bell on the right. */
export function Bell({ layout, tube }: EndProps): ReactNode {
  const y = layout.lines[0]!
  const half = tube / 2
  const long = 0.62 * layout.measures.ends
  const from = layout.width - long
  const wide = 2.3 * tube
  const side = (sign: 1 | -1): string =>
    `C${from + 0.6 * long} ${y + sign * half} ${layout.width - 0.16 * long} ${y + sign * 0.45 * wide} ${layout.width - 1} ${y + sign * wide}`
  return (
    <path
      d={`M${from} ${y - half}${side(-1)}V${y + wide}M${from} ${y + half}${side(1)}`}
      fill="var(--paper)"
      stroke="var(--ink)"
    />
  )
}
