import type { Page } from 'playwright-core'

/** File dialogs that choose from the page's own private folder: real handles, without a person. Must stand alone. */
export function withPickers(): void {
  const handleOf = async (): Promise<FileSystemFileHandle> => {
    const folder = await navigator.storage.getDirectory()
    const name = sessionStorage.getItem('chosen')
    if (name === null) throw new DOMException('The person cancelled.', 'AbortError')
    return folder.getFileHandle(name, { create: true })
  }
  Object.assign(globalThis, {
    showOpenFilePicker: async () => [await handleOf()],
    showSaveFilePicker: handleOf,
  })
}

/** What the next file dialogs give; `null` is a person who cancels. */
export function choose(page: Page, name: string | null): Promise<void> {
  return page.evaluate((chosen) => {
    if (chosen === null) sessionStorage.removeItem('chosen')
    else sessionStorage.setItem('chosen', chosen)
  }, name)
}
