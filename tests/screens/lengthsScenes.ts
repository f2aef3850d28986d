import type { Page } from 'playwright-core'
import type { Scene } from './scenes.ts'

async function lengthsOf(page: Page, title: RegExp): Promise<void> {
  await page.getByRole('button', { name: title }).click()
  await page.getByRole('tab', { name: 'Lengths' }).click()
  await page.getByRole('button', { name: 'Take these lengths' }).waitFor()
}

async function threeClicks(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'largest', exact: true }).click()
  await page.getByRole('button', { name: 'Count 3', exact: true }).click()
  await page.getByRole('button', { name: 'free', exact: true }).click()
  await page.getByRole('cell', { name: '±11.5', exact: true }).first().waitFor()
}

const fold = (page: Page, name: string) =>
  page.getByRole('group').filter({ hasText: name }).locator('summary')

/** The Lengths page, its folds opened one at a time. */
export const lengthsScenes: readonly Scene[] = [
  {
    name: 'lengths',
    set: async (page) => {
      await lengthsOf(page, /Alto in E/)
      await threeClicks(page)
      await page.locator('.trade:not(.waiting)').waitFor()
    },
  },
  {
    name: 'lengths-table',
    set: async (page) => {
      await lengthsOf(page, /Alto in E/)
      await threeClicks(page)
      await page.getByRole('combobox', { name: 'What third may be' }).scrollIntoViewIfNeeded()
      await page.getByRole('button', { name: 'Bounds of third' }).click()
      await page.getByRole('textbox', { name: 'third within ±' }).fill('20')
      await page.getByRole('textbox', { name: 'third within ±' }).press('Enter')
      await page.getByText('at its bound').waitFor()
      await page.locator('.loopTable').scrollIntoViewIfNeeded()
    },
  },
  {
    name: 'lengths-tied',
    set: async (page) => {
      await lengthsOf(page, /Bass in F/)
      await page.getByRole('button', { name: 'Compensating on the fourth', exact: true }).first().click()
      await page
        .getByRole('combobox', { name: /What .*compensating may be/ })
        .first()
        .selectOption('tied')
      await page.getByRole('button', { name: 'exact behind its valve' }).click()
      await page.getByRole('button', { name: 'exact behind its valve' }).scrollIntoViewIfNeeded()
    },
  },
  {
    name: 'lengths-resonances',
    set: async (page) => {
      await lengthsOf(page, /Bass in F/)
      await page.getByRole('button', { name: 'resonances', exact: true }).click()
      await page.getByRole('button', { name: 'largest', exact: true }).click()
      await page.getByText('The largest is held by').getByText('mode 2').first().waitFor()
    },
  },
  {
    name: 'lengths-refused',
    set: async (page) => {
      await lengthsOf(page, /Alto in E/)
      for (const loop of ['first', 'second', 'third']) {
        await page.getByRole('combobox', { name: `What ${loop} may be` }).selectOption('held')
      }
      await page.getByText('Nothing is free').waitFor()
      await page.getByRole('button', { name: 'Count 3', exact: true }).scrollIntoViewIfNeeded()
    },
  },
  {
    name: 'lengths-doubt',
    set: async (page) => {
      await lengthsOf(page, /Alto in E/)
      await threeClicks(page)
      await fold(page, 'Doubt').click()
      await page.getByRole('button', { name: 'worst case' }).click()
      await page.locator('.tolerances').scrollIntoViewIfNeeded()
      await page.locator('.sheet.lengths').evaluate((sheet) => sheet.scrollTo(0, 760))
    },
  },
  {
    name: 'lengths-bands',
    set: async (page) => {
      await lengthsOf(page, /Alto in E/)
      await threeClicks(page)
      await fold(page, 'Doubt').click()
      await page.getByRole('button', { name: 'worst case' }).click()
      await page.locator('.sheet.lengths').evaluate((sheet) => sheet.scrollTo(0, 0))
    },
  },
  {
    name: 'lengths-slides',
    set: async (page) => {
      await lengthsOf(page, /Alto in E/)
      await fold(page, 'Slides moved').click()
      await page.getByRole('checkbox', { name: 'first' }).check()
      await page.getByRole('checkbox', { name: 'third' }).check()
      await page.locator('.movementTable').scrollIntoViewIfNeeded()
      await page.locator('.sheet.lengths').evaluate((sheet) => sheet.scrollTo(0, sheet.scrollHeight))
    },
  },
  {
    name: 'lengths-wall',
    set: async (page) => {
      await lengthsOf(page, /Alto in E/)
      await fold(page, 'Slides moved').click()
      await page.getByRole('checkbox', { name: 'first' }).check()
      await page.getByRole('checkbox', { name: 'third' }).check()
      await page.getByRole('button', { name: 'Wall chart…' }).click()
    },
  },
  {
    name: 'lengths-systems',
    set: async (page) => {
      await lengthsOf(page, /Alto in E/)
      await threeClicks(page)
      await fold(page, 'Several systems').click()
      await page.getByText('has the least largest error').waitFor()
      await page.locator('.sheet.lengths').evaluate((sheet) => sheet.scrollTo(0, sheet.scrollHeight))
    },
  },
]
