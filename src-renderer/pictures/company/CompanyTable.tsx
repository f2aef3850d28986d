import type { ReactNode } from 'react'
import { signedCents } from '#shared/quantity/figures.ts'
import type { InCompany } from '#shared/tuning/inCompany.ts'
import { lengthFigure } from '../../fields/LengthField.tsx'
import { useSettings } from '../../state/settings.ts'
import { companyWords as words } from '../../words/pictures.ts'

interface Row {
  readonly name: string
  readonly lengthMm: number
  readonly requiredLengthMm: number
  readonly errorCents: number
}

/** The figures of the steps: each set of valves by itself, and the fingering without its further loops. */
export function CompanyTable({ apart }: { readonly apart: InCompany }): ReactNode {
  const unit = useSettings((settings) => settings.unit)
  const { columns } = words
  return (
    <div className="tableFrame">
      <table className="figures pictureTable">
        <caption className="unseen">{words.tableOf(apart.together.fingering)}</caption>
        <thead>
          <tr>
            <th scope="col">{columns.step}</th>
            <th scope="col">{`${columns.has}, ${unit}`}</th>
            <th scope="col">{`${columns.needs}, ${unit}`}</th>
            <th scope="col">{`${columns.missing}, ${unit}`}</th>
            <th scope="col">{columns.cents}</th>
          </tr>
        </thead>
        <tbody>
          {rowsOf(apart).map(({ name, lengthMm, requiredLengthMm, errorCents }) => (
            <tr key={name}>
              <th scope="row">{name}</th>
              <td>{lengthFigure(lengthMm, unit)}</td>
              <td>{lengthFigure(requiredLengthMm, unit)}</td>
              <td>{lengthFigure(requiredLengthMm - lengthMm, unit)}</td>
              <td>{signedCents(errorCents)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  )
}

function rowsOf(apart: InCompany): readonly Row[] {
  const { open, alone, company, together, furtherMm } = apart
  const named = [alone, company].map((row) => ({ ...row, name: row.fingering }))
  const before: Row = {
    name: words.before(together.fingering),
    lengthMm: together.lengthMm - furtherMm,
    requiredLengthMm: together.requiredLengthMm,
    errorCents: apart.errorBeforeCents,
  }
  return [
    { ...open, name: words.openRow },
    ...named,
    ...(furtherMm > 0 && apart.gone.length === 0 ? [before] : []),
    { ...together, name: together.fingering },
  ]
}
