import type { ReactNode } from 'react'
import type { DrawnPoint } from '#shared/valves/air/airLayout.ts'
import type { AirStretch } from '#shared/valves/air/airLine.ts'

/** An arrow on a stretch: on a loop's first leg, or on the longest side between loops. */
export function Arrow({ stretch }: { readonly stretch: AirStretch }): ReactNode {
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

function sizeOf({ from, to }: { readonly from: DrawnPoint; readonly to: DrawnPoint }): number {
  return Math.hypot(to.x - from.x, to.y - from.y)
}
