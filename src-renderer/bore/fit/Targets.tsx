import type { ReactNode } from 'react'
import { plainFigure, signedCents } from '#shared/quantity/figures.ts'
import type { BoreTarget } from '#shared/workbook/bore.ts'
import { setBoreSetting } from '#shared/workbook/commands/boreCommands.ts'
import { NumberField } from '../../fields/NumberField.tsx'
import { tryRun } from '../../fields/refusal.ts'
import { boreWords } from '../../words/bore.ts'
import type { TargetRow } from './targetRows.ts'

interface TargetsProps {
  readonly designId: string
  readonly targets: readonly BoreTarget[]
  readonly fundamentalHz: number
  readonly rows: readonly TargetRow[]
}

/** The modes aimed at: harmonics of the design's fundamental, each with an offset if need be. */
export function Targets({ designId, targets, fundamentalHz, rows }: TargetsProps): ReactNode {
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
        {rows.map(({ mode, counts, offsetCents, targetHz, hz, errorCents }) => (
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
                value={offsetCents}
                digits={1}
                units={['cents', 'c']}
                by={1}
                width={5}
                take={(cents) => set(mode, { cents })}
              />
            </td>
            <td>{plainFigure(targetHz, 2)}</td>
            <td>{hz === null ? '·' : plainFigure(hz, 2)}</td>
            <td>{errorCents === null ? '·' : signedCents(errorCents)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  )
}
