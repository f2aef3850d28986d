import type { ReactNode } from 'react'
import { lengthText } from '#shared/quantity/figures.ts'
import { gateWords } from '#shared/valves/gate.ts'
import { meantLoop } from '#shared/workbook/commands/takeLoops.ts'
import type { LoopRow } from '#shared/workbook/loopRows/readLoops.ts'
import type { Design } from '#shared/workbook/workbook.ts'
import { useSettings } from '../state/settings.ts'
import { loopsInWords as words } from '../words/loopsIn.ts'

interface LoopsPreviewProps {
  readonly rows: readonly LoopRow[]
  readonly design: Design
  /** Every line was understood. */
  readonly isWhole: boolean
}

/** The lines as they were understood, beside what the design has now. */
export function LoopsPreview({ rows, design, isWhole }: LoopsPreviewProps): ReactNode {
  const unit = useSettings((settings) => settings.unit)
  const length = (mm: number | undefined): string => (mm === undefined ? '' : lengthText(mm, unit))
  return (
    <div className="loopsInPreview">
      <table className="figures">
        <caption>{isWhole ? words.preview : words.readSoFar}</caption>
        <thead>
          <tr>
            <th scope="col">{words.loop}</th>
            <th scope="col">{words.line}</th>
            <th scope="col">{words.now}</th>
            <th scope="col">{words.length}</th>
            <th scope="col">{words.bore}</th>
            <th scope="col">{words.valves}</th>
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => {
            const before = meantLoop(design.loops, row)
            return (
              <tr key={row.line}>
                <th scope="row">{row.name}</th>
                <td>{row.line}</td>
                <td className="soft">{before === undefined ? words.isNew : length(before.lengthMm)}</td>
                <td>
                  <b>{length(row.lengthMm)}</b>
                </td>
                <td>{length(row.diameterMm)}</td>
                <td>{gateOf(row)}</td>
              </tr>
            )
          })}
        </tbody>
      </table>
    </div>
  )
}

function gateOf({ pressed, released }: LoopRow): string {
  if (pressed === undefined) return words.asItIs
  return gateWords(released === undefined ? { pressed } : { pressed, released })
}
