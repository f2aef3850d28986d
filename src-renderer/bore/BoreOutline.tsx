import type { ReactNode } from 'react'
import { boreWords } from '../words/bore.ts'
import type { DrawnBore } from './drawingScale.ts'

interface BoreOutlineProps {
  readonly drawn: DrawnBore
  readonly width: number
  readonly hasCup: boolean
}

/** A bore in side view: its walls and centre line, the cup, the place of the valves. */
export function BoreOutline({ drawn, width, hasCup }: BoreOutlineProps): ReactNode {
  const { axisPx, upper, lower, valvesPx, valvesHalfPx, jointsPx } = drawn
  const first = jointsPx[0] ?? 0
  return (
    <g>
      <path className="centre" d={`M0 ${axisPx}H${width}`} />
      <path className="wall" d={upper} />
      <path className="wall" d={lower} />
      {hasCup ? (
        <path
          className="wall"
          d={`M${first} ${axisPx - 3}L${first - 9} ${axisPx - 8}V${axisPx + 8}L${first} ${axisPx + 3}`}
        />
      ) : null}
      {valvesPx === null ? null : (
        <>
          <path
            className="valvesPlace"
            d={`M${valvesPx} 18V${axisPx - valvesHalfPx - 2}M${valvesPx} ${axisPx + valvesHalfPx + 2}v8`}
          />
          <text x={valvesPx} y={13} textAnchor="middle">
            {boreWords.valves}
          </text>
        </>
      )}
      <text className="soft" x={2} y={13}>
        {boreWords.lips}
      </text>
      <text className="soft" x={width - 2} y={13} textAnchor="end">
        {boreWords.bell}
      </text>
    </g>
  )
}
