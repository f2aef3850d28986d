import type { Page } from 'playwright-core'
import { describe, expect } from 'vitest'
import { type BrowserForm, browserTest, type OpenPage } from '../desktop/harness/browserForm.ts'
import { lengthsOf } from './steps.ts'

const alto = /Alto in E/
const chart = (page: Page) => page.getByRole('table', { name: 'Errors as it stands and as proposed' })
const largest = (page: Page) => chart(page).getByRole('row', { name: /^largest/ })
const loops = (page: Page) => page.getByRole('table', { name: /^Loops of/ })
const summaryOf = (page: Page) => page.getByRole('listitem').filter({ hasText: 'Plain, three valves' })

async function threeClicks(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'largest', exact: true }).click()
  await page.getByRole('button', { name: 'Count 3', exact: true }).click()
  await page.getByRole('button', { name: 'free', exact: true }).click()
}

async function unfold(page: Page, title: string): Promise<void> {
  await page.locator('summary').filter({ hasText: title }).click()
}

/** Waits until the proposal's largest error is the one given. */
async function proposedLargest(page: Page, figure: string | RegExp): Promise<void> {
  await largest(page).getByText(figure, { exact: true }).waitFor()
}

describe('the Lengths page', () => {
  browserTest(
    'goes from 53.6 to 11.5 cents largest in three clicks, and the proposal is seen before it is taken',
    async ({ form }) => {
      const { page, complaints } = await lengthsOf(form, alto)
      await threeClicks(page)
      await proposedLargest(page, '±11.5')
      await expect.poll(() => largest(page).textContent()).toBe('largest+53.6 at 1-2-3±11.5')
      await expect
        .poll(() => page.getByText('The largest is held by').textContent())
        .toBe('The largest is held by open (+11.5), 1 (−11.5), 2-3 (−11.5), 1-2-3 (+11.5).')
      // Nothing in the design has changed yet.
      await expect.poll(() => summaryOf(page).textContent()).toContain('largest+53.6')
      await expect.poll(() => page.getByRole('button', { name: 'Undo' }).isDisabled()).toBe(true)
      expect(complaints).toEqual([])
    },
  )

  browserTest('takes the proposal in one undo step, stands at it, and goes back', async ({ form }) => {
    const { page, complaints } = await lengthsOf(form, alto)
    await threeClicks(page)
    await proposedLargest(page, '±11.5')
    await page.getByRole('button', { name: 'Take these lengths' }).click()
    await page.getByText('The design stands at these lengths.').waitFor()
    await expect.poll(() => largest(page).textContent()).toMatch(/^largest[+−]11\.5 at .*11\.5$/)
    await expect
      .poll(() => page.getByRole('textbox', { name: 'Open note stands at' }).inputValue())
      .toBe('11.5')
    await expect.poll(() => page.getByRole('button', { name: 'Take these lengths' }).isDisabled()).toBe(true)
    await page.getByRole('button', { name: /^Undo/ }).click()
    await summaryOf(page).getByText('+53.6').waitFor()
    await expect
      .poll(() => page.getByRole('textbox', { name: 'Open note stands at' }).inputValue())
      .toBe('0.0')
    await expect.poll(() => page.getByRole('button', { name: 'Undo' }).isDisabled()).toBe(true)
    expect(complaints).toEqual([])
  })

  browserTest('leaves the proposal, and shows it again', async ({ form }) => {
    const { page } = await lengthsOf(form, alto)
    await threeClicks(page)
    await proposedLargest(page, '±11.5')
    await page.getByRole('button', { name: 'Leave' }).click()
    await expect.poll(() => largest(page).textContent()).toBe('largest+53.6 at 1-2-3—')
    await expect.poll(() => page.getByRole('button', { name: 'Take these lengths' }).isDisabled()).toBe(true)
    await page.getByRole('button', { name: 'Show the proposal again' }).click()
    await proposedLargest(page, '±11.5')
  })

  browserTest(
    'walks from the least largest to the least rms by keyboard, and proposes where it stops',
    async ({ form }) => {
      const { page } = await lengthsOf(form, alto)
      await threeClicks(page)
      await proposedLargest(page, '±11.5')
      const walk = page.getByRole('slider', { name: /^Place between/ })
      await expect.poll(() => walk.getAttribute('aria-disabled')).toBe('false')
      await walk.focus()
      await expect.poll(() => walk.getAttribute('aria-valuetext')).toBe('rms 9.6, largest 11.5')
      await walk.press('Home')
      await expect.poll(() => walk.getAttribute('aria-valuetext')).toBe('rms 8.9, largest 16.2')
      await proposedLargest(page, /^[+−]16\.2$/)
      await walk.press('ArrowRight')
      expect(Number(await walk.getAttribute('aria-valuenow'))).toBe(1)
    },
  )

  browserTest('holds a loop within its bounds, and says what a millimetre is worth', async ({ form }) => {
    const { page } = await lengthsOf(form, alto)
    await threeClicks(page)
    await page.getByRole('button', { name: 'Bounds of third' }).click()
    const within = page.getByRole('textbox', { name: 'third within ±' })
    await within.fill('20')
    await within.press('Enter')
    const sentence = page.getByText(/^Third is held at its highest of 441\.4 mm: 0\.\d+ cents gained/)
    await sentence.waitFor()
    expect(
      await loops(page)
        .getByRole('row', { name: /^third 3 down/ })
        .textContent(),
    ).toContain('at its bound')
  })

  browserTest(
    'says plainly that nothing is free, that bounds contradict, that every fingering is left out',
    async ({ form }) => {
      const { page, complaints } = await lengthsOf(form, alto)
      for (const loop of ['first', 'second', 'third']) {
        await page.getByRole('combobox', { name: `What ${loop} may be` }).selectOption('held')
      }
      await page.getByText('Nothing is free. Free a loop, or the open note.').waitFor()
      await page.getByRole('combobox', { name: 'What first may be' }).selectOption('free')
      await page.getByRole('button', { name: 'Bounds of first' }).click()
      await page.getByRole('textbox', { name: 'or from' }).fill('300')
      await page.getByRole('textbox', { name: 'or from' }).press('Enter')
      await page.getByRole('textbox', { name: 'to', exact: true }).fill('290')
      await page.getByRole('textbox', { name: 'to', exact: true }).press('Enter')
      await page.getByText(/The bounds of first contradict each other: found at most 290/).waitFor()
      await page.getByRole('textbox', { name: 'to', exact: true }).fill('')
      await page.getByRole('textbox', { name: 'to', exact: true }).press('Enter')
      for (const fingering of ['1', '2', '3', '1-2', '1-3', '2-3', '1-2-3']) {
        await page.getByRole('button', { name: `Count ${fingering}`, exact: true }).click()
      }
      await page.getByText('Every fingering is left out. Count at least one.').waitFor()
      expect(complaints).toEqual([])
    },
  )

  browserTest('weighs a fingering more, and comes nearer to it', async ({ form }) => {
    const { page } = await lengthsOf(form, alto)
    const row = page.getByRole('row', { name: /^1-2-3/ })
    const error = async (): Promise<number> =>
      Number((await row.getByRole('cell').nth(2).textContent())?.replace('−', '-'))
    await expect.poll(error).toBeCloseTo(23.0, 1)
    await page.getByRole('textbox', { name: 'Weight of 1-2-3' }).fill('10')
    await page.getByRole('textbox', { name: 'Weight of 1-2-3' }).press('Enter')
    await expect.poll(error).toBeLessThan(10)
  })

  browserTest('puts the systems side by side, each at its best', async ({ form }) => {
    const { page } = await lengthsOf(form, alto)
    await threeClicks(page)
    await unfold(page, 'Several systems')
    const table = page.getByRole('table', { name: /^Visible designs/ })
    const cells = (design: string) =>
      table
        .getByRole('row', { name: new RegExp(`^${design}`) })
        .getByRole('cell')
        .allTextContents()
    await expect
      .poll(() => cells('Plain, three valves'))
      .toEqual(['24.3', '9.6', '+53.6 at 1-2-3', '11.5', '4.0'])
    const compensating = await cells('Compensating on the third')
    expect(compensating.at(-1)).toBe('1.0')
    expect(11.5 / Number(compensating.at(-2))).toBeCloseTo(4, 0)
  })

  browserTest('says what tolerance keeps every counted fingering within some cents', async ({ form }) => {
    const { page } = await lengthsOf(form, alto)
    await threeClicks(page)
    await proposedLargest(page, '±11.5')
    await unfold(page, 'Doubt')
    await page.getByText(/^Worst case: ±\d\.\d\d mm on every part/).waitFor()
    const within = page.getByRole('textbox', { name: 'To keep every counted fingering within ±' })
    const reading = page.getByRole('textbox', { name: 'a reading ±' })
    await reading.fill('9')
    await reading.press('Enter')
    await page
      .getByText(/^Worst case: none will do\. Even with exact parts .* is 0\.5 cents outside\.$/)
      .waitFor()
    await reading.fill('0')
    await reading.press('Enter')
    await page.getByText(/^Worst case: ±\d\.\d\d mm on every part/).waitFor()
    await within.fill('10')
    await within.press('Enter')
    await page
      .getByText(/^Worst case: none will do\. Even with exact parts .* is 1\.5 cents outside\.$/)
      .waitFor()
  })
})

