import type { ReactNode } from 'react'
import { briefFigure } from '#shared/quantity/figures.ts'
import { Choice } from '../../fields/Choice.tsx'
import { LengthField } from '../../fields/LengthField.tsx'
import { NumberField } from '../../fields/NumberField.tsx'
import type { DerivedDesign } from '../../state/derived.ts'
import { onePieceWords } from '../../words/benchOnePiece.ts'
import type { OnePieceValues } from './OnePiecePage.tsx'
import { type OnePieceTyped, useOnePiece } from './onePieceStore.ts'

interface OnePieceFieldsProps {
  readonly values: OnePieceValues
  readonly derived: DerivedDesign
}

/** What was measured. */
export function OnePieceFields({ values, derived }: OnePieceFieldsProps): ReactNode {
  const set = (typed: Partial<OnePieceTyped>): null => {
    useOnePiece.setState(typed)
    return null
  }
  if (values.kind === 'loop') {
    const valves = derived.design.valves.filter(({ semitones }) => semitones > 0)
    return (
      <>
        <Choice
          label={onePieceWords.loopOfValve}
          value={values.valveId}
          options={valves.map(({ id, semitones }) => ({
            value: id,
            text: onePieceWords.valve(id, briefFigure(semitones, 2)),
          }))}
          take={(valveId) => set({ valveId, loopMm: null })}
        />
        <LengthField
          label={onePieceWords.loopLength}
          help={onePieceWords.loopLengthHelp}
          lengthMm={values.loopMm}
          take={(loopMm) => set({ loopMm })}
        />
      </>
    )
  }
  if (values.kind === 'bore')
    return (
      <>
        <LengthField
          label={onePieceWords.boreLength}
          help={onePieceWords.boreLengthHelp}
          lengthMm={values.boreMm}
          take={(boreMm) => set({ boreMm })}
        />
        <LengthField
          label={onePieceWords.correction}
          help={onePieceWords.correctionHelp}
          lengthMm={values.correctionMm}
          atLeast={-1e5}
          take={(correctionMm) => set({ correctionMm })}
        />
      </>
    )
  return (
    <NumberField
      label={onePieceWords.fundamental}
      value={values.fundamentalHz}
      digits={2}
      atLeast={10}
      atMost={2000}
      units={['Hz']}
      unit="Hz"
      help={onePieceWords.fundamentalHelp}
      take={(fundamentalHz) => set({ fundamentalHz })}
    />
  )
}
