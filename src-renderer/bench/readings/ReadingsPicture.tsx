import type { ReactNode } from 'react'
import type { ReadingsFit } from '#shared/bench/readings/readingsFit.ts'
import { signedCents } from '#shared/quantity/figures.ts'
import { fingeringName } from '#shared/valves/fingering.ts'
import type { BenchReadings } from '#shared/workbook/bench.ts'
import { multiples, roundUp } from '../../look/roundScale.ts'
import { readingsWords } from '../../words/benchReadings.ts'

interface ReadingsPictureProps {
  readonly readings: BenchReadings
  readonly fit: ReadingsFit
  readonly width: number
  readonly height: number
}

const left = 46
const top = 24
const bottom = 38
/** Room that a label takes, px for each character. */
const characterPx = 7.6

/** Readings against the fit: what was read, what the fit says, and what it leaves, a stick between the two. */
export function ReadingsPicture({ readings, fit, width, height }: ReadingsPictureProps): ReactNode {
  const { rows } = readings
  const suspects = new Set(
    fit.remarks.flatMap(({ kind, rows: at }) => (kind === 'farOff' || kind === 'disagree' ? at : [])),
  )
  const [low, high] = rangeOf([...rows.map(({ cents }) => cents), ...fit.fittedCents])
  const y = (cents: number): number => top + ((high - cents) / (high - low)) * (height - top - bottom)
  const step = (width - left - 8) / Math.max(rows.length, 1)
  const x = (row: number): number => left + (row + 0.5) * step
  const longest = rows.reduce((most, { pressed }) => Math.max(most, fingeringName(pressed).length), 4)
  const every = Math.ceil((longest * characterPx) / step)
  return (
    <svg
      className="readingsPicture"
      viewBox={`0 0 ${width} ${height}`}
      width={width}
      height={height}
      role="img"
      aria-label={readingsWords.pictureLabel(rows.length)}
    >
      {ticksOf(low, high).map((cents) => (
        <g key={cents}>
          <path className={cents === 0 ? 'zero' : 'grid'} d={`M${left} ${y(cents)}H${width}`} />
          <text className="axis" x={left - 8} y={y(cents) + 4.5} textAnchor="end">
            {signedCents(cents, 0)}
          </text>
        </g>
      ))}
      <text className="axis" x={4} y={13}>
        {readingsWords.pictureAxis}
      </text>
      {rows.map(({ pressed, harmonic, cents, leaveOut }, row) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a reading is known by its row
        <g key={row}>
          <title>
            {readingsWords.pictureMark(
              fingeringName(pressed),
              harmonic,
              signedCents(cents),
              signedCents(fit.fittedCents[row] ?? 0),
            )}
          </title>
          <path className="stick" d={`M${x(row)} ${y(cents)}V${y(fit.fittedCents[row] ?? cents)}`} />
          <path
            className="fitted"
            d={`M${x(row) - Math.min(9, 0.4 * step)} ${y(fit.fittedCents[row] ?? cents)}h${Math.min(18, 0.8 * step)}`}
          />
          {suspects.has(row) ? (
            <path className="read far" d={`M${x(row)} ${y(cents) - 6}l6 11h-12Z`} />
          ) : (
            <circle
              className={leaveOut === true ? 'read out' : 'read'}
              cx={x(row)}
              cy={y(cents)}
              r={Math.min(4.5, 0.4 * step)}
            />
          )}
          {row % every === 0 ? (
            <>
              <text x={x(row)} y={height - 20} textAnchor="middle">
                {fingeringName(pressed)}
              </text>
              <text className="axis" x={x(row)} y={height - 5} textAnchor="middle">
                {readingsWords.onHarmonic(harmonic)}
              </text>
            </>
          ) : null}
        </g>
      ))}
    </svg>
  )
}

/** From the lowest to the highest value with room, always with zero, and never narrower than 20 cents. */
function rangeOf(values: readonly number[]): readonly [number, number] {
  const low = Math.min(-10, ...values)
  const high = Math.max(10, ...values)
  const margin = 0.08 * (high - low)
  return [low - margin, high + margin]
}

/** Round values within a range, some four to eight of them. */
function ticksOf(low: number, high: number): readonly number[] {
  return multiples(roundUp(Math.max(5, (high - low) / 8)), low, high)
}
