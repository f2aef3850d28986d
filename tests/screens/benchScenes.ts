import type { Page } from 'playwright-core'
import { fill, openExample, pasteReadings } from '../window/steps.ts'
import type { Scene } from './scenes.ts'

async function bench(page: Page, title: RegExp): Promise<void> {
  await openExample(page, title)
  await page.getByRole('tab', { name: 'Bench' }).click()
  await page.getByRole('tabpanel').getByRole('heading').first().waitFor()
}

/** Rows of a bass with a third loop some millimetres short; the seventh is a slip of reading. */
export const tenReadings = [
  '0\t4\t0',
  '0\t6\t+3',
  '1\t4\t-2',
  '1\t6\t+1',
  '2\t4\t+1',
  '2\t6\t+3',
  '1-2\t4\t+54',
  '3\t4\t+12',
  '3\t6\t+16',
  '2-3\t4\t+19',
].join('\n')

export const benchScenes: readonly Scene[] = [
  { name: 'bench-empty', set: (page) => bench(page, /Bass in F/) },
  {
    name: 'bench-slide',
    set: async (page) => {
      await bench(page, /Alto in E/)
      await page.getByRole('button', { name: 'Size a slide' }).last().click()
      await fill(page, { 'Leg spacing': '38', 'Outer leg, each': '60', Bore: '13,2' })
    },
  },
  {
    name: 'bench-slide-long',
    set: async (page) => {
      await bench(page, /Bass in F/)
      await page.getByRole('button', { name: 'Size a slide' }).last().click()
      await page.getByText('Bow and further legs').click()
      await page.getByRole('button', { name: 'Add a pair of legs' }).click()
    },
  },
  {
    name: 'bench-slide-slips',
    set: async (page) => {
      await bench(page, /Alto in E/)
      await page.getByRole('button', { name: 'Size a slide' }).last().click()
      await fill(page, {
        'Leg spacing': '9',
        'Outer leg, each': '250',
        'Travel, movement': '1 3/16 in',
        'Out at pitch, movement': '40',
      })
    },
  },
  {
    name: 'bench-readings',
    set: async (page) => {
      await bench(page, /Bass in F/)
      await page.getByRole('button', { name: 'Read a tuner' }).last().click()
      await pasteReadings(page, tenReadings)
    },
  },
  {
    name: 'bench-readings-empty',
    set: async (page) => {
      await bench(page, /Bass in F/)
      await page.getByRole('button', { name: 'Read a tuner' }).last().click()
    },
  },
  {
    name: 'bench-pitch',
    set: async (page) => {
      await bench(page, /Alto in E/)
      await page.getByRole('button', { name: 'Change the pitch' }).last().click()
      await fill(page, { 'Travel, movement': '25', 'Out now, movement': '10' })
    },
  },
  {
    name: 'bench-one-piece',
    set: async (page) => {
      await bench(page, /Alto in E/)
      await page.getByRole('button', { name: 'the whole instrument' }).click()
    },
  },
]
