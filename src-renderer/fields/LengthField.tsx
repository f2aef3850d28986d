import type { ReactNode } from 'react'
import { plainFigure } from '#shared/quantity/figures.ts'
import { readLength } from '#shared/quantity/length.ts'
import { unitMm } from '#shared/quantity/units.ts'
import { longestMm } from '#shared/workbook/schemaParts.ts'
import { useSettings } from '../state/settings.ts'
import { QuantityField, type QuantityFieldProps } from './QuantityField.tsx'

type Own = 'read' | 'shown' | 'unit' | 'step' | 'take'

export interface LengthFieldProps extends Omit<QuantityFieldProps, Own> {
  /** mm; `null` for none. */
  readonly lengthMm: number | null
  readonly take: (lengthMm: number) => string | null
  /** Bounds, mm. */
  readonly atLeast?: number
  readonly atMost?: number
  /** Decimals in millimetres; inches get two more. */
  readonly digits?: number
  /** Steps by arrow key, mm. */
  readonly stepMm?: number
}

/** A field for a length in the unit that the settings ask for; takes any unit and calculations. */
export function LengthField({
  lengthMm,
  atLeast = 0,
  atMost = longestMm,
  digits = 1,
  stepMm,
  ...rest
}: LengthFieldProps): ReactNode {
  const unit = useSettings((settings) => settings.unit)
  return (
    <QuantityField
      {...rest}
      shown={lengthMm === null ? '' : lengthFigure(lengthMm, unit, digits)}
      unit={unit}
      read={(text) => {
        const reading = readLength(text, { defaultUnit: unit, atLeast, atMost })
        return reading.ok ? { ok: true, value: reading.mm } : reading
      }}
      {...(stepMm === undefined || lengthMm === null ? {} : { step: { value: lengthMm, by: stepMm } })}
    />
  )
}

/** A length without its unit, in millimetres or inches. */
export function lengthFigure(lengthMm: number, unit: 'mm' | 'in', digits = 1): string {
  return plainFigure(lengthMm / unitMm(unit), unit === 'mm' ? digits : digits + 2)
}
