import type { LengthsRecord } from '#shared/solve/lengthsRecord.ts'
import type { Design } from '#shared/workbook/workbook.ts'
import { alignedTable } from '../alignedTable.ts'
import { fixed, signedCents } from '../figures.ts'
import { shown } from '../shown.ts'

/** The lengths for reading: what was made least, the loops with their change, the errors, the bounds that hold. */
export function lengthsText(design: Design, record: LengthsRecord): string {
  return [heading(design, record), `Loops\n${loops(design, record)}`, `Errors\n${errors(record)}`].join('\n')
}

function heading(
  { name, id }: Design,
  { objective, status, rmsCents, largestCents, openChangeMm }: LengthsRecord,
) {
  const least = objective === 'rms' ? 'least rms error' : 'least largest error'
  const open = `open route ${signedMm(openChangeMm)} mm`
  const figures = `rms ${fixed(rmsCents, 1)} cents, largest ${fixed(largestCents, 1)} cents, ${open}`
  return `${shown(name)} (${shown(id)}): ${least}, ${status}, ${figures}\n`
}

function loops({ loops: present }: Design, { lengthsMm, heldByBounds }: LengthsRecord): string {
  const rows = present.map(({ id, name, lengthMm }) => {
    const foundMm = lengthsMm[id] ?? lengthMm
    const held = heldByBounds.filter(({ loop }) => loop === id)
    return [
      id,
      name ?? '',
      fixed(lengthMm, 1),
      fixed(foundMm, 1),
      signedMm(foundMm - lengthMm),
      signedMm((foundMm - lengthMm) / 2),
      held.map(({ bound, atMm }) => `${bound}, ${fixed(atMm, 1)} mm`).join('; '),
    ]
  })
  return alignedTable(
    [
      { heading: 'loop', align: 'left' },
      { heading: 'name', align: 'left' },
      { heading: 'now mm', align: 'right' },
      { heading: 'found mm', align: 'right' },
      { heading: 'tube mm', align: 'right' },
      { heading: 'slide out mm', align: 'right' },
      { heading: 'held by bound', align: 'left' },
    ],
    rows,
  )
}

function errors({ errorsCents }: LengthsRecord): string {
  return alignedTable(
    [
      { heading: 'fingering', align: 'left' },
      { heading: 'cents', align: 'right' },
    ],
    Object.entries(errorsCents).map(([fingering, cents]) => [fingering, signedCents(cents)]),
  )
}

function signedMm(lengthMm: number): string {
  const text = fixed(lengthMm, 1)
  return lengthMm > 0 && Number(text) !== 0 ? `+${text}` : text
}
