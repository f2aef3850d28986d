import { plainFigure, signedCents, signedFigure } from '#shared/quantity/figures.ts'
import type { LengthsRecord } from '#shared/solve/lengthsRecord.ts'
import type { Design } from '#shared/workbook/workbook.ts'
import { alignedTable } from '../alignedTable.ts'
import { inTableOrder } from '../inTableOrder.ts'
import { shown } from '../shown.ts'

/** The lengths for reading: what was made least, the loops with their change, the errors, the bounds that hold. */
export function lengthsText(design: Design, record: LengthsRecord): string {
  return [
    heading(design, record),
    `Loops\n${loops(design, record)}`,
    `Errors\n${errors(design, record)}`,
  ].join('\n')
}

function heading(
  { name, id }: Design,
  { objective, status, rmsCents, largestCents, openChangeMm }: LengthsRecord,
) {
  const least = objective === 'rms' ? 'least rms error' : 'least largest error'
  const open = `open route ${signedFigure(openChangeMm, 1)} mm`
  const figures = `rms ${plainFigure(rmsCents, 1)} cents, largest ${plainFigure(largestCents, 1)} cents, ${open}`
  return `${shown(name)} (${shown(id)}): ${least}, ${status}, ${figures}\n`
}

function loops({ loops: present }: Design, { lengthsMm, heldByBounds }: LengthsRecord): string {
  const rows = present.map(({ id, name, lengthMm }) => {
    const foundMm = lengthsMm[id] ?? lengthMm
    const held = heldByBounds.filter(({ loop }) => loop === id)
    return [
      id,
      name ?? '',
      plainFigure(lengthMm, 1),
      plainFigure(foundMm, 1),
      signedFigure(foundMm - lengthMm, 1),
      signedFigure((foundMm - lengthMm) / 2, 1),
      held.map(({ bound, atMm }) => `${bound}, ${plainFigure(atMm, 1)} mm`).join('; '),
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

function errors(design: Design, { errorsCents }: LengthsRecord): string {
  return alignedTable(
    [
      { heading: 'fingering', align: 'left' },
      { heading: 'cents', align: 'right' },
    ],
    inTableOrder(design, errorsCents).map(([fingering, cents]) => [fingering, signedCents(cents)]),
  )
}
