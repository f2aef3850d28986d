import { describe, expect } from 'vitest'
import { browserTest } from '../desktop/harness/browserForm.ts'
import { openExample } from './steps.ts'

describe('the curve by note', () => {
  browserTest('comes to the note that is picked in the table', async ({ form }) => {
    const { page } = await form.open()
    await openExample(page, 'Bass in F, four ways')
    await page.getByRole('button', { name: 'by note' }).click()
    const frame = page.locator('.chartFrame')
    await expect.poll(() => frame.evaluate((each) => each.scrollWidth - each.clientWidth)).toBeGreaterThan(0)
    expect(await frame.evaluate((each) => each.scrollLeft)).toBe(0)
    await page.locator('.figures tbody tr').last().getByRole('button').last().click()
    await expect.poll(() => frame.evaluate((each) => each.scrollLeft)).toBeGreaterThan(0)
    await page.locator('.figures tbody tr').first().getByRole('button').last().click()
    await expect.poll(() => frame.evaluate((each) => each.scrollLeft)).toBe(0)
  })
})
