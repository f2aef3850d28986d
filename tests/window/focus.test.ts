import { describe, expect } from 'vitest'
import { browserTest } from '../desktop/harness/browserForm.ts'
import { choose, field, focused, goTo, openExample, startFrom } from './steps.ts'

describe('the focus, when what had it is taken away', () => {
  browserTest('goes to the valve in its place, and to the one before the last', async ({ form }) => {
    const { page } = await form.open()
    await startFrom(page, 'Plain, three valves')
    await choose(page, 'More for valve 2', 'Delete with its loops')
    await expect.poll(() => focused(page)).toBe('More for valve 3')
    await choose(page, 'More for valve 3', 'Delete with its loops')
    await expect.poll(() => focused(page)).toBe('More for valve 1')
  })

  browserTest('goes to the next loop, and after the last to what follows the list', async ({ form }) => {
    const { page } = await form.open()
    await startFrom(page, 'Plain, two valves')
    await page.getByRole('button', { name: /^first/ }).click()
    await page.getByRole('button', { name: 'Delete loop' }).click()
    await expect.poll(() => focused(page)).toContain('second')
    await page.getByRole('button', { name: /^second/ }).click()
    await page.getByRole('button', { name: 'Delete loop' }).click()
    await expect.poll(() => focused(page)).toBe('Explain “nominal drop”')
  })

  browserTest('goes into the bore that was chosen to start from', async ({ form }) => {
    const { page } = await form.open()
    await startFrom(page, 'Plain, three valves')
    await goTo(page, 'Bore')
    const start = page.locator('.startingBore').first()
    await start.focus()
    await start.press('Enter')
    await start.waitFor({ state: 'detached' })
    await expect.poll(() => page.evaluate(() => document.activeElement?.closest('main') !== null)).toBe(true)
  })

  browserTest('stays where undo takes the row away that has it', async ({ form }) => {
    const { page } = await form.open()
    await openExample(page, 'Bass in F, four ways')
    await page.getByRole('button', { name: 'Add a loop' }).click()
    await page.getByRole('button', { name: /^loop/ }).focus()
    await page.keyboard.press('Control+z')
    await page.getByRole('button', { name: /^loop/ }).waitFor({ state: 'detached' })
    await expect.poll(() => focused(page)).toContain('fourth')
  })

  browserTest('comes back to what opened a dialog from the menu, and to the chosen tab', async ({ form }) => {
    const { page } = await form.open()
    await openExample(page, 'Bass in F, four ways')
    await choose(page, 'File', 'Settings…')
    await page.getByRole('dialog').waitFor()
    await page.keyboard.press('Escape')
    await expect.poll(() => focused(page)).toBe('File')
    await page.getByRole('tab', { name: 'Curves' }).focus()
    await page.keyboard.press('Control+k')
    await page.keyboard.type('fingerings')
    await page.keyboard.press('Enter')
    await expect.poll(() => page.getByRole('tab', { selected: true }).textContent()).toBe('Fingerings')
    await expect.poll(() => focused(page)).toBe('Fingerings')
  })

  browserTest('is in the field for a name that the menu of a design asks for', async ({ form }) => {
    const { page } = await form.open()
    await startFrom(page, 'Plain, three valves')
    await choose(page, 'More for Plain, three valves', 'Rename')
    await page.getByRole('textbox', { name: 'Design name' }).waitFor()
    await page.waitForTimeout(900)
    await page.keyboard.type('Renamed')
    await page.keyboard.press('Enter')
    await expect.poll(() => page.locator('.cardName').textContent()).toBe('Renamed')
    await expect.poll(() => focused(page)).toBe('Renamed')
    await page.keyboard.press('Control+a')
    expect(await page.evaluate(() => String(getSelection()))).toBe('')
  })
})

describe('F6', () => {
  browserTest('goes round the parts of the window, back to where the focus was in each', async ({ form }) => {
    const { page } = await form.open()
    await startFrom(page, 'Plain, three valves')
    await field(page, 'Length of second').focus()
    const went: string[] = []
    for (const keys of ['F6', 'F6', 'F6', 'F6', 'Shift+F6']) {
      await page.keyboard.press(keys)
      went.push(await focused(page))
    }
    expect(went).toEqual(['File', 'Plain, three valves', 'Curves', 'Length of second', 'Curves'])
  })

  browserTest('passes over what a page has no room for, and stays in a dialog', async ({ form }) => {
    const { page } = await form.open()
    await startFrom(page, 'Plain, three valves')
    await goTo(page, 'Pictures')
    await page.getByRole('complementary', { name: 'Tubing' }).waitFor({ state: 'hidden' })
    await page.keyboard.press('F6')
    expect(await focused(page)).toBe('File')
    await page.keyboard.press('Control+k')
    await page.getByRole('dialog').waitFor()
    await page.keyboard.press('F6')
    expect(await page.evaluate(() => document.activeElement?.closest('dialog') !== null)).toBe(true)
  })
})
