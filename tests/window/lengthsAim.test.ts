import type { Locator, Page } from 'playwright-core'
import { describe, expect } from 'vitest'
import { browserTest } from '../desktop/harness/browserForm.ts'
import { lengthsOf } from './steps.ts'

const aim = (page: Page) => page.getByRole('group', { name: 'Aim at' })
const reached = (page: Page) => page.getByRole('table', { name: 'Errors as it stands and as proposed' })
const rms = (page: Page) => reached(page).getByRole('row', { name: /^rms/ })

/** The resonances take their time on a busy machine. */
async function shows(what: () => Locator, text: string | null): Promise<void> {
  await expect.poll(() => what().textContent(), { timeout: 10_000 }).toBe(text)
}

describe('the Lengths page of a design with a bore', () => {
  browserTest('offers to aim at the resonances, and only there', async ({ form }) => {
    const { page } = await lengthsOf(form, /Alto in E/)
    await rms(page).waitFor()
    await expect.poll(() => aim(page).count()).toBe(0)
    const bass = await lengthsOf(form, /Bass in F/)
    await aim(bass.page).waitFor()
    await expect
      .poll(() => aim(bass.page).getByRole('button', { pressed: true }).textContent())
      .toBe('lengths')
  })

  browserTest(
    'finds lengths for the resonances, takes them in one step, stands at them, and goes back',
    async ({ form }) => {
      const { page, complaints } = await lengthsOf(form, /Bass in F/)
      await expect.poll(() => rms(page).textContent(), { timeout: 10_000 }).not.toContain('—')
      const byLengths = await rms(page).textContent()
      await aim(page).getByRole('button', { name: 'resonances' }).click()
      await page.getByText(/^Errors are those of the bore’s modes 2 to 8/).waitFor()
      await shows(() => rms(page), 'rms65.344.7')
      expect(byLengths).not.toBe(await rms(page).textContent())
      expect(await page.getByText(/^The largest is at .*, mode 2 \(/).count()).toBe(1)
      await page.getByRole('button', { name: 'Take these lengths' }).click()
      await page.getByText('The design stands at these lengths.').waitFor()
      await shows(() => rms(page), 'rms44.744.7')
      await page.getByRole('button', { name: /^Undo/ }).click()
      await shows(() => rms(page), 'rms65.344.7')
      await aim(page).getByRole('button', { name: 'lengths' }).click()
      await shows(() => rms(page), byLengths)
      expect(complaints).toEqual([])
    },
  )

  browserTest('finds the least largest of all modes, and says which modes hold it', async ({ form }) => {
    const { page, complaints } = await lengthsOf(form, /Bass in F/)
    await aim(page).getByRole('button', { name: 'resonances' }).click()
    await page.getByRole('button', { name: 'largest', exact: true }).click()
    const largest = reached(page).getByRole('row', { name: /^largest/ })
    await shows(() => largest, 'largest+174.6 at 1-2-3-4, mode 8±105.5')
    await expect
      .poll(() => page.getByText('The largest is held by').textContent())
      .toMatch(/, mode \d \([+−]105\.5\)/)
    expect(complaints).toEqual([])
  })
})
