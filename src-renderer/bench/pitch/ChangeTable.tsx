import type { ReactNode } from 'react'
import type { PitchChangeAnswer } from '#shared/bench/pitchChange.ts'
import type { Design } from '#shared/workbook/workbook.ts'
import { useSettings } from '../../state/settings.ts'
import { changeOfPitchTable } from '../../tables/benchTables.ts'
import { TableOut } from '../../tables/TableOut.tsx'
import { pitchWords } from '../../words/benchPitch.ts'
import { titles } from '../../words/tableHeadings.ts'
import { ChangeCells } from './ChangeCells.tsx'
import { changeRows, sumRemark } from './changeRows.ts'

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
  const remark = sumRemark(answer)
  return (
    <>
      <TableOut
        name={titles.pitch(name)}
        table={() => changeOfPitchTable(name, changeRows(design, openMm, answer), unit)}
      />
      <table className="figures changeTable">
        <caption>{pitchWords.caption}</caption>
        <thead>
          <tr>
            <th scope="col">{pitchWords.columns.part}</th>
            <th scope="col">{pitchWords.columns.now}</th>
            <th scope="col">{pitchWords.columns.add}</th>
            <th scope="col" title={pitchWords.addLegHelp}>
              {pitchWords.columns.addLeg}
            </th>
            <th scope="col">{pitchWords.columns.after}</th>
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
      {remark === null ? null : <p className="soft">{remark}</p>}
    </>
  )
}
