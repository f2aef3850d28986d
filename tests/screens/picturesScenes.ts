import type { Page } from 'playwright-core'
import { openExample, startFrom } from '../window/steps.ts'
import type { Scene } from './scenes.ts'

async function picture(page: Page, title: RegExp, name: string): Promise<void> {
  await openExample(page, title)
  await show(page, name)
}

async function show(page: Page, name: string): Promise<void> {
  await page.getByRole('tab', { name: 'Pictures' }).click()
  await page.getByRole('navigation', { name: 'Pictures' }).getByRole('button', { name }).click()
  await page.locator('svg.picture, .neverInCompany').first().waitFor()
}

async function twelveValves(page: Page): Promise<void> {
  await startFrom(page, /Plain, six valves/)
  for (let valve = 7; valve <= 12; valve++) await page.getByRole('button', { name: 'Add a valve' }).click()
}

/** The picture pages; each with the design that tells most, and the widest and oddest ones. */
export const picturesScenes: readonly Scene[] = [
  { name: 'pictures', set: (page) => picture(page, /Bass in F/, 'Harmonics and scale') },
  {
    name: 'pictures-ruler',
    set: async (page) => {
      await picture(page, /Bass in F/, 'The tube ruler')
    },
  },
  {
    name: 'pictures-ruler-all',
    set: async (page) => {
      await picture(page, /Six-valve trombone/, 'The tube ruler')
      await page.getByText('The same figures in a table').click()
    },
  },
  { name: 'pictures-company', set: (page) => picture(page, /Alto in E/, 'A loop in company') },
  {
    name: 'pictures-company-growth',
    set: async (page) => {
      await picture(page, /Alto in E/, 'A loop in company')
      await page.locator('svg[data-picture="growth"]').scrollIntoViewIfNeeded()
    },
  },
  {
    name: 'pictures-company-none',
    set: async (page) => {
      await picture(page, /Six-valve trombone/, 'A loop in company')
    },
  },
  { name: 'pictures-air', set: (page) => picture(page, /Alto in E/, 'How the air runs') },
  {
    name: 'pictures-air-compensating',
    set: async (page) => {
      await picture(page, /Bass in F/, 'How the air runs')
      await page.locator('.cardName').nth(1).click()
      for (const key of ['0', '1', '2', '4']) await page.keyboard.press(key)
    },
  },
  {
    name: 'pictures-air-double',
    set: async (page) => {
      await picture(page, /Double horn/, 'How the air runs')
      await page.locator('.cardName').nth(1).click()
    },
  },
  { name: 'pictures-air-cut-off', set: (page) => picture(page, /Six-valve trombone/, 'How the air runs') },
  {
    name: 'pictures-air-combinations',
    set: async (page) => {
      await picture(page, /Bass in F/, 'How the air runs')
      await page.locator('.cardName').nth(3).click()
    },
  },
  {
    name: 'pictures-air-twelve',
    set: async (page) => {
      await twelveValves(page)
      await show(page, 'How the air runs')
      for (const key of ['5', '9']) await page.keyboard.press(key)
    },
  },
  { name: 'pictures-gallery', set: (page) => picture(page, /Alto in E/, 'Valve systems') },
  {
    name: 'pictures-long-name',
    set: async (page) => {
      await picture(page, /Early two-valve/, 'How the air runs')
      await page.locator('.cardName').first().press('F2')
      const name = page.getByRole('textbox', { name: 'Design name' })
      await name.fill('Two-valve horn as it came in from the flood, before anything was straightened')
      await name.press('Enter')
    },
  },
]
