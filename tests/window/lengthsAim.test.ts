import type { Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { type OpenedWindow, openWindow } from './lengthsWindow.ts'

let opened: OpenedWindow
beforeAll(async () => {
  opened = await openWindow()
})
afterAll(() => opened.close())

const aim = (page: Page) => page.getByRole('group', { name: 'Aim at' })
const reached = (page: Page) => page.getByRole('table', { name: 'Errors as it stands and as proposed' })
const rms = (page: Page) => reached(page).getByRole('row', { name: /^rms/ })

describe('the Lengths page of a design with a bore', () => {
  it('offers to aim at the resonances, and only there', async () => {
    const { page } = await opened.lengthsOf(/Alto in E/)
    await rms(page).waitFor()
    expect(await aim(page).count()).toBe(0)
    const bass = await opened.lengthsOf(/Bass in F/)
    await aim(bass.page).waitFor()
    expect(await aim(bass.page).getByRole('button', { pressed: true }).textContent()).toBe('lengths')
  })

  it('finds lengths for the resonances, takes them in one step, stands at them, and goes back', async () => {
    const { page, complaints } = await opened.lengthsOf(/Bass in F/)
    const byLengths = await rms(page).textContent()
    await aim(page).getByRole('button', { name: 'resonances' }).click()
    await page.getByText(/^Errors are those of the bore’s modes 2 to 8/).waitFor()
    await expect.poll(() => rms(page).textContent()).toMatch(/^rms65\.344\.7$/)
    expect(byLengths).not.toBe(await rms(page).textContent())
    expect(await page.getByText(/^The largest is at .*, mode 2 \(/).count()).toBe(1)
    await page.getByRole('button', { name: 'Take these lengths' }).click()
    await page.getByText('The design stands at these lengths.').waitFor()
    expect(await rms(page).textContent()).toBe('rms44.744.7')
    await page.getByRole('button', { name: /^Undo/ }).click()
    await expect.poll(() => rms(page).textContent()).toBe('rms65.344.7')
    await aim(page).getByRole('button', { name: 'lengths' }).click()
    await expect.poll(() => rms(page).textContent()).toBe(byLengths)
    expect(complaints).toEqual([])
  })

  it('finds the least largest of all modes, and says which modes hold it', async () => {
    const { page, complaints } = await opened.lengthsOf(/Bass in F/)
    await aim(page).getByRole('button', { name: 'resonances' }).click()
    await page.getByRole('button', { name: 'largest', exact: true }).click()
    const largest = reached(page).getByRole('row', { name: /^largest/ })
    await expect.poll(() => largest.textContent()).toMatch(/^largest−174\.6 at 1-2-3-4, mode 2105\.5$/)
    expect(await page.getByText('The largest is held by').textContent()).toMatch(
      /1-2-3-4, mode \d \([+−]105\.5\)/,
    )
    expect(complaints).toEqual([])
  })
})
