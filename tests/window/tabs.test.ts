import { describe, expect } from 'vitest'
import { browserTest } from '../desktop/harness/browserForm.ts'
import { openExample } from './steps.ts'

describe('the tabs', () => {
  browserTest('show a page that was fetched ahead with no empty moment between', async ({ form }) => {
    const { page } = await form.open()
    await openExample(page, 'Bass in F, four ways')
    const tab = page.getByRole('tab', { name: 'Compare' })
    const fetched = page.waitForResponse(/\/Compare-[^/]*\.js$/)
    await tab.hover()
    await (await fetched).finished()
    await page.waitForLoadState('networkidle')
    const shown = await tab.evaluate(async (element: HTMLElement) => {
      element.click()
      // What a click changes is in the page by the next microtasks.
      for (let i = 0; i < 10; i++) await Promise.resolve()
      return document.querySelector('#page h1')?.textContent
    })
    expect(shown).toBe('Comparison')
  })
})
