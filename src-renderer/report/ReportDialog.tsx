import { type ReactNode, useEffect, useRef, useState } from 'react'
import { jobCount } from '#shared/workbook/commands/benchCommands.ts'
import type { Workbook } from '#shared/workbook/workbook.ts'
import { useBench } from '../bench/benchStore.ts'
import { printInstead } from '../bench/sheet/paper.ts'
import { today } from '../bench/sheet/today.ts'
import { bridge } from '../bridge/bridge.ts'
import { Dialog } from '../dialogs/Dialog.tsx'
import { closeDialog } from '../dialogs/dialogStore.ts'
import { Segments } from '../fields/Choice.tsx'
import '../look/report.css'
import { useDerived } from '../state/derived.ts'
import { useView } from '../state/viewStore.ts'
import { useWorkbook } from '../state/workbookStore.ts'
import { reportWords as words } from '../words/report.ts'

import { boreFindings } from './boreFindings.ts'
import { Report } from './Report.tsx'
import { type ReportPart, reportParts, tickPart, useReport } from './reportStore.ts'

/** What of the workbook comes out on paper. */
export function ReportDialog(): ReactNode {
  const workbook = useWorkbook((state) => state.workbook)
  const all = useDerived()
  const hidden = useView((state) => state.hidden)
  const parts = useReport((state) => state.parts)
  const paper = useBench((state) => state.paper)
  const [reckoning, setReckoning] = useState(false)
  const isOpen = useRef(true)
  useEffect(() => {
    isOpen.current = true
    return () => {
      isOpen.current = false
    }
  }, [])
  if (workbook === null) return null
  const empty = emptyParts(workbook)
  const chosen = new Set([...parts].filter((part) => !empty.has(part)))
  const print = async (to: 'printer' | 'pdf'): Promise<void> => {
    setReckoning(true)
    const bores = chosen.has('bore') ? await boreFindings(workbook, all) : new Map()
    // Who has closed it meanwhile wants no paper any more.
    if (!isOpen.current) return
    closeDialog()
    await printInstead(
      <Report workbook={workbook} all={all} parts={chosen} bores={bores} hidden={hidden} />,
      {
        to,
        name: words.fileName(workbook.name),
        landscape: false,
        notPrinted: words.notPrinted,
        foot: words.foot(workbook.name, today()),
      },
    )
  }
  return (
    <Dialog title={words.title} onClose={closeDialog}>
      <p className="soft help">{words.help}</p>
      <fieldset className="reportParts">
        <legend className="unseen">{words.parts}</legend>
        {reportParts.map((part) => {
          const whyEmpty = empty.get(part)
          return (
            <label key={part} className="tick">
              <input
                type="checkbox"
                checked={parts.has(part) && whyEmpty === undefined}
                disabled={whyEmpty !== undefined}
                onChange={(event) => tickPart(part, event.target.checked)}
              />
              {words[part]}
              {whyEmpty === undefined ? null : <span className="soft"> ({whyEmpty})</span>}
            </label>
          )
        })}
      </fieldset>
      <div className="settings">
        <Segments
          label={words.paper}
          value={paper}
          options={[
            { value: 'A4', text: words.papers.A4 },
            { value: 'Letter', text: words.papers.Letter },
          ]}
          take={(value) => useBench.setState({ paper: value })}
        />
      </div>
      <div className="buttons">
        <button
          type="button"
          className="main"
          disabled={chosen.size === 0 || reckoning}
          onClick={() => void print('printer')}
        >
          {reckoning ? words.reckoning : words.print}
        </button>
        {bridge.form === 'desktop' ? (
          <button type="button" disabled={chosen.size === 0 || reckoning} onClick={() => void print('pdf')}>
            {words.pdf}
          </button>
        ) : null}
        <button type="button" onClick={closeDialog}>
          {words.cancel}
        </button>
      </div>
    </Dialog>
  )
}

const ofDesigns = reportParts.filter((part) => part !== 'bench')

/** Parts of which the workbook has nothing, and why. */
function emptyParts(workbook: Workbook): ReadonlyMap<ReportPart, string> {
  const { designs } = workbook
  const why = new Map<ReportPart, string>()
  if (jobCount(workbook) === 0) why.set('bench', words.nothingOnBench)
  if (!designs.some(({ bore }) => bore !== undefined)) why.set('bore', words.noBore)
  if (designs.length === 0) for (const part of ofDesigns) why.set(part, words.noDesign)
  return why
}
