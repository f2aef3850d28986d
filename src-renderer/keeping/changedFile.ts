import type { FileChange } from '#shared/bridge/bridge.ts'
import { openWorkbook } from '#shared/workbook/openWorkbook.ts'
import type { Workbook } from '#shared/workbook/workbook.ts'
import { bridge } from '../bridge/bridge.ts'
import { saveAs, takeOver, useFile } from '../state/fileActions.ts'
import { useWorkbook } from '../state/workbookStore.ts'
import { compareWords } from '../words/keeping.ts'
import { compared, useComparison } from './comparison.ts'

/** Another program changed the current file, or took it away: what is open counts as unsaved, and is asked about. */
export async function takeChange(change: FileChange): Promise<void> {
  const { fileName } = useFile.getState()
  if (fileName === null || useWorkbook.getState().workbook === null) return
  if (change === 'gone') return tell(compareWords.goneTitle(fileName), compareWords.gone)
  const answer = await bridge.readCurrentFile()
  if (answer.kind !== 'opened') return notOpened(fileName, answer.kind === 'failed' ? answer.message : '')
  const opened = openWorkbook(answer.text)
  if (!opened.ok) return notOpened(fileName, opened.failure.message)
  await askAbout(fileName, answer.ticket, opened.workbook)
}

function notOpened(fileName: string, message: string): void {
  tell(compareWords.changedTitle(fileName), compareWords.changedUnreadable(message))
}

/** No file holds the open work any more, so it counts as unsaved. */
function tell(title: string, message: string): void {
  useFile.setState({ saved: null, trouble: { title, message } })
}

async function askAbout(fileName: string, ticket: string, theirs: Workbook): Promise<void> {
  const { workbook } = useWorkbook.getState()
  if (workbook === null) return
  const differences = await compared(theirs, workbook)
  if (differences.length === 0) {
    await bridge.adoptFile(ticket)
    useFile.setState({ saved: workbook })
    return
  }
  useFile.setState({ saved: theirs })
  const take = (): void => void bridge.adoptFile(ticket).then(() => takeOver(theirs))
  useComparison.setState({
    shown: {
      title: compareWords.changedTitle(fileName),
      lead: compareWords.changedLead,
      mine: compareWords.open,
      differences,
      trouble: null,
      choices: [
        { label: compareWords.keepMine, act: () => undefined },
        { label: compareWords.takeFile, act: take },
        { label: compareWords.saveAs, act: () => void saveAs() },
      ],
    },
  })
}
