import type { KeyboardEvent, PointerEvent, ReactNode } from 'react'
import { plainFigure } from '#shared/quantity/figures.ts'
import type { LengthsAndErrors } from '#shared/solve/lengthAnswer.ts'
import { PictureOut } from '../picture/PictureOut.tsx'
import { useLengths } from '../state/lengthsStore.ts'
import { proposalWords } from '../words/lengths.ts'

const size = { width: 270, height: 172, left: 44, right: 14, top: 26, bottom: 36 }

interface TradeCurveProps {
  readonly points: readonly LengthsAndErrors[]
  /** Whether they answer the latest choices; while they do not, they cannot be walked along. */
  readonly isCurrent: boolean
}

/** The trade between the two objectives, as a curve to walk along; where one stops is what is proposed. */
export function TradeCurve({ points, isCurrent }: TradeCurveProps): ReactNode {
  const objective = useLengths((state) => state.objective)
  const walkedTo = useLengths((state) => state.walkedTo)
  const left = useLengths((state) => state.left)
  if (points.length === 0) return <div className="trade" />
  if (points.length === 1) {
    return <p className="trade soft">{proposalWords.noTrade}</p>
  }
  const last = points.length - 1
  const at = Math.min(walkedTo ?? (objective === 'rms' ? 0 : last), last)
  const walk = (to: number): void => {
    if (isCurrent) useLengths.setState({ walkedTo: Math.min(Math.max(to, 0), last), left: false })
  }
  const key = (event: KeyboardEvent): void => {
    const to = stepped(event.key, at, last)
    if (to === null) return
    event.preventDefault()
    walk(to)
  }
  const places = placed(points)
  const drag = (event: PointerEvent<HTMLElement>): void => {
    if (event.buttons !== 1) return
    const box = event.currentTarget.getBoundingClientRect()
    walk(nearest(places, event.clientX - box.left, event.clientY - box.top))
  }
  const [first, end] = [points[0]!, points[last]!]
  return (
    <div className={isCurrent ? 'trade' : 'trade waiting'}>
      <h2>{proposalWords.trade}</h2>
      <PictureOut name={proposalWords.trade}>
        <div
          className="walk"
          role="slider"
          tabIndex={0}
          aria-label={proposalWords.tradeLabel}
          aria-disabled={!isCurrent}
          aria-valuemin={0}
          aria-valuemax={last}
          aria-valuenow={at}
          aria-valuetext={spoken(points[at]!)}
          onKeyDown={key}
          onPointerDown={drag}
          onPointerMove={drag}
        >
          <svg width={size.width} height={size.height} aria-hidden="true">
            <path
              className="axes"
              d={`M${size.left} ${size.top}V${size.height - size.bottom}H${size.width - size.right}`}
            />
            <polyline points={places.map(({ x, y }) => `${x},${y}`).join(' ')} />
            {places.map(({ x, y }, i) => (
              <circle
                key={`${x} ${y}`}
                cx={x}
                cy={y}
                r={i === at && !left ? 6 : 3}
                className={i === at && !left ? 'on' : undefined}
              />
            ))}
            <text x={size.left - 6} y="12" className="axisName">
              {proposalWords.largestAxis}
            </text>
            <text x={size.width - size.right} y={size.height - 4} textAnchor="end">
              {proposalWords.rmsAxis}
            </text>
            <text x={size.left - 6} y={places[0]!.y + 4} textAnchor="end">
              {plainFigure(first.largestWeightedCents, 1)}
            </text>
            <text x={size.left - 6} y={places[last]!.y + 4} textAnchor="end">
              {plainFigure(end.largestWeightedCents, 1)}
            </text>
            <text x={places[0]!.x} y={size.height - size.bottom + 16} textAnchor="middle">
              {plainFigure(first.rmsCents, 1)}
            </text>
            <text x={places[last]!.x} y={size.height - size.bottom + 16} textAnchor="middle">
              {plainFigure(end.rmsCents, 1)}
            </text>
          </svg>
        </div>
      </PictureOut>
      <p>{isCurrent ? proposalWords.placeCents(spoken(points[at]!)) : proposalWords.tradeWaits}</p>
    </div>
  )
}

function spoken({ rmsCents, largestWeightedCents }: LengthsAndErrors): string {
  return proposalWords.place(plainFigure(rmsCents, 1), plainFigure(largestWeightedCents, 1))
}

function placed(points: readonly LengthsAndErrors[]): readonly { readonly x: number; readonly y: number }[] {
  const [first, end] = [points[0]!, points.at(-1)!]
  const wide = Math.max(end.rmsCents - first.rmsCents, Number.MIN_VALUE)
  const high = Math.max(first.largestWeightedCents - end.largestWeightedCents, Number.MIN_VALUE)
  const [width, height] = [
    size.width - size.left - size.right - 28,
    size.height - size.top - size.bottom - 22,
  ]
  return points.map(({ rmsCents, largestWeightedCents }) => ({
    x: size.left + 14 + (width * (rmsCents - first.rmsCents)) / wide,
    y: size.top + 8 + (height * (first.largestWeightedCents - largestWeightedCents)) / high,
  }))
}

function stepped(key: string, at: number, last: number): number | null {
  switch (key) {
    case 'ArrowRight':
    case 'ArrowDown':
      return at + 1
    case 'ArrowLeft':
    case 'ArrowUp':
      return at - 1
    case 'Home':
      return 0
    case 'End':
      return last
    default:
      return null
  }
}

function nearest(
  places: readonly { readonly x: number; readonly y: number }[],
  x: number,
  y: number,
): number {
  const distance = (i: number): number => Math.hypot(places[i]!.x - x, places[i]!.y - y)
  return places.reduce((best, _, i) => (distance(i) < distance(best) ? i : best), 0)
}
