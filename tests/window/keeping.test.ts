import { mkdir, readdir, readFile, rm, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import type { Page } from 'playwright-core'
import { describe, expect } from 'vitest'
import { browserTest } from '../desktop/harness/browserForm.ts'
import type { Desktop } from '../desktop/harness/desktop.ts'
import { inDouble } from '../desktop/harness/onDesktops.ts'
import { field, startFrom, type } from './steps.ts'

const third = (page: Page): Promise<string> => field(page, 'Length of third').inputValue()

/** The text of what is kept aside; empty when nothing is. */
async function keptText({ userData }: Desktop): Promise<string> {
  const folder = join(userData, 'drafts')
  const names = await readdir(folder).catch(() => [])
  const texts = names
    .filter((name) => name.endsWith('.json'))
    .map((name) => readFile(join(folder, name), 'utf8'))
  return (await Promise.all(texts)).join('\n')
}

/** A workbook saved with one length and then changed to another, which is only kept aside. */
async function workUnsaved(desktop: Desktop, path: string): Promise<void> {
  await startFrom(desktop.page, 'Plain, three valves')
  await type(desktop.page, 'Length of third', '700')
  await desktop.answerFile('showSaveDialog', path)
  await desktop.chooseMenu('save')
  await expect.poll(() => desktop.page.getByLabel('not saved', { exact: true }).count()).toBe(0)
  await type(desktop.page, 'Length of third', '712.5')
  await expect.poll(() => keptText(desktop), { timeout: 15_000 }).toContain('712.5')
}

const lengthInFile = async (path: string): Promise<number> =>
  JSON.parse(await readFile(path, 'utf8')).designs[0].loops[2].lengthMm

inDouble('after a crash', (test) => {
  test('unsaved work is compared with its file, restored, and saved there without a question', async ({
    open,
    folder,
  }) => {
    const path = join(folder, 'bass.ferrule')
    const first = await open()
    await workUnsaved(first, path)
    await first.kill()

    // The person opens the file itself, not the start page.
    const second = await open({ userData: first.userData, files: [path] })
    const { page } = second
    await expect.poll(() => third(page)).toBe('700.0')
    await page.getByRole('button', { name: 'Show it…' }).click()
    await page.getByRole('button', { name: 'Compare with bass.ferrule…' }).click()
    const row = page.getByRole('dialog').getByRole('row').filter({ hasText: 'length' })
    await expect.poll(() => row.getByRole('cell').allTextContents()).toEqual(['700 mm', '712.5 mm'])
    await expect.poll(() => row.getByRole('rowheader').textContent()).toContain('loop “third” › length')

    await page.getByRole('button', { name: 'Restore the kept work' }).click()
    await expect.poll(() => third(page)).toBe('712.5')
    await second.chooseMenu('undo')
    await expect.poll(() => third(page)).toBe('700.0')
    await second.chooseMenu('redo')
    await second.chooseMenu('save')
    await expect.poll(() => lengthInFile(path)).toBe(712.5)
    await expect.poll(() => keptText(second), { timeout: 15_000 }).toBe('')
    expect(second.complaints).toEqual([])
  })
})

inDouble('a file that cannot be written', (test) => {
  test('gives its sentence, and the work stays open, unsaved and kept aside until it is saved elsewhere', async ({
    open,
    folder,
  }) => {
    const gone = join(folder, 'gone')
    await mkdir(gone)
    const desktop = await open()
    const { page } = desktop
    await workUnsaved(desktop, join(gone, 'bass.ferrule'))
    await rm(gone, { recursive: true })
    await desktop.chooseMenu('save')
    const dialog = page.getByRole('dialog', { name: 'The workbook was not saved' })
    await dialog.getByText('is no longer there, so “bass.ferrule” could not be written.').waitFor()
    await expect.poll(() => page.getByLabel('not saved', { exact: true }).count()).toBe(1)
    expect(await keptText(desktop)).toContain('712.5')

    await desktop.answerFile('showSaveDialog', join(folder, 'elsewhere.ferrule'))
    await dialog.getByRole('button', { name: 'Save as…' }).click()
    await expect.poll(() => page.getByLabel('not saved', { exact: true }).count()).toBe(0)
    expect(await lengthInFile(join(folder, 'elsewhere.ferrule'))).toBe(712.5)
  })
})

inDouble('a file changed by another program', (test) => {
  test('is set beside the open work; taking it over can be undone', async ({ open, folder }) => {
    const path = join(folder, 'bass.ferrule')
    const desktop = await open()
    const { page } = desktop
    await workUnsaved(desktop, path)
    await desktop.chooseMenu('save')
    await expect.poll(() => page.getByLabel('not saved', { exact: true }).count()).toBe(0)
    const change = async (from: string, to: string): Promise<void> => {
      await writeFile(path, (await readFile(path, 'utf8')).replace(from, to))
      await desktop.inMain(({ BrowserWindow }) => void BrowserWindow.getAllWindows()[0]?.emit('focus'), null)
      await page.getByRole('dialog', { name: 'bass.ferrule was changed by another program' }).waitFor()
    }
    await change('712.5', '720.25')
    await page.getByRole('button', { name: 'Keep the open work' }).click()
    expect(await third(page)).toBe('712.5')
    await expect.poll(() => page.getByLabel('not saved', { exact: true }).count()).toBe(1)

    await change('720.25', '731')
    await page.getByRole('cell', { name: '731 mm' }).waitFor()
    await page.getByRole('button', { name: 'Take the file’s version' }).click()
    await expect.poll(() => third(page)).toBe('731.0')
    await expect.poll(() => page.getByLabel('not saved', { exact: true }).count()).toBe(0)
    await desktop.chooseMenu('undo')
    await expect.poll(() => third(page)).toBe('712.5')
    await expect.poll(() => page.getByLabel('not saved', { exact: true }).count()).toBe(1)
    await desktop.chooseMenu('save')
    await expect.poll(() => lengthInFile(path)).toBe(712.5)
  })
})

describe('in the browser', () => {
  browserTest('unsaved work of a tab that died is offered to the next, and restored', async ({ form }) => {
    const { page } = await form.open()
    await startFrom(page, 'Plain, three valves')
    await type(page, 'Length of third', '712.5')
    await expect.poll(() => page.evaluate(() => JSON.stringify(localStorage))).toContain('712.5')
    await page.close()

    const next = (await form.open()).page
    await next.getByRole('button', { name: 'Restore it' }).click()
    await expect.poll(() => third(next)).toBe('712.5')
    await expect.poll(() => next.getByLabel('not saved', { exact: true }).count()).toBe(1)
    await expect
      .poll(() =>
        next.evaluate(() => Object.keys(localStorage).filter((key) => key.includes('draft')).length),
      )
      .toBe(1)
  })

  browserTest('a browser that has no room for unsaved work says so', async ({ form }) => {
    const { page } = await form.open(() => {
      Storage.prototype.setItem = () => {
        throw new DOMException('full', 'QuotaExceededError')
      }
    })
    await startFrom(page, 'Plain, three valves')
    await type(page, 'Length of third', '712.5')
    await page.getByRole('alert').getByText('Unsaved work cannot be kept aside now').waitFor()
  })
})
