import { markupText, tabText } from '#shared/table/clipboard.ts'
import type { Table } from '#shared/table/table.ts'

/**
 * Puts a table on the clipboard, as text and as markup. Says whether it is there. A copy that a person asks for
 * needs no permission, unlike writing to the clipboard at any time.
 */
export function copyTable(table: Table): boolean {
  let taken = false
  const copy = (event: ClipboardEvent): void => {
    event.clipboardData?.setData('text/plain', tabText(table))
    event.clipboardData?.setData('text/html', markupText(table))
    event.preventDefault()
    event.stopImmediatePropagation()
    taken = event.clipboardData !== null
  }
  document.addEventListener('copy', copy, { capture: true, once: true })
  try {
    return document.execCommand('copy') && taken
  } finally {
    document.removeEventListener('copy', copy, { capture: true })
  }
}
