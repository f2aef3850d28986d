import type { ReactNode } from 'react'
import { useBench } from '../bench/benchStore.ts'
import { printInstead } from '../bench/sheet/paper.ts'
import { bridge } from '../bridge/bridge.ts'
import { Dialog } from '../dialogs/Dialog.tsx'
import { closeDialog } from '../dialogs/dialogStore.ts'
import { Segments } from '../fields/Choice.tsx'
import '../look/report.css'
import { useDerived } from '../state/derived.ts'
import { useWorkbook } from '../state/workbookStore.ts'
import { reportWords as words } from '../words/report.ts'
import { jobCount } from './BenchPart.tsx'
import { Report } from './Report.tsx'
import { reportParts, tickPart, useReport } from './reportStore.ts'

/** What of the workbook comes out on paper. */
export function ReportDialog(): ReactNode {
  const workbook = useWorkbook((state) => state.workbook)
  const all = useDerived()
  const parts = useReport((state) => state.parts)
  const paper = useBench((state) => state.paper)
  if (workbook === null) return null
  const jobs = jobCount(workbook)
  const chosen = new Set([...parts].filter((part) => part !== 'bench' || jobs > 0))
  const print = async (to: 'printer' | 'pdf'): Promise<void> => {
    closeDialog()
    await printInstead(<Report workbook={workbook} all={all} parts={chosen} />, {
      to,
      name: words.fileName(workbook.name),
      landscape: false,
      notPrinted: words.notPrinted,
    })
  }
  return (
    <Dialog title={words.title} onClose={closeDialog}>
      <p className="soft help">{words.help}</p>
      <fieldset className="reportParts">
        <legend className="unseen">{words.parts}</legend>
        {reportParts.map((part) => {
          const isEmpty = part === 'bench' && jobs === 0
          return (
            <label key={part} className="tick">
              <input
                type="checkbox"
                checked={parts.has(part) && !isEmpty}
                disabled={isEmpty}
                onChange={(event) => tickPart(part, event.target.checked)}
              />
              {words[part]}
              {isEmpty ? <span className="soft"> ({words.nothingOnBench})</span> : null}
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
          disabled={chosen.size === 0}
          onClick={() => void print('printer')}
        >
          {words.print}
        </button>
        {bridge.form === 'desktop' ? (
          <button type="button" disabled={chosen.size === 0} onClick={() => void print('pdf')}>
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
