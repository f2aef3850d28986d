import { create } from 'zustand'
import { decodeUtf8 } from '../bridge/decodeUtf8.ts'
import { useDialog } from '../dialogs/dialogStore.ts'
import { useFile } from '../state/fileActions.ts'
import { useWorkbook } from '../state/workbookStore.ts'
import { loopsInWords as words } from '../words/loopsIn.ts'

/** The table that the dialog begins with. */
export const useLoopsText = create<{ readonly text: string }>()(() => ({ text: '' }))

/** Opens the dialog for a table of loops, with a text to begin with. */
export function openLoops(text = ''): void {
  useLoopsText.setState({ text })
  useDialog.setState({ open: 'loops' })
}

/** Whether a file is a table by its name. */
export function isTableFile({ name }: File): boolean {
  return /\.(csv|tsv|txt)$/i.test(name)
}

/** A table dropped on the window or chosen opens the dialog. */
export async function takeTableFile(file: File): Promise<void> {
  const { workbook } = useWorkbook.getState()
  if (workbook === null || workbook.designs.length === 0) {
    useFile.setState({ trouble: words.noWorkbook })
    return
  }
  const text = await readTableFile(file)
  if (text !== null) openLoops(text)
}

const mostBytes = 1024 ** 2

/** The text of a table's file; `null`, and the reason said, when it is too large or cannot be read. */
export async function readTableFile(file: File): Promise<string | null> {
  const megabytes = file.size / 1024 ** 2
  try {
    if (file.size <= mostBytes) return decoded(await file.arrayBuffer())
    useFile.setState({ trouble: { title: words.notRead(file.name), message: words.tooLarge(megabytes) } })
  } catch (error) {
    useFile.setState({ trouble: { title: words.notRead(file.name), message: String(error) } })
  }
  return null
}

/** UTF-8, or what spreadsheets write that do not know it. */
function decoded(content: ArrayBuffer): string {
  return decodeUtf8(content) ?? new TextDecoder('windows-1252').decode(content)
}
