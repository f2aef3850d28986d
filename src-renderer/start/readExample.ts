import type { Example } from '#shared/workbook/examples/examples.ts'
import { openWorkbook } from '#shared/workbook/openWorkbook.ts'
import { startWorkbook, useFile } from '../state/fileActions.ts'
import { filesWords } from '../words/files.ts'

const texts = import.meta.glob<string>('../../src-shared/workbook/examples/*.ferrule', {
  query: '?raw',
  import: 'default',
})

/** Opens an example as a workbook without a file. */
export async function openExample({ file, title }: Example): Promise<void> {
  const text = await texts[`../../src-shared/workbook/examples/${file}`]?.()
  const opened = openWorkbook(text ?? '')
  if (opened.ok) startWorkbook(opened.workbook)
  else useFile.setState({ trouble: { title: filesWords.notOpened(title), message: opened.failure.message } })
}
