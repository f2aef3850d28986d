import type { ReactNode } from 'react'
import { plainFigure } from '#shared/quantity/figures.ts'
import type { LoopFreedom } from '#shared/solve/lengthProblem.ts'
import type { Loop } from '#shared/valves/loop.ts'
import type { Design } from '#shared/workbook/workbook.ts'
import { Choice } from '../fields/Choice.tsx'
import { NumberField } from '../fields/NumberField.tsx'
import { loopTableWords } from '../words/lengthsLoops.ts'
import { compensatingFactor, presentFactor } from './suggestedTie.ts'

interface TieFieldsProps {
  readonly design: Design
  readonly loop: Loop
  readonly freedom: Extract<LoopFreedom, { kind: 'tied' }>
  readonly take: (freedom: LoopFreedom) => void
}

/** To which loop one is tied, and in what proportion. */
export function TieFields({ design, loop, freedom, take }: TieFieldsProps): ReactNode {
  const name = loop.name ?? loop.id
  const to = design.loops.find(({ id }) => id === freedom.to)
  const options = design.loops
    .filter(({ id }) => id !== loop.id)
    .map(({ id, name: called }) => ({ value: id, text: called ?? id }))
  const presets = to === undefined ? [] : presetsOf(design, loop, to)
  return (
    <div className="fieldLine">
      <Choice
        label={loopTableWords.tiedTo}
        mark="tie"
        value={freedom.to}
        options={options}
        take={(id) => {
          const other = design.loops.find((each) => each.id === id)
          take({ ...freedom, to: id, factor: other === undefined ? 1 : presentFactor(loop, other) })
        }}
      />
      <NumberField
        label={loopTableWords.timesFor(name)}
        labelHidden
        value={freedom.factor}
        digits={4}
        by={0.01}
        width={7}
        unit={loopTableWords.timesItsLength}
        take={(factor) => {
          if (!(factor > 0)) return loopTableWords.refusedFactor(plainFigure(factor, 4))
          take({ ...freedom, factor })
          return null
        }}
      />
      {presets.map(({ text, factor }) => (
        <button
          key={text}
          type="button"
          className="quiet"
          aria-pressed={Math.abs(factor - freedom.factor) < 1e-9}
          onClick={() => take({ ...freedom, factor })}
        >
          {text}
        </button>
      ))}
    </div>
  )
}

function presetsOf(design: Design, loop: Loop, to: Loop) {
  const compensating = compensatingFactor(design, loop, to)
  return [
    { text: loopTableWords.asNow, factor: presentFactor(loop, to) },
    { text: loopTableWords.equal, factor: 1 },
    ...(compensating === null ? [] : [{ text: loopTableWords.exactBehindValve, factor: compensating }]),
  ]
}