describe('slides moved while playing', () => {
  async function withSlides(form: BrowserForm): Promise<OpenPage> {
    const found = await lengthsOf(form, alto)
    await unfold(found.page, 'Slides moved')
    await found.page.getByRole('checkbox', { name: 'first' }).check()
    await found.page.getByRole('checkbox', { name: 'third' }).check()
    return found
  }

  browserTest(
    'are moved for each fingering, and what their travel does not reach is left',
    async ({ form }) => {
      const { page } = await withSlides(form)
      const table = page.getByRole('table', { name: 'Movement of the slides for each fingering' })
      await expect
        .poll(() => table.getByRole('row', { name: /^1-3/ }).getByRole('cell').last().textContent())
        .toBe('0.0')
      await expect
        .poll(() => table.getByRole('row', { name: /^2 / }).getByRole('cell').last().textContent())
        .toBe('−5.8')
    },
  )

  browserTest('are counted as reached when that is asked for', async ({ form }) => {
    const { page } = await withSlides(form)
    const before = Number(await largest(page).getByRole('cell').last().textContent())
    await page.getByRole('checkbox', { name: /^Count what they reach/ }).check()
    await expect
      .poll(async () => Number(await largest(page).getByRole('cell').last().textContent()))
      .toBeLessThan(before / 2)
  })

  browserTest(
    'are printed as a chart for the wall, and nothing but the chart, in type of 48 points',
    async ({ form }) => {
      const { page, complaints } = await withSlides(form)
      await page.getByRole('button', { name: 'Wall chart…' }).click()
      await page.evaluate(() => {
        window.print = () => {
          Object.assign(window, { printedAs: document.documentElement.dataset.print })
        }
      })
      await page.getByRole('button', { name: 'Print…' }).click()
      expect(await page.evaluate(() => (window as unknown as { printedAs: string }).printedAs)).toBe(
        'wallChart',
      )
      await page.evaluate(() => {
        document.documentElement.dataset.print = 'wallChart'
      })
      await page.emulateMedia({ media: 'print' })
      const shown = await page.evaluate(() =>
        [...document.body.children]
          .filter((child) => child.checkVisibility())
          .map((child) => child.className),
      )
      expect(shown).toEqual(['wallPrint'])
      const size = await page
        .locator('.wallPrint li')
        .first()
        .evaluate((row) => Number.parseFloat(getComputedStyle(row).fontSize))
      expect(size).toBeCloseTo((48 * 96) / 72, 3)
      await expect.poll(() => page.locator('.wallPrint').textContent()).toContain('first out 17 mm')
      expect(complaints).toEqual([])
    },
  )
})
