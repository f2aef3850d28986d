import type { Page } from 'playwright-core'
import { openBass, openExample, startFrom } from '../window/steps.ts'
import { benchScenes } from './benchScenes.ts'
import { boreScenes } from './boreScenes.ts'
import { findScenes } from './findScenes.ts'
import { keepingScenes } from './keepingScenes.ts'
import { lengthsScenes } from './lengthsScenes.ts'
import { listenScenes } from './listenScenes.ts'
import { outScenes } from './outScenes.ts'
import { picturesScenes } from './picturesScenes.ts'

/** One thing to look at: how to get there from the start page. */
export interface Scene {
  readonly name: string
  readonly set: (page: Page) => Promise<void>
}

async function tab(page: Page, name: string): Promise<void> {
  await page.getByRole('tab', { name }).click()
  // A page arrives when it is first asked for.
  await page.locator('#page > *').first().waitFor()
}

async function addDesign(page: Page, system: RegExp): Promise<void> {
  await page.getByRole('button', { name: 'Add a design…' }).click()
  await page.getByRole('radio', { name: system }).check()
  await page.getByRole('button', { name: 'Add design', exact: true }).click()
}

/** Three historic systems in one workbook. */
async function threeHistoric(page: Page): Promise<void> {
  await startFrom(page, /Early order/)
  await addDesign(page, /Cut-off/)
  await addDesign(page, /a loop a step/)
}

export const scenes: readonly Scene[] = [
  { name: 'start', set: async (page) => page.getByRole('heading', { name: 'Ferrule' }).waitFor() },
  {
    name: 'new',
    set: async (page) => {
      await page.getByRole('button', { name: 'New workbook…' }).click()
      await page.getByRole('radio', { name: /Compensating, four valves/ }).check()
    },
  },
  {
    name: 'curves',
    set: async (page) => {
      await openBass(page)
      await page
        .getByRole('row', { name: /^2-3-4/ })
        .getByRole('button')
        .nth(1)
        .click()
    },
  },
  {
    name: 'curves-all',
    set: async (page) => {
      await openBass(page)
      await page.getByRole('button', { name: 'all', exact: true }).click()
    },
  },
  {
    name: 'curves-notes',
    set: async (page) => {
      await openBass(page)
      await page.getByRole('button', { name: 'by note' }).click()
      await page.getByRole('row', { name: /^A2/ }).getByRole('button').first().click()
    },
  },
  {
    name: 'loop-open',
    set: async (page) => {
      await openBass(page)
      await page
        .getByRole('button', { name: /^third/ })
        .first()
        .click()
    },
  },
  {
    name: 'fingerings',
    set: async (page) => {
      await openBass(page)
      await tab(page, 'Fingerings')
    },
  },
  {
    name: 'compare',
    set: async (page) => {
      await openBass(page)
      await tab(page, 'Compare')
    },
  },
  { name: 'double-horn', set: (page) => openExample(page, /Double horn/) },
  { name: 'cut-off', set: (page) => openExample(page, /Six-valve trombone/) },
  { name: 'early', set: (page) => openExample(page, /Early two-valve/) },
  {
    name: 'air',
    set: async (page) => {
      await openBass(page)
      await page.getByRole('button', { name: /^air/ }).click()
    },
  },
  {
    name: 'menu',
    set: async (page) => {
      await openBass(page)
      await page.getByRole('button', { name: 'File' }).click()
    },
  },
  {
    name: 'slip',
    set: async (page) => {
      await openBass(page)
      const field = page.getByRole('textbox', { name: 'A4' })
      await field.fill('44')
      await field.press('Enter')
      const loop = page.getByRole('textbox', { name: /^Length of third$/ })
      await loop.fill('2 ft 3')
      await loop.press('Enter')
    },
  },
  {
    name: 'no-designs',
    set: async (page) => {
      await openExample(page, /Early two-valve/)
      for (let left = await page.locator('.card').count(); left > 0; left--) {
        await page.locator('.cardName').first().press('Delete')
      }
      await page.getByRole('heading', { name: 'No designs yet' }).waitFor()
    },
  },
  {
    name: 'historic',
    set: async (page) => {
      await threeHistoric(page)
      await page.getByRole('button', { name: 'by note' }).click()
    },
  },
  {
    name: 'historic-steps',
    set: async (page) => {
      await threeHistoric(page)
      await page.getByRole('columnheader', { name: 'semitones' }).waitFor()
    },
  },
  {
    name: 'twelve',
    set: async (page) => {
      await startFrom(page, /Plain, six valves/)
      for (let valve = 7; valve <= 12; valve++)
        await page.getByRole('button', { name: 'Add a valve' }).click()
      await page.getByRole('slider', { name: 'Length of twelfth' }).scrollIntoViewIfNeeded()
    },
  },
  {
    name: 'twelve-all',
    set: async (page) => {
      await startFrom(page, /Plain, six valves/)
      for (let valve = 7; valve <= 12; valve++)
        await page.getByRole('button', { name: 'Add a valve' }).click()
      await page.getByRole('button', { name: 'all', exact: true }).click()
    },
  },
  {
    name: 'long-names',
    set: async (page) => {
      await openBass(page)
      await page.locator('.cardName').first().press('F2')
      const name = page.getByRole('textbox', { name: 'Design name' })
      await name.fill(
        'Plain bass with four valves as it came in from the flood, before anything was straightened',
      )
      await name.press('Enter')
    },
  },
  {
    name: 'question',
    set: async (page) => {
      await openBass(page)
      await page.getByRole('slider', { name: 'Length of first', exact: true }).press('ArrowRight')
      await page.getByRole('button', { name: 'File' }).click()
      await page.getByRole('menuitem', { name: /^Open/ }).click()
      await page.getByRole('dialog').waitFor()
    },
  },
  ...lengthsScenes,
  ...benchScenes,
  ...listenScenes,
  ...boreScenes,
  ...picturesScenes,
  ...keepingScenes,
  ...outScenes,
  ...findScenes,
]
