import { megabytesText, mostBytes } from '#shared/workbook/fileLimit.ts'
import { bridgeWords as words } from '../words/bridge.ts'
import { decodeUtf8 } from './decodeUtf8.ts'

export type ReadAnswer =
  | { readonly kind: 'read'; readonly text: string }
  | { readonly kind: 'failed'; readonly message: string }

/** Reads a workbook's text; its size is looked at first. */
export async function readFile(file: File): Promise<ReadAnswer> {
  if (file.size > mostBytes) {
    return { kind: 'failed', message: words.tooLarge(file.name, megabytesText(mostBytes)) }
  }
  let content: ArrayBuffer
  try {
    content = await file.arrayBuffer()
  } catch {
    return { kind: 'failed', message: words.notReadable(file.name) }
  }
  const text = decodeUtf8(content)
  return text === null ? { kind: 'failed', message: words.notText(file.name) } : { kind: 'read', text }
}
