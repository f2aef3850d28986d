import type { ReactNode } from 'react'
import type { PitchChangeAnswer } from '#shared/bench/pitchChange.ts'
import { signedCents } from '#shared/quantity/figures.ts'
import type { BenchPitchChange } from '#shared/workbook/bench.ts'
import type { Design, Workbook } from '#shared/workbook/workbook.ts'
import { useSettings } from '../../state/settings.ts'
import { addedText, ChangeCells } from '../pitch/ChangeCells.tsx'
import { changeRows } from '../pitch/changeRows.ts'
import { changeSentence } from '../pitch/changeSentence.ts'
import { reachSentences } from '../pitch/MainSlideReach.tsx'
import { Sheet } from './Sheet.tsx'
import { SheetList } from './SheetList.tsx'

interface PitchSheetProps {
  readonly workbook: Workbook
  readonly change: BenchPitchChange
  readonly design: Design
  readonly openMm: number
  readonly answer: PitchChangeAnswer
}

/** The sheet of a change of pitch. */
export function PitchSheet({ workbook, change, design, openMm, answer }: PitchSheetProps): ReactNode {
  const unit = useSettings((settings) => settings.unit)
  const signed = (mm: number): string => addedText(mm, unit)
  const rows = changeRows(design, openMm, answer)
  return (
    <Sheet
      kind="Change of pitch"
      name={change.id}
      workbook={workbook.name}
      design={design.name}
      notes={change.notes}
    >
      <p className="sheetAnswer">{changeSentence(change, answer)}</p>
      <section>
        <h2>Tube to add; with a minus, to take off</h2>
        {rows.length <= mostTableRows ? (
          <table className="figures">
            <thead>
              <tr>
                <th scope="col">part</th>
                <th scope="col">now, tube</th>
                <th scope="col">add, tube</th>
                <th scope="col">add, each leg</th>
                <th scope="col">then, tube</th>
                <th scope="col">done</th>
              </tr>
            </thead>
            <tbody>
              {rows.map((row, i) => (
                // biome-ignore lint/suspicious/noArrayIndexKey: two loops may have one name
                <tr key={i}>
                  <ChangeCells {...row} />
                  <td>
                    <span className="box" />
                  </td>
                </tr>
              ))}
            </tbody>
          </table>
        ) : (
          <SheetList
            rows={rows.map(({ part, tubeMm, perLegMm }, i) => ({
              name: `${i}. ${part}`,
              text: `${signed(tubeMm)} (leg ${signed(perLegMm)})`,
            }))}
            rest="loops"
          />
        )}
      </section>
      {design.mainSlide === undefined ? null : (
        <section>
          <h2>Main slide</h2>
          <ul>
            {reachSentences(openMm, design.mainSlide, change, unit).map((sentence) => (
              <li key={sentence}>{sentence}</li>
            ))}
          </ul>
        </section>
      )}
      <section>
        <h2>If only the body is changed, cents</h2>
        <SheetList
          rows={Object.entries(answer.ifOnlyBodyErrorsCents).map(([name, cents]) => ({
            name,
            text: `${signedCents(cents)} (now ${signedCents(answer.beforeErrorsCents[name] ?? 0)})`,
          }))}
          rest="fingerings"
        />
      </section>
    </Sheet>
  )
}

/** Beyond this many rows a table would not leave room for the rest of the page. */
const mostTableRows = 20
