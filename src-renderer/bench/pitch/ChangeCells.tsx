import type { ReactNode } from 'react'
import { lengthText } from '#shared/quantity/figures.ts'
import { useSettings } from '../../state/settings.ts'
import type { ChangeRow } from './changeRows.ts'

/** The cells of one part in a table of a change of pitch: now, to add, to add on each leg, then. */
export function ChangeCells({ part, nowMm, tubeMm, perLegMm, thenMm }: ChangeRow): ReactNode {
  const unit = useSettings((settings) => settings.unit)
  return (
    <>
      <th scope="row">{part}</th>
      <td>{lengthText(nowMm, unit)}</td>
      <td>
        <b>{addedText(tubeMm, unit)}</b>
      </td>
      <td>{addedText(perLegMm, unit)}</td>
      <td>{lengthText(thenMm, unit)}</td>
    </>
  )
}

/** A length to add, with a plus; to take off, with a minus; what rounds to nothing without a sign. */
export function addedText(lengthMm: number, unit: 'mm' | 'in'): string {
  const text = lengthText(lengthMm, unit)
  return lengthMm > 0 && Number.parseFloat(text) !== 0 ? `+${text}` : text
}
