import type { Page } from 'playwright-core'
import { describe, expect } from 'vitest'
import { browserTest } from '../desktop/harness/browserForm.ts'
import { focused, openExample } from './steps.ts'

/** Looks for something with the keyboard alone and goes to what comes first. */
async function find(page: Page, typed: string): Promise<void> {
  // Keys are heard once the window stands.
  await page.locator('.start, .strip').first().waitFor()
  await page.keyboard.press('Control+k')
  await page.getByRole('combobox', { name: /^Field, design/ }).waitFor()
  await page.keyboard.type(typed)
  await expect.poll(() => page.locator('.found[aria-selected="true"]').count(), { timeout: 4000 }).toBe(1)
  await page.keyboard.press('Enter')
  await page.getByRole('combobox', { name: /^Field, design/ }).waitFor({ state: 'detached' })
}

async function close(page: Page): Promise<void> {
  await page.keyboard.press('Escape')
  await page.getByRole('dialog').waitFor({ state: 'detached' })
}

const chosenTab = (page: Page) => page.getByRole('tab', { selected: true }).textContent()
const account = (page: Page) => page.locator('.account h3').textContent()

describe('finding, by the keyboard alone', () => {
  browserTest('goes to fields, loops, designs, notes, fingerings and pages', async ({ form }) => {
    const { page, complaints } = await form.open()
    await openExample(page, 'Bass in F, four ways')
    await find(page, 'a4')
    await expect.poll(() => focused(page)).toBe('A4')
    await find(page, 'fundamental')
    await expect.poll(() => focused(page)).toBe('Fundamental')
    await find(page, 'transposition')
    await expect.poll(() => focused(page)).toBe('Transposition')
    await find(page, 'indep design')
    await expect
      .poll(() => page.locator('.cardName[aria-current="true"]').textContent())
      .toContain('Independent')
    await find(page, 'third plain')
    await expect.poll(() => focused(page)).toBe('Length of third')
    await expect
      .poll(() => page.locator('.cardName[aria-current="true"]').textContent())
      .toBe('Plain, four valves')
    await find(page, 'eb3')
    await expect.poll(() => account(page)).toMatch(/^E♭3, /)
    await expect.poll(() => page.getByRole('button', { name: 'by note', pressed: true }).count()).toBe(1)
    await find(page, '1-3-4')
    await expect.poll(() => account(page)).toMatch(/^1-3-4 is \+136\.7/)
    await find(page, 'compare')
    expect(await chosenTab(page)).toBe('Compare')
    await find(page, 'd#3')
    expect(await chosenTab(page)).toBe('Fingerings')
    expect(complaints).toEqual([])
  })

  browserTest('gives commands, opens examples, and explains words and formulas', async ({ form }) => {
    const { page, complaints } = await form.open()
    await find(page, 'early two')
    await page.getByRole('complementary', { name: 'Line-up' }).waitFor()
    await find(page, 'humidity')
    await expect.poll(() => focused(page)).toBe('Relative humidity')
    await close(page)
    await find(page, 'knuckle')
    await page
      .getByRole('dialog', { name: 'Help' })
      .locator('.on')
      .getByText('Knuckle', { exact: true })
      .waitFor()
    await close(page)
    await find(page, 'required length')
    await page.getByRole('dialog', { name: 'Help' }).locator('.on').waitFor()
    await close(page)
    await find(page, 'inches')
    await expect.poll(() => page.locator('.loops .unit').first().textContent()).toBe('in')
    await find(page, 'size slide')
    await expect.poll(() => chosenTab(page)).toBe('Bench')
    await find(page, 'least engaged')
    await expect.poll(() => focused(page)).toBe('Least engaged')
    await find(page, 'undo')
    await expect.poll(() => page.getByRole('button', { name: 'Undo', exact: true }).isDisabled()).toBe(true)
    expect(complaints).toEqual([])
  })

  browserTest(
    'shows the keys that are heard, and none that the browser keeps for itself',
    async ({ form }) => {
      const { page } = await form.open()
      await openExample(page, 'Bass in F, four ways')
      await page.getByRole('button', { name: 'File', exact: true }).click()
      const keysInMenu = (command: string) =>
        page.getByRole('menuitem', { name: command }).locator('kbd').allTextContents()
      expect(await keysInMenu('Save as…')).toEqual(['Ctrl+Shift+S'])
      expect(await keysInMenu('New workbook…')).toEqual([])
      await page.keyboard.press('Escape')
      await page.keyboard.press('Control+k')
      await page.keyboard.type('new workbook')
      const first = page.locator('.found').first()
      await expect.poll(() => first.textContent()).toContain('New workbook')
      expect(await first.textContent()).not.toContain('Ctrl')
      await page.getByRole('combobox', { name: /^Field, design/ }).fill('open')
      await expect
        .poll(() => page.locator('.found').allTextContents())
        .toContainEqual(expect.stringContaining('Ctrl+O'))
    },
  )

  browserTest('hears what is typed right after its key', async ({ form }) => {
    const { page } = await form.open()
    await openExample(page, 'Bass in F, four ways')
    // Once a dialog has been seen, the code of all of them is there.
    await page.getByRole('button', { name: 'Add a design…' }).click()
    await close(page)
    await page.keyboard.press('Control+k')
    await page.keyboard.type('1-3')
    await expect.poll(() => page.getByRole('combobox', { name: /^Field, design/ }).inputValue()).toBe('1-3')
  })

  browserTest('leaves everything as it was when it is closed or nothing fits', async ({ form }) => {
    const { page } = await form.open()
    await openExample(page, 'Bass in F, four ways')
    await find(page, 'a4')
    await page.keyboard.press('Control+k')
    await page.keyboard.type('clarinet')
    await page.getByText('Nothing is called “clarinet”').waitFor()
    await expect.poll(() => page.locator('.found').count()).toBe(0)
    await page.keyboard.press('Enter')
    await page.keyboard.press('Escape')
    await expect.poll(() => focused(page)).toBe('A4')
  })

  browserTest('names the chosen row to a screen reader, all round the list', async ({ form }) => {
    const { page } = await form.open()
    await page.locator('.start').waitFor()
    await page.keyboard.press('Control+k')
    const field = page.getByRole('combobox', { name: /^Field, design/ })
    const chosen = async (): Promise<string | null> => {
      const id = await field.getAttribute('aria-activedescendant')
      return page.locator(`[id="${id}"]`).textContent()
    }
    const first = await chosen()
    await page.keyboard.press('ArrowDown')
    expect(await chosen()).not.toBe(first)
    await page.keyboard.press('ArrowUp')
    expect(await chosen()).toBe(first)
    await page.keyboard.press('ArrowUp')
    await expect.poll(() => page.locator('.found').last().getAttribute('aria-selected')).toBe('true')
  })
})

