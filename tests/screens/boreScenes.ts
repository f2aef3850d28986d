import type { Page } from 'playwright-core'
import { openExample } from '../window/steps.ts'
import type { Scene } from './scenes.ts'

async function bore(page: Page, title: RegExp): Promise<void> {
  await openExample(page, title)
  await page.getByRole('tab', { name: 'Bore' }).click()
}

/** A design without a bore. */
async function noBore(page: Page): Promise<void> {
  await bore(page, /Alto in E/)
  await page.getByRole('heading', { name: 'No bore yet' }).waitFor()
}

/** A design with a bore. */
async function fullBore(page: Page): Promise<void> {
  await bore(page, /Bass in F/)
  await page.locator('.modelsSays').waitFor()
}

async function picture(page: Page, name: string, table = false): Promise<void> {
  await fullBore(page)
  await page.getByRole('button', { name, exact: true }).click()
  for (const fingering of ['1', '1-2', '4']) {
    await page.locator('.overlays').getByRole('button', { name: fingering, exact: true }).click()
  }
  if (table) await page.getByRole('button', { name: 'Table', exact: true }).click()
  await page.waitForTimeout(300)
  await page.locator('.borePictures').evaluate((place) => place.scrollIntoView())
}

/** Points as a spreadsheet copies them, the seventh line of which is a slip. */
const slippedProfile = [
  'x, mm\tdiameter, mm',
  '0\t9',
  '100\t11.7',
  '300\t11.7',
  '900\t11.7',
  '1200\t22',
  '1300\t48,5,1',
  '1400\t122',
].join('\n')

export const boreScenes: readonly Scene[] = [
  { name: 'bore-empty', set: noBore },
  {
    name: 'bore-paste',
    set: async (page) => {
      await noBore(page)
      await page.getByRole('textbox', { name: 'Distance and diameter' }).fill(slippedProfile)
      await page.getByRole('alert').waitFor()
      await page.getByRole('alert').scrollIntoViewIfNeeded()
    },
  },
  {
    name: 'bore',
    set: async (page) => {
      await fullBore(page)
      await page.getByRole('button', { name: 'diameters stretched' }).click()
    },
  },
  {
    name: 'bore-models',
    set: async (page) => {
      await fullBore(page)
      await page.getByRole('button', { name: 'the difference' }).click()
      await page.getByRole('button', { name: 'Table', exact: true }).click()
      await page.locator('.borePictures').evaluate((place) => place.scrollIntoView())
    },
  },
  { name: 'bore-impedance', set: (page) => picture(page, 'impedance') },
  { name: 'bore-peaks', set: (page) => picture(page, 'impedance', true) },
  { name: 'bore-fundamental', set: (page) => picture(page, 'equivalent fundamental', true) },
  { name: 'bore-group', set: (page) => picture(page, 'group length', true) },
  { name: 'bore-sum', set: (page) => picture(page, 'weighted sum', true) },
  {
    name: 'bore-sections',
    set: async (page) => {
      await fullBore(page)
      await page
        .getByRole('textbox', { name: 'Name of section 7' })
        .fill('the branch that was soldered twice')
      await page.locator('.boreEditor').evaluate((place) => place.scrollIntoView())
    },
  },
  {
    name: 'bore-fit',
    set: async (page) => {
      await fullBore(page)
      await page.locator('.fold', { hasText: 'Fit to targets' }).locator('summary').click()
      await page.getByRole('checkbox', { name: 'flare of bell' }).check()
      await page.getByRole('button', { name: 'Fit', exact: true }).click()
      await page.getByRole('region', { name: 'Fitted' }).waitFor()
      await page.getByRole('region', { name: 'Fitted' }).scrollIntoViewIfNeeded()
    },
  },
  {
    name: 'bore-twelve',
    set: async (page) => {
      await page.getByRole('button', { name: 'New workbook…' }).click()
      await page.getByRole('radio', { name: /Plain, six valves/ }).check()
      await page.getByRole('button', { name: 'Create workbook' }).click()
      for (let valve = 7; valve <= 12; valve++)
        await page.getByRole('button', { name: 'Add a valve' }).click()
      await page.getByRole('tab', { name: 'Bore' }).click()
      await page.getByRole('button', { name: /^Middle instrument/ }).click()
      await page.locator('.modelsSays').waitFor()
      await page.getByRole('button', { name: 'all', exact: true }).click()
    },
  },
]
