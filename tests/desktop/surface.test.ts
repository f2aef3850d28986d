import { expect } from 'vitest'
import { onDesktops } from './harness/onDesktops.ts'

onDesktops('What the page is given', (test) => {
  test('the bridge has exactly the members of its contract', async ({ desktop: { page } }) => {
    const members = await page.evaluate(() => Object.keys((globalThis as { ferrule?: object }).ferrule ?? {}))
    expect(members.sort()).toEqual([
      'adoptFile',
      'clearRecent',
      'closeWindow',
      'exportFile',
      'forgetDraft',
      'form',
      'keepDraft',
      'leftDrafts',
      'onClosing',
      'onCommand',
      'onFile',
      'onFileChanged',
      'openDraftFile',
      'openRecent',
      'openWorkbook',
      'print',
      'readCurrentFile',
      'recentWorkbooks',
      'releaseFile',
      'saveWorkbook',
      'saveWorkbookAs',
      'showState',
    ])
  })

  test('its members are functions that cannot be replaced, and the name of its form', async ({
    desktop: { page },
  }) => {
    const kinds = await page.evaluate(() => {
      const { ferrule } = globalThis as unknown as { ferrule: Record<string, unknown> }
      const before = ferrule.saveWorkbook
      try {
        ferrule.saveWorkbook = null
      } catch {
        // A frozen object refuses loudly in strict code and silently elsewhere.
      }
      return {
        form: ferrule.form,
        functions: Object.entries(ferrule).filter(([, member]) => typeof member === 'function').length,
        isSame: ferrule.saveWorkbook === before,
      }
    })
    expect(kinds).toEqual({ form: 'desktop', functions: 21, isSame: true })
  })

  test('neither Node nor Electron can be reached from the page', async ({ desktop: { page } }) => {
    const reached = await page.evaluate(() =>
      ['require', 'process', 'module', 'Buffer', 'global', 'electron', 'ipcRenderer'].filter(
        (name) => name in globalThis,
      ),
    )
    expect(reached).toEqual([])
  })
})