describe('help where it is needed', () => {
  browserTest(
    'explains a word beside it, with its formula and source, and gives the focus back',
    async ({ form }) => {
      const { page, complaints } = await form.open()
      await openExample(page, 'Bass in F, four ways')
      const mark = page.getByRole('button', { name: 'Explain “effective length”' })
      await mark.focus()
      await page.keyboard.press('Enter')
      const text = page.getByRole('dialog', { name: 'Explain “effective length”' })
      await text.getByText('L = c / (2·f1)').waitFor()
      await expect.poll(() => text.textContent()).toContain('Source:')
      await page.keyboard.press('Escape')
      await text.waitFor({ state: 'detached' })
      await expect.poll(() => focused(page)).toBe('Explain “effective length”')
      await page.getByRole('button', { name: 'Explain “air”' }).click()
      await page.getByText('Cramer, J. Acoust. Soc. Am. 93, 2510 (1993).').waitFor()
      await page.getByRole('button', { name: 'All words and formulas…' }).click()
      await page
        .getByRole('dialog', { name: 'Help' })
        .locator('.on')
        .getByText('Air', { exact: true })
        .waitFor()
      expect(complaints).toEqual([])
    },
  )
})

describe('a first run', () => {
  browserTest('leads each of three people to a result with one press', async ({ form }) => {
    const { page, complaints } = await form.open()
    await page.getByRole('button', { name: /^Size a slide/ }).click()
    await page.getByRole('complementary', { name: 'Size a slide' }).waitFor()
    expect(await chosenTab(page)).toBe('Bench')
    await page.locator('.resultFigures').first().waitFor()
    await find(page, 'try compensating layout')
    await page.getByRole('button', { name: 'Don’t save' }).click()
    await page.getByRole('complementary', { name: 'Try a compensating layout' }).waitFor()
    await expect.poll(() => account(page)).toMatch(/^1-3-4 is \+30\.3/)
    await find(page, 'compare systems')
    await page.getByRole('complementary', { name: 'Compare systems' }).waitFor()
    expect(await chosenTab(page)).toBe('Compare')
    await page.getByRole('button', { name: 'Understood' }).click()
    await expect.poll(() => page.getByRole('complementary', { name: 'Compare systems' }).count()).toBe(0)
    expect(complaints).toEqual([])
  })

  browserTest('puts its tasks away for good when asked', async ({ form }) => {
    const { page } = await form.open()
    await page.getByRole('button', { name: 'Put these away' }).click()
    await expect.poll(() => page.getByRole('button', { name: /^Size a slide/ }).count()).toBe(0)
    await page.reload()
    await page.getByRole('heading', { name: 'Ferrule' }).waitFor()
    await expect.poll(() => page.getByRole('button', { name: /^Size a slide/ }).count()).toBe(0)
    await page.keyboard.press('F1')
    await page.getByRole('button', { name: 'First steps' }).click()
    await page.getByRole('button', { name: /^Compare systems/ }).waitFor()
  })
})
