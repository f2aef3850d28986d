import type { ReactNode } from 'react'
import { signedCents } from '#shared/quantity/figures.ts'
import type { InCompany } from '#shared/tuning/inCompany.ts'
import { lengthFigure } from '../../fields/LengthField.tsx'
import { useSettings } from '../../state/settings.ts'
import { companyTable } from '../../tables/picturesTables.ts'
import { TableOut } from '../../tables/TableOut.tsx'
import { companyWords as words } from '../../words/pictures.ts'
import { companyRows } from './companyRows.ts'

/** The figures of the steps: each set of valves by itself, and the fingering without its further loops. */
export function CompanyTable({ apart }: { readonly apart: InCompany }): ReactNode {
  const unit = useSettings((settings) => settings.unit)
  const { columns } = words
  const { fingering } = apart.together
  const rows = companyRows(apart)
  return (
    <div className="tableFrame">
      <TableOut name={words.tableOf(fingering)} table={() => companyTable(fingering, rows, unit)} />
      <table className="figures pictureTable">
        <caption className="unseen">{words.tableOf(fingering)}</caption>
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
          {rows.map(({ name, lengthMm, requiredLengthMm, errorCents }) => (
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
