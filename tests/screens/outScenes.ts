import type { Page } from 'playwright-core'
import { openBass } from '../window/steps.ts'
import type { Scene } from './scenes.ts'

async function loopsDialog(page: Page, text: string): Promise<void> {
  await openBass(page)
  await page.getByRole('button', { name: 'Loops in and out' }).click()
  await page.getByRole('menuitem', { name: 'Loops from a table…' }).click()
  await page.getByRole('textbox', { name: 'Paste from a spreadsheet' }).fill(text)
}

const longName = 'first, compensating, by way of the long passage under the case'.slice(0, 58)

/** What leaves the program and what comes in. */
export const outScenes: readonly Scene[] = [
  {
    name: 'report',
    set: async (page) => {
      await openBass(page)
      await page.getByRole('button', { name: 'File' }).click()
      await page.getByRole('menuitem', { name: 'Report…' }).click()
      await page.getByRole('checkbox', { name: 'comparison' }).uncheck()
    },
  },
  { name: 'loops-in-empty', set: (page) => loopsDialog(page, '') },
  {
    name: 'loops-in',
    set: (page) =>
      loopsDialog(
        page,
        `loop;length (mm);bore;valves down;colour\nfirst;486,5;17,2;1;red\n${longName};162,9;;1-4;blue\nsecond;247,7;;2;`,
      ),
  },
  {
    name: 'loops-in-refused',
    set: (page) =>
      loopsDialog(
        page,
        'first;abc;1\nsecond;83,2;7\n;100;1\nthird;-5;3\nfourth;353;4\nfourth;353;4\nfifth;1,000;1-2',
      ),
  },
  {
    name: 'loops-menu',
    set: async (page) => {
      await openBass(page)
      const menu = page.getByRole('button', { name: 'Loops in and out' })
      await menu.scrollIntoViewIfNeeded()
      await menu.click()
    },
  },
]
