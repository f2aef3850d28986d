import type { Locator } from 'playwright-core'
import { describe, expect } from 'vitest'
import { browserTest } from '../desktop/harness/browserForm.ts'
import { openExample } from './steps.ts'

/** What an element of the page says right after a click, before another frame. */
function saidAtOnce(clicked: Locator, where: string): Promise<string | undefined> {
  return clicked.evaluate(async (element: HTMLElement, selector) => {
    element.click()
    // What a click changes is in the page by the next microtasks.
    for (let i = 0; i < 10; i++) await Promise.resolve()
    return document.querySelector(selector)?.textContent
  }, where)
}

describe('with no empty moment between', () => {
  browserTest('a page is shown whose tab was pointed at', async ({ form }) => {
    const { page } = await form.open()
    await openExample(page, 'Bass in F, four ways')
    const tab = page.getByRole('tab', { name: 'Compare' })
    const fetched = page.waitForResponse(/\/Compare-[^/]*\.js$/)
    await tab.hover()
    await (await fetched).finished()
    await page.waitForLoadState('networkidle')
    expect(await saidAtOnce(tab, '#page h1')).toBe('Comparison')
  })

  browserTest('a word is explained whose mark has the focus', async ({ form }) => {
    const { page } = await form.open()
    const fetched = page.waitForResponse(/\/Explanation-[^/]*\.js$/)
    await openExample(page, 'Bass in F, four ways')
    const mark = page.getByRole('button', { name: 'Explain “fundamental”' })
    await mark.focus()
    await (await fetched).finished()
    await page.waitForLoadState('networkidle')
    expect(await saidAtOnce(mark, '.explanation')).toMatch(/^Fundamental\./)
  })

  browserTest('what lets it be heard opens when it was pointed at', async ({ form }) => {
    const { page } = await form.open()
    await openExample(page, 'Bass in F, four ways')
    const listen = page.getByRole('button', { name: 'Listen…' })
    const fetched = page.waitForResponse(/\/ListenPanel-[^/]*\.js$/)
    await listen.hover()
    await (await fetched).finished()
    await page.waitForLoadState('networkidle')
    expect(await saidAtOnce(listen, '.listen')).toMatch(/^Listen/)
  })

  browserTest('the help is shown, which arrives on its own', async ({ form }) => {
    const { page } = await form.open()
    const fetched = page.waitForResponse(/\/HelpParts-[^/]*\.js$/)
    await openExample(page, 'Bass in F, four ways')
    await (await fetched).finished()
    await page.waitForLoadState('networkidle')
    await page.keyboard.press('F1')
    const words = page.getByRole('button', { name: 'Words', exact: true })
    expect(await saidAtOnce(words, '.helpPart')).toMatch(/^A4The pitch/)
  })
})
