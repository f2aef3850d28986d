import { workbookEnding } from '#shared/bridge/fileName.ts'

/** Asks for a file to upload; `null` when the person cancelled. */
export function chooseUpload(): Promise<File | null> {
  const input = document.createElement('input')
  input.type = 'file'
  input.accept = `${workbookEnding},application/json`
  return new Promise((resolve) => {
    input.addEventListener('change', () => resolve(input.files?.[0] ?? null), { once: true })
    input.addEventListener('cancel', () => resolve(null), { once: true })
    input.click()
  })
}

/** How long a browser may take to begin reading what it downloads. */
const keptForMs = 60_000

/** Hands a file to the browser's downloads. What becomes of it there, the page is not told. */
export function download(name: string, content: Blob): void {
  const link = document.createElement('a')
  link.href = URL.createObjectURL(content)
  link.download = name
  link.click()
  setTimeout(() => URL.revokeObjectURL(link.href), keptForMs)
}
