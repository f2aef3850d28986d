import type { ReactNode } from 'react'
import { signedCents } from '#shared/quantity/figures.ts'
import type { LoopInCompany } from '#shared/tubing/loopInCompany.ts'
import { lengthFigure } from '../../fields/LengthField.tsx'
import { useSettings } from '../../state/settings.ts'
import { growthTable } from '../../tables/picturesTables.ts'
import { TableOut } from '../../tables/TableOut.tsx'
import { companyWords } from '../../words/pictures.ts'

const { columns, tableOf } = companyWords.growth

interface GrowthTableProps {
  readonly valve: string
  readonly rows: readonly LoopInCompany[]
}

/** The figures of the bars. */
export function GrowthTable({ valve, rows }: GrowthTableProps): ReactNode {
  const unit = useSettings((settings) => settings.unit)
  return (
    <div className="tableFrame">
      <TableOut name={tableOf(valve)} table={() => growthTable(valve, rows, unit)} />
      <table className="figures pictureTable">
        <caption className="unseen">{tableOf(valve)}</caption>
        <thead>
          <tr>
            <th scope="col">{columns.lowered}</th>
            <th scope="col">{`${columns.needs}, ${unit}`}</th>
            <th scope="col">{`${columns.missing}, ${unit}`}</th>
            <th scope="col">{columns.cents}</th>
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <tr key={row.loweredSemitones}>
              <th scope="row">{row.loweredSemitones}</th>
              <td>{lengthFigure(row.neededMm, unit)}</td>
              <td>{lengthFigure(row.missingMm, unit)}</td>
              <td>{signedCents(row.errorCents)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  )
}
