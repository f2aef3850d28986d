import type { ExportedFile } from '#shared/bridge/bridge.ts'
import { useFile } from '../state/fileActions.ts'
import { printingWords } from '../words/benchPrinting.ts'
import { bridge } from './bridge.ts'

/** Offers a file for keeping; what goes wrong is said. */
export async function keepExport(file: ExportedFile): Promise<void> {
  const answer = await bridge.exportFile(file)
  if (answer.kind === 'failed')
    useFile.setState({ trouble: { title: printingWords.notKept(file.name), message: answer.message } })
}
