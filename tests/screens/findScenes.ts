import type { Page } from 'playwright-core'
import { openBass } from '../window/steps.ts'
import type { Scene } from './scenes.ts'

/** Keys are heard once the window stands. */
async function stands(page: Page): Promise<void> {
  await page.locator('.start, .strip').first().waitFor()
}

async function find(page: Page, typed: string): Promise<void> {
  await stands(page)
  await page.keyboard.press('Control+k')
  await page.getByRole('combobox', { name: /^Field, design/ }).fill(typed)
}

async function help(page: Page, part: string): Promise<void> {
  await stands(page)
  await page.keyboard.press('F1')
  await page.getByRole('button', { name: part, exact: true }).click()
  await page.locator('.helpPart > *').first().waitFor()
}

export const findScenes: readonly Scene[] = [
  {
    name: 'find',
    set: async (page) => {
      await openBass(page)
      await find(page, 'third')
    },
  },
  { name: 'find-start', set: (page) => find(page, '') },
  {
    name: 'find-none',
    set: async (page) => {
      await openBass(page)
      await find(page, 'clarinet')
    },
  },
  {
    name: 'explained',
    set: async (page) => {
      await openBass(page)
      await page.getByRole('button', { name: 'Explain “combination error”' }).first().click()
      await page.getByText('1200·log2(required / route)').waitFor()
    },
  },
  {
    name: 'help-words',
    set: async (page) => {
      await help(page, 'Words')
      await page.getByText('Ascending valve', { exact: true }).waitFor()
    },
  },
  {
    name: 'help-formulas',
    set: async (page) => {
      await help(page, 'Formulas')
      await page.getByText('Speed of sound', { exact: true }).waitFor()
    },
  },
  { name: 'help-steps', set: (page) => help(page, 'First steps') },
  { name: 'help-keys', set: (page) => help(page, 'Signs and keys') },
  {
    name: 'first-slide',
    set: async (page) => {
      await page.getByRole('button', { name: /^Size a slide/ }).click()
      await page.getByRole('complementary', { name: 'Size a slide' }).waitFor()
      await page.getByRole('heading', { level: 1 }).first().waitFor()
    },
  },
  {
    name: 'first-compensating',
    set: async (page) => {
      await page.getByRole('button', { name: /^Try a compensating layout/ }).click()
      await page.getByRole('complementary', { name: 'Try a compensating layout' }).waitFor()
    },
  },
  {
    name: 'first-compare',
    set: async (page) => {
      await page.getByRole('button', { name: /^Compare systems/ }).click()
      await page.getByRole('complementary', { name: 'Compare systems' }).waitFor()
      await page.locator('#page > :not([aria-busy])').waitFor()
    },
  },
  {
    name: 'first-why',
    set: async (page) => {
      await page.getByRole('button', { name: /^See why it is out/ }).click()
      await page.getByRole('complementary', { name: 'See why it is out' }).waitFor()
      await page.locator('.picture').first().waitFor()
    },
  },
]
