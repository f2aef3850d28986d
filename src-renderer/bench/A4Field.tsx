import type { ReactNode } from 'react'
import { a4Slip } from '#shared/bench/slips/pitchSlips.ts'
import { briefFigure } from '#shared/quantity/figures.ts'
import { Actions } from '../fields/Actions.tsx'
import { NumberField } from '../fields/NumberField.tsx'
import { benchWords } from '../words/bench.ts'

/** Pitches in use now and formerly, Hz. */
const pitches = [457, 452.5, 443, 442, 440, 435, 430, 415]

interface A4FieldProps {
  readonly label: string
  readonly a4Hz: number
  readonly help?: string
  readonly take: (a4Hz: number) => string | null
}

/** A reference pitch: any typed, those in use at hand. One out of range is refused with what it may have meant. */
export function A4Field({ label, a4Hz, help, take }: A4FieldProps): ReactNode {
  return (
    <div className="a4Field">
      <NumberField
        label={label}
        value={a4Hz}
        digits={Number.isInteger(a4Hz) ? 0 : 1}
        units={['Hz']}
        unit="Hz"
        by={0.5}
        width={6}
        {...(help === undefined ? {} : { help })}
        take={(hz) => a4Slip(label, hz)?.message ?? take(hz)}
      />
      <Actions
        label={benchWords.pitchesFor(label)}
        text="▾"
        items={pitches.map((hz) => ({
          text: benchWords.hertz(briefFigure(hz, 1)),
          act: () => take(hz),
        }))}
      />
    </div>
  )
}
