import type { Page } from 'playwright-core'
import { choose, withPickers } from '../desktop/harness/pickers.ts'
import { openBass, openExample, type } from '../window/steps.ts'
import type { Scene } from './scenes.ts'

/** Saves an example to a file, changes it, and loses the page a while later without saving again. */
export async function lose(page: Page): Promise<void> {
  // Scripts run without the test runner mark their functions with this name, and the mark is sent along.
  await page.addInitScript({ content: 'globalThis.__name = (named) => named' })
  await page.addInitScript(withPickers)
  await page.reload()
  await openBass(page)
  await choose(page, 'bass.ferrule')
  await page.keyboard.press('Control+Shift+S')
  await page.getByRole('button', { name: 'Bass in F', exact: false }).first().waitFor()
  await type(page, 'A4', '442')
  await type(page, 'Length of third', '801.5')
  await page.locator('.cardName').nth(1).press('Delete')
  await page.waitForFunction(() =>
    Object.entries(localStorage).some(
      ([key, text]) =>
        key.startsWith('ferrule-draft:') && text.includes('801.5') && text.includes('bass.ferrule'),
    ),
  )
  page.once('dialog', (dialog) => void dialog.accept())
  await page.reload()
  await page.getByRole('button', { name: 'Compare with bass.ferrule…' }).waitFor()
}

export const keepingScenes: readonly Scene[] = [
  { name: 'left-work', set: lose },
  {
    name: 'left-work-compare',
    set: async (page) => {
      await lose(page)
      await page.getByRole('button', { name: 'Compare with bass.ferrule…' }).click()
      await page.getByRole('dialog').waitFor()
    },
  },
  {
    name: 'left-work-notice',
    set: async (page) => {
      await lose(page)
      await openExample(page, /Early two-valve/)
      await page.locator('.keepingNotice').waitFor()
    },
  },
  {
    name: 'left-work-dialog',
    set: async (page) => {
      await lose(page)
      await page.getByRole('button', { name: /Early two-valve/ }).click()
      await page.getByRole('button', { name: 'Show it…' }).click()
      await page.getByRole('dialog').waitFor()
    },
  },
]
