import type { ReactNode } from 'react'
import { plainFigure } from '#shared/quantity/figures.ts'
import { readNumber } from '#shared/quantity/number.ts'
import { QuantityField, type QuantityFieldProps } from './QuantityField.tsx'

type Own = 'read' | 'shown' | 'step' | 'take'

export interface NumberFieldProps extends Omit<QuantityFieldProps, Own> {
  readonly value: number | null
  readonly take: (value: number) => string | null
  readonly digits: number
  readonly atLeast?: number
  readonly atMost?: number
  /** Words for the unit that may be typed behind the number. */
  readonly units?: readonly string[]
  readonly by?: number
}

/** A field for a plain number: hertz, cents, degrees, semitones. */
export function NumberField({
  value,
  digits,
  atLeast,
  atMost,
  units,
  by,
  ...rest
}: NumberFieldProps): ReactNode {
  return (
    <QuantityField
      {...rest}
      shown={value === null ? '' : plainFigure(value, digits)}
      read={(text) =>
        readNumber(text, {
          ...(atLeast === undefined ? {} : { atLeast }),
          ...(atMost === undefined ? {} : { atMost }),
          ...(units === undefined ? {} : { units }),
        })
      }
      {...(by === undefined || value === null ? {} : { step: { value, by } })}
    />
  )
}
