import type { ReactNode } from 'react'
import type { PitchChangeAnswer } from '#shared/bench/pitchChange.ts'
import { signedCents } from '#shared/quantity/figures.ts'
import type { BenchPitchChange } from '#shared/workbook/bench.ts'
import type { Design, Workbook } from '#shared/workbook/workbook.ts'
import { useSettings } from '../../state/settings.ts'
import { benchWords } from '../../words/bench.ts'
import { pitchWords } from '../../words/benchPitch.ts'
import { addedText, ChangeCells } from '../pitch/ChangeCells.tsx'
import { changeRows, sumRemark } from '../pitch/changeRows.ts'
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
  const remark = sumRemark(answer)
  return (
    <Sheet
      kind={benchWords.lists.pitchChanges.title}
      name={change.id}
      workbook={workbook.name}
      design={design.name}
      notes={change.notes}
    >
      <p className="sheetAnswer">{changeSentence(change, answer)}</p>
      <section>
        <h2>{pitchWords.caption}</h2>
        {rows.length <= mostTableRows ? (
          <table className="figures">
            <thead>
              <tr>
                <th scope="col">{pitchWords.columns.part}</th>
                <th scope="col">{pitchWords.columns.now}</th>
                <th scope="col">{pitchWords.columns.add}</th>
                <th scope="col">{pitchWords.columns.addLeg}</th>
                <th scope="col">{pitchWords.columns.after}</th>
                <th scope="col">{pitchWords.columns.done}</th>
              </tr>
            </thead>
            <tbody>
              {rows.map((row, i) => (
                // biome-ignore lint/suspicious/noArrayIndexKey: two loops may have one name
                <tr key={i}>
                  <ChangeCells {...row} />
                  <td>{row.isSum === true ? null : <span className="box" />}</td>
                </tr>
              ))}
            </tbody>
          </table>
        ) : (
          <SheetList
            rows={rows.map(({ part, tubeMm, perLegMm }, i) => ({
              name: `${i}. ${part}`,
              text: pitchWords.sheetLoop(signed(tubeMm), signed(perLegMm)),
            }))}
            rest={pitchWords.sheetLoops}
          />
        )}
        {remark === null ? null : <p>{remark}</p>}
      </section>
      {design.mainSlide === undefined ? null : (
        <section>
          <h2>{pitchWords.sheetMainSlide}</h2>
          <ul>
            {reachSentences(openMm, design.mainSlide, change, unit).map((sentence) => (
              <li key={sentence}>{sentence}</li>
            ))}
          </ul>
        </section>
      )}
      <section>
        <h2>{pitchWords.sheetBodyAlone}</h2>
        <SheetList
          rows={Object.entries(answer.ifOnlyBodyErrorsCents).map(([name, cents]) => ({
            name,
            text: pitchWords.sheetFingering(
              signedCents(cents),
              signedCents(answer.beforeErrorsCents[name] ?? 0),
            ),
          }))}
          rest={pitchWords.sheetFingerings}
        />
      </section>
    </Sheet>
  )
}

/** Beyond this many rows a table would not leave room for the rest of the page. */
const mostTableRows = 20
