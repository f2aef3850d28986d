import type { ReactNode } from 'react'
import type { PitchChangeAnswer } from '#shared/bench/pitchChange.ts'
import type { Design } from '#shared/workbook/workbook.ts'
import { useSettings } from '../../state/settings.ts'
import { changeOfPitchTable } from '../../tables/benchTables.ts'
import { TableOut } from '../../tables/TableOut.tsx'
import { titles } from '../../words/tableHeadings.ts'
import { ChangeCells } from './ChangeCells.tsx'
import { changeRows } from './changeRows.ts'

interface ChangeTableProps {
  /** Name of the job. */
  readonly name: string
  readonly design: Design
  readonly openMm: number
  readonly answer: PitchChangeAnswer
}

/** What body and every loop need, in tube and on each leg. */
export function ChangeTable({ name, design, openMm, answer }: ChangeTableProps): ReactNode {
  const unit = useSettings((settings) => settings.unit)
  return (
    <>
      <TableOut
        name={titles.pitch(name)}
        table={() => changeOfPitchTable(name, changeRows(design, openMm, answer), unit)}
      />
      <table className="figures changeTable">
        <caption>Tube to add; with a minus, to take off</caption>
        <thead>
          <tr>
            <th scope="col">part</th>
            <th scope="col">now, tube</th>
            <th scope="col">add, tube</th>
            <th scope="col" title="On each of the two legs of its slide">
              add, each leg
            </th>
            <th scope="col">then, tube</th>
          </tr>
        </thead>
        <tbody>
          {changeRows(design, openMm, answer).map((row, i) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: two loops may have one name
            <tr key={i}>
              <ChangeCells {...row} />
            </tr>
          ))}
        </tbody>
      </table>
    </>
  )
}
