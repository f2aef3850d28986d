import type { ReactNode } from 'react'
import type { FingeredMode } from '#shared/bore/fingeringModes.ts'
import { centsBetween, ratioOfCents } from '#shared/pitch/cents.ts'
import { plainFigure, signedCents } from '#shared/quantity/figures.ts'
import type { BoreTarget } from '#shared/workbook/bore.ts'
import { setBoreSetting } from '#shared/workbook/commands/boreCommands.ts'
import { NumberField } from '../../fields/NumberField.tsx'
import { tryRun } from '../../fields/refusal.ts'
import { boreWords } from '../../words/bore.ts'

interface TargetsProps {
  readonly designId: string
  readonly targets: readonly BoreTarget[]
  readonly fundamentalHz: number
  readonly modes: readonly FingeredMode[]
}

const offered = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12]

/** The modes aimed at: harmonics of the design's fundamental, each with an offset if need be. */
export function Targets({ designId, targets, fundamentalHz, modes }: TargetsProps): ReactNode {
  const set = (mode: number, change: Partial<BoreTarget>): string | null => {
    const present = targets.find((each) => each.mode === mode) ?? { mode, weight: 0 }
    const others = targets.filter((each) => each.mode !== mode)
    const next = [...others, { ...present, ...change }].sort((a, b) => a.mode - b.mode)
    return tryRun(setBoreSetting(designId, 'targets', next))
  }
  return (
    <table className="figures boreFigures targetTable">
      <caption>
        {boreWords.targets}. {boreWords.fundamentalIs(plainFigure(fundamentalHz, 2))}
      </caption>
      <thead>
        <tr>
          <th scope="col">{boreWords.mode}</th>
          <th scope="col">{boreWords.offset}</th>
          <th scope="col">{boreWords.targetHz}</th>
          <th scope="col">{boreWords.isHz}</th>
          <th scope="col">{boreWords.isOff}</th>
        </tr>
      </thead>
      <tbody>
        {offered.map((mode) => {
          const target = targets.find((each) => each.mode === mode)
          const counts = target !== undefined && target.weight !== 0
          const hz = mode * fundamentalHz * ratioOfCents(target?.cents ?? 0)
          const is = modes[mode - 1]?.hz
          return (
            <tr key={mode} className={counts ? undefined : 'notAimed'}>
              <th scope="row">
                <label>
                  <input
                    type="checkbox"
                    aria-label={boreWords.counts(mode)}
                    checked={counts}
                    onChange={(event) => set(mode, { weight: event.target.checked ? 1 : 0 })}
                  />{' '}
                  {mode}
                </label>
              </th>
              <td>
                <NumberField
                  label={boreWords.targetOf(mode)}
                  labelHidden
                  value={target?.cents ?? 0}
                  digits={1}
                  units={['cents', 'c']}
                  by={1}
                  width={5}
                  take={(cents) => set(mode, { cents })}
                />
              </td>
              <td>{plainFigure(hz, 2)}</td>
              <td>{is === undefined ? '·' : plainFigure(is, 2)}</td>
              <td>{is === undefined ? '·' : signedCents(centsBetween(hz, is))}</td>
            </tr>
          )
        })}
      </tbody>
    </table>
  )
}
