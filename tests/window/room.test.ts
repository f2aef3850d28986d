import type { Page } from 'playwright-core'
import { describe, expect } from 'vitest'
import { browserTest } from '../desktop/harness/browserForm.ts'
import { goTo, openExample } from './steps.ts'

/** The smallest window, and a usual one at 200 %: half as many pixels of the style sheets. */
const rooms = [
  { name: 'the smallest window', size: { width: 1024, height: 700 } },
  { name: 'a window of 1280 by 800 at 200 %', size: { width: 640, height: 400 } },
]
const tabs = ['Curves', 'Fingerings', 'Lengths', 'Compare', 'Bore', 'Bench', 'Pictures']

/** Fields whose figure does not fit, and buttons whose words do not, in words. */
function clipped(page: Page): Promise<readonly string[]> {
  return page.evaluate(() => {
    const shown = [
      ...document.querySelectorAll<HTMLElement>('input[type=text], input:not([type]), button, select'),
    ]
    return (
      shown
        .filter((each) => each.checkVisibility() && each.clientWidth > 0)
        .filter((each) => each.scrollWidth > each.clientWidth + 1)
        .filter((each) => getComputedStyle(each).textOverflow !== 'ellipsis')
        // What a finger hits may reach beyond what is seen.
        .filter((each) => getComputedStyle(each, '::after').content === 'none')
        // A name may be longer than its field; a figure may not.
        .filter((each) => !(each instanceof HTMLInputElement) || /\d/.test(each.value))
        .map(
          (each) =>
            `${each.getAttribute('aria-label') ?? each.textContent}: ${each.clientWidth} of ${each.scrollWidth}`,
        )
    )
  })
}

/** How far the page reaches beyond the window sideways, px. */
function beyond(page: Page): Promise<number> {
  return page.evaluate(() => document.documentElement.scrollWidth - innerWidth)
}

describe.each(rooms)('$name', ({ size }) => {
  browserTest('has room for every page, its figures and its tabs', async ({ form }) => {
    const { page, complaints } = await form.open()
    await page.setViewportSize(size)
    await openExample(page, 'Bass in F, four ways')
    for (const tab of tabs) {
      await goTo(page, tab)
      await page.locator('#page > *').first().waitFor()
      expect(await beyond(page), tab).toBeLessThanOrEqual(0)
      expect(await clipped(page), tab).toEqual([])
    }
    await goTo(page, 'Curves')
    await page.getByRole('slider', { name: 'Length of third', exact: true }).press('ArrowRight')
    await page.getByRole('button', { name: /^Undo/ }).click()
    expect(complaints).toEqual([])
  })
})

describe('the strip', () => {
  browserTest('has room for its widest targets beside undo and redo', async ({ form }) => {
    const { page } = await form.open()
    await page.setViewportSize({ width: 1280, height: 800 })
    await openExample(page, 'Six-valve trombone against a plain one')
    await page.getByRole('combobox', { name: 'main slide' }).selectOption({ label: 'tuned on open 4' })
    for (const temperament of ['typed in', 'mean-tone']) {
      await page.getByRole('combobox', { name: 'temperament' }).selectOption({ label: temperament })
      await page.keyboard.press('Escape')
      const box = (await page.getByRole('button', { name: /^Redo/ }).boundingBox())!
      expect(box.x + box.width, temperament).toBeLessThanOrEqual(1280)
      expect(await beyond(page), temperament).toBeLessThanOrEqual(0)
    }
  })
})
