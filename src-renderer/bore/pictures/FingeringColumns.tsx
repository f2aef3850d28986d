import type { ReactNode } from 'react'
import type { FingeredMode, FingeringModes } from '#shared/bore/fingeringModes.ts'
import { SeriesMark } from '../../look/SeriesMark.tsx'
import { seriesLook } from '../../look/seriesLook.ts'
import { boreWords } from '../../words/bore.ts'
import type { ShownFingering } from '../useBore.ts'
import { isFilled } from './filledMarks.ts'
import { Scrolling } from './Scrolling.tsx'

interface FingeringColumnsProps {
  readonly caption: string
  readonly modes: readonly FingeringModes[]
  readonly shown: readonly ShownFingering[]
  /** The figure of a mode as written; `null` where it has none. */
  readonly figureOf: (mode: FingeredMode, fingering: ShownFingering) => string | null
}

/** A table with a row for each mode and a column for each fingering that is laid over the others. */
export function FingeringColumns({ caption, modes, shown, figureOf }: FingeringColumnsProps): ReactNode {
  const columns = shown.map((fingering) => ({
    fingering,
    modes: modes.find((each) => each.fingering === fingering.fingering)?.modes ?? [],
  }))
  const count = columns.reduce((most, each) => Math.max(most, each.modes.length), 0)
  return (
    <Scrolling label={caption} className="tableScroll">
      <table className="figures boreFigures">
        <caption>{caption}</caption>
        <thead>
          <tr>
            <th scope="col">{boreWords.mode}</th>
            {columns.map(({ fingering }) => (
              <th scope="col" key={fingering.fingering}>
                <span
                  className={isFilled(fingering.series) ? 'filled' : undefined}
                  style={{ color: `var(${seriesLook(fingering.series).colour})` }}
                >
                  <SeriesMark series={fingering.series} />
                </span>
                {fingering.fingering}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {Array.from({ length: count }, (_, i) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: a mode is known by its number
            <tr key={i}>
              <th scope="row">{i + 1}</th>
              {columns.map(({ fingering, modes: own }) => {
                const mode = own[i]
                const figure = mode === undefined ? null : figureOf(mode, fingering)
                return (
                  <td key={fingering.fingering} className={figure === null ? 'none' : undefined}>
                    {figure ?? '·'}
                  </td>
                )
              })}
            </tr>
          ))}
        </tbody>
      </table>
    </Scrolling>
  )
}
