import { readFile } from 'node:fs/promises'
import { join } from 'node:path'
import type { Page } from 'playwright-core'
import { expect } from 'vitest'
import { browserTest } from '../desktop/harness/browserForm.ts'
import { onDesktops } from '../desktop/harness/onDesktops.ts'
import { card, choose, field, figure, startFrom, type } from './steps.ts'

const hasFocus = (element: Element): boolean => element === document.activeElement

/** A plain four-valve design made compensating, with one loop of a length of its own. */
async function makeCompensating(page: Page): Promise<void> {
  await startFrom(page, 'Plain, four valves')
  await expect.poll(() => figure(page, '1-2-3-4').textContent()).toBe('+175.3')
  await page.getByRole('button', { name: 'Another system…' }).click()
  // The chosen row has the focus: Enter makes it so.
  await expect
    .poll(() => page.getByRole('radio', { name: /^Compensating, four valves/ }).evaluate(hasFocus))
    .toBe(true)
  await page.keyboard.press('Enter')
  await expect.poll(() => figure(page, '1-2-3-4').textContent()).toBe('+53.6')
  await type(page, 'Length of third', '2*380 + 10 mm')
  await expect.poll(() => figure(page, '2-3').textContent()).toBe('+8.9')
}

async function expectTheSame(page: Page): Promise<void> {
  await expect.poll(() => figure(page, '2-3').textContent()).toBe('+8.9')
  await expect
    .poll(() => page.getByRole('textbox', { name: 'Length of third', exact: true }).inputValue())
    .toBe('770.0')
  await expect.poll(() => card(page, 'Compensating, four valves').textContent()).toContain('rms')
}

onDesktops('The main job', (test) => {
  test('start from a system, make it compensating, edit a loop, save, close, open again: the same', async ({
    open,
    folder,
  }) => {
    const file = join(folder, 'bass.ferrule')
    const first = await open()
    await makeCompensating(first.page)
    await expect.poll(() => first.page.getByLabel('not saved').count()).toBe(1)
    await first.answerFile('showSaveDialog', file)
    await first.chooseMenu('save')
    await expect.poll(() => first.page.getByLabel('not saved').count()).toBe(0)
    await first.pressClose()
    expect(await first.ended).toBe(0)
    expect(JSON.parse(await readFile(file, 'utf8')).designs[0].loops[2].lengthMm).toBe(770)

    const second = await open({ files: [file] })
    await expectTheSame(second.page)
    expect(await second.title()).toContain('bass.ferrule')
    expect([...first.complaints, ...second.complaints]).toEqual([])
  })

  test('a value typed right before it is saved is in the file', async ({ open, folder }) => {
    const file = join(folder, 'typed.ferrule')
    const { page, answerFile, chooseMenu } = await open()
    await startFrom(page, 'Plain, three valves')
    await answerFile('showSaveDialog', file)
    await chooseMenu('save')
    await expect.poll(() => page.getByLabel('not saved').count()).toBe(0)
    await field(page, 'Length of second').fill('250')
    await chooseMenu('save')
    await expect
      .poll(async () => JSON.parse(await readFile(file, 'utf8')).designs[0].loops[1].lengthMm)
      .toBe(250)
    await expect.poll(() => page.getByLabel('not saved').count()).toBe(0)
    await expect.poll(() => field(page, 'Length of second').inputValue()).toBe('250')
  })

  test('undo and redo carry the name of the step, in the menu and in the window', async ({ open }) => {
    const { page, chooseMenu, menu } = await open()
    await startFrom(page, 'Plain, three valves')
    await type(page, 'Length of third', '800')
    await expect.poll(() => figure(page, '1-3').textContent()).not.toBe('+30.3')
    const label = async (id: string): Promise<string | undefined> =>
      (await menu()).flatMap(({ items }) => items).find((item) => item.id === id)?.label
    await expect.poll(() => label('undo')).toContain('Third loop length')
    await page.getByRole('button', { name: 'Undo “Third loop length”' }).waitFor()
    await chooseMenu('undo')
    await expect.poll(() => figure(page, '1-3').textContent()).toBe('+30.3')
    await expect.poll(() => label('redo')).toContain('Third loop length')
    await chooseMenu('redo')
    await expect.poll(() => figure(page, '1-3').textContent()).not.toBe('+30.3')
  })
})

browserTest('the same in the browser form: saved by download, opened by upload', async ({ form }) => {
  const noPickers = (): void => {
    Reflect.deleteProperty(window, 'showOpenFilePicker')
    Reflect.deleteProperty(window, 'showSaveFilePicker')
  }
  const { page, complaints } = await form.open(noPickers)
  await makeCompensating(page)
  const downloading = page.waitForEvent('download')
  await choose(page, 'File', 'Save')
  const saved = await (await downloading).path()
  await expect.poll(() => page.getByLabel('not saved').count()).toBe(0)

  const again = await form.open(noPickers)
  const choosing = again.page.waitForEvent('filechooser')
  await again.page.getByRole('button', { name: 'Open a workbook…' }).click()
  await (await choosing).setFiles(saved)
  await expectTheSame(again.page)
  expect([...complaints, ...again.complaints]).toEqual([])
})
