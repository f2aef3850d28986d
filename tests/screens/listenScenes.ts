import type { Page } from 'playwright-core'
import type { Scene } from './scenes.ts'

async function listen(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Listen…' }).click()
  await page.getByRole('region', { name: 'Listen' }).waitFor()
}

async function bassFigure(page: Page): Promise<void> {
  await page.getByRole('button', { name: /Bass in F/ }).click()
  await page
    .getByRole('row', { name: /^2-3-4/ })
    .getByRole('button')
    .nth(1)
    .click()
}

export const listenScenes: readonly Scene[] = [
  {
    name: 'listen-empty',
    set: async (page) => {
      await page.getByRole('button', { name: /Bass in F/ }).click()
      await listen(page)
    },
  },
  {
    name: 'listen-fingering',
    set: async (page) => {
      await bassFigure(page)
      await listen(page)
    },
  },
  {
    name: 'listen-note',
    set: async (page) => {
      await page.getByRole('button', { name: /Bass in F/ }).click()
      await page.getByRole('button', { name: 'by note' }).click()
      await page.getByRole('row', { name: /^A2/ }).getByRole('button').first().click()
      await listen(page)
      await page.getByRole('combobox', { name: 'Scale or chord' }).selectOption('majorChord')
      await page.getByRole('button', { name: 'together' }).click()
    },
  },
]
