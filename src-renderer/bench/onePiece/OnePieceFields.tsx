import type { ReactNode } from 'react'
import { plainFigure } from '#shared/quantity/figures.ts'
import { Choice } from '../../fields/Choice.tsx'
import { LengthField } from '../../fields/LengthField.tsx'
import { NumberField } from '../../fields/NumberField.tsx'
import type { DerivedDesign } from '../../state/derived.ts'
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
          label="Loop of valve"
          value={values.valveId}
          options={valves.map(({ id, semitones }) => ({
            value: id,
            text: `${id}, ${plainFigure(semitones, Number.isInteger(semitones) ? 0 : 2)} semitones`,
          }))}
          take={(valveId) => set({ valveId, loopMm: null })}
        />
        <LengthField
          label="Its length, tube"
          help="The whole loop along its centre line, with the slide where the valve’s note is in tune: not one leg."
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
          label="Bore length"
          help="Centre line from the mouthpiece receiver to the bell rim, valves up."
          lengthMm={values.boreMm}
          take={(boreMm) => set({ boreMm })}
        />
        <LengthField
          label="Mouthpiece and bell"
          help="What mouthpiece and bell add, usually below a tenth of the whole."
          lengthMm={values.correctionMm}
          atLeast={-1e5}
          take={(correctionMm) => set({ correctionMm })}
        />
      </>
    )
  return (
    <NumberField
      label="Fundamental"
      value={values.fundamentalHz}
      digits={2}
      atLeast={10}
      atMost={2000}
      units={['Hz']}
      unit="Hz"
      help="Nominal harmonic 1 of the open route: a harmonic’s frequency over its number."
      take={(fundamentalHz) => set({ fundamentalHz })}
    />
  )
}
