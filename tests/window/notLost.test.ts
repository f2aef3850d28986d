import { readFile, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { describe, expect } from 'vitest'
import { writeWorkbook } from '#shared/workbook/writeWorkbook.ts'
import { browserTest } from '../desktop/harness/browserForm.ts'
import type { Desktop } from '../desktop/harness/desktop.ts'
import { inDouble } from '../desktop/harness/onDesktops.ts'
import { workbookWith } from '../fixtures/workbooks.ts'
import { field, goTo, openExample, startFrom, type } from './steps.ts'

/** A plain workbook in a file, its first loop called by a name of any length. */
async function fileWith(folder: string, loopName = 'first'): Promise<string> {
  const workbook = workbookWith('plain-3')
  const [design] = workbook.designs
  const loops = design!.loops.map((loop, i) => (i === 0 ? { ...loop, name: loopName } : loop))
  const path = join(folder, 'plain.ferrule')
  await writeFile(path, writeWorkbook({ ...workbook, designs: [{ ...design!, loops }] }))
  return path
}

const firstLength = async (path: string): Promise<number> =>
  JSON.parse(await readFile(path, 'utf8')).designs[0].loops[0].lengthMm

/** Writing that waits for the test. */
type HeldWriting = typeof globalThis & { isWriting: boolean; letWrite: () => void }

/** Has every file reach the disk only once `letWrite` was called. */
function holdWriting(desktop: Desktop): Promise<void> {
  return desktop.inMain(async () => {
    const { open } = process.getBuiltinModule('node:fs/promises')
    const handle = await open(process.execPath)
    const prototype = Object.getPrototypeOf(handle)
    const { sync } = prototype
    const held = globalThis as HeldWriting
    held.isWriting = false
    const allowed = new Promise<void>((resolve) => {
      held.letWrite = resolve
    })
    prototype.sync = async function later() {
      held.isWriting = true
      await allowed
      return sync.call(this)
    }
    await handle.close()
  }, null)
}

/** Types a length and closes, saving it; does something while the file is written. */
async function closeAndMeanwhile(desktop: Desktop, act: () => Promise<void>): Promise<void> {
  await type(desktop.page, 'Length of first', '300')
  await holdWriting(desktop)
  await desktop.answerMessage('Save')
  await desktop.pressClose()
  await expect.poll(() => desktop.inMain(() => (globalThis as HeldWriting).isWriting, null)).toBe(true)
  await act()
  await desktop.inMain(() => (globalThis as HeldWriting).letWrite(), null)
}

inDouble('what is typed', (test) => {
  test('is asked about on closing, whatever the names in the workbook are long', async ({ open, folder }) => {
    const path = await fileWith(folder, 'first of all '.repeat(25))
    const desktop = await open({ files: [path] })
    await field(desktop.page, `Length of ${'first of all '.repeat(25)}`).fill('310')
    await desktop.page.keyboard.press('Enter')
    await desktop.answerMessage('Cancel')
    await desktop.pressClose()
    await expect.poll(async () => (await desktop.askedDialogs()).length).toBe(1)
  })

  test('is asked about though it was not taken yet, and saved with the rest', async ({ open, folder }) => {
    const path = await fileWith(folder)
    const desktop = await open({ files: [path] })
    await desktop.answerMessage('Save')
    await field(desktop.page, 'Length of first').fill('310')
    await desktop.pressClose()
    expect(await desktop.ended).toBe(0)
    expect(await firstLength(path)).toBe(310)
  })

  test('while the file is written on closing is written, too', async ({ open, folder }) => {
    const path = await fileWith(folder)
    const desktop = await open({ files: [path] })
    await closeAndMeanwhile(desktop, () => type(desktop.page, 'Length of first', '310'))
    expect(await desktop.ended).toBe(0)
    expect(await firstLength(path)).toBe(310)
  })

  test('without an end while the file is written on closing is written to the last', async ({
    open,
    folder,
  }) => {
    const path = await fileWith(folder)
    const desktop = await open({ files: [path] })
    await closeAndMeanwhile(desktop, () => field(desktop.page, 'Length of first').fill('310'))
    expect(await desktop.ended).toBe(0)
    expect(await firstLength(path)).toBe(310)
  })

  test('is saved on closing though the window could not be drawn', async ({ open, folder }) => {
    const path = await fileWith(folder)
    const desktop = await open({ files: [path] })
    await type(desktop.page, 'Length of first', '300')
    await expect.poll(() => desktop.title()).toMatch(/^• /)
    await desktop.page.evaluate(() => {
      globalThis.ResizeObserver = class {
        constructor() {
          throw new Error('no more of these')
        }
      } as unknown as typeof ResizeObserver
    })
    await goTo(desktop.page, 'Lengths')
    await desktop.page.getByRole('heading', { name: 'The window could not be drawn' }).waitFor()
    await desktop.answerMessage('Save')
    await desktop.pressClose()
    expect(await desktop.ended).toBe(0)
    expect(await firstLength(path)).toBe(300)
  })
})

describe('a field', () => {
  browserTest('steps from what was just typed, and stays there', async ({ form }) => {
    const { page } = await form.open()
    await startFrom(page, 'Plain, three valves')
    await field(page, 'Length of first').fill('500')
    await field(page, 'Length of first').press('ArrowUp')
    await expect.poll(() => field(page, 'Length of first').inputValue()).toBe('500.1')
    await page.waitForTimeout(900)
    expect(await field(page, 'Length of first').inputValue()).toBe('500.1')
  })

  browserTest('and a drag leave no noise of arithmetic in the file', async ({ form }) => {
    const { page } = await form.open(() => {
      Reflect.deleteProperty(window, 'showSaveFilePicker')
    })
    await startFrom(page, 'Plain, three valves')
    const bow = page.getByRole('slider', { name: 'Length of first' })
    for (const byPx of [7, 11, 13]) {
      const box = (await bow.boundingBox())!
      await page.mouse.move(box.x + 11, box.y + 15)
      await page.mouse.down()
      await page.mouse.move(box.x + 11 + byPx, box.y + 15, { steps: 3 })
      await page.mouse.up()
    }
    await type(page, 'Length of second', '240.1')
    for (let i = 0; i < 3; i++) await field(page, 'Length of second').press('ArrowUp')
    const downloading = page.waitForEvent('download')
    await page.keyboard.press('Control+s')
    const { designs } = JSON.parse(await readFile(await (await downloading).path(), 'utf8'))
    const [first, second] = designs[0].loops.map(({ lengthMm }: { lengthMm: number }) => String(lengthMm))
    expect(first).toMatch(/^\d+(\.\d)?$/)
    expect(second).toBe('240.4')
  })
})

describe('what fails', () => {
  browserTest(
    'in the background says so: the bore and the lengths do not wait for ever',
    async ({ form }) => {
      const { page } = await form.open()
      await page.route(/(boreWorker|lengthsWorker)-/, (route) => route.abort())
      await openExample(page, 'Bass in F, four ways')
      await goTo(page, 'Bore')
      await page.getByText('could not be started').waitFor()
      await goTo(page, 'Lengths')
      await page.getByText('could not be started').first().waitFor()
      await goTo(page, 'Bore')
      await page.getByText('could not be started').waitFor()
      await page.unroute(/(boreWorker|lengthsWorker)-/)
      await page.getByRole('button', { name: 'Reckon again' }).click()
      await expect.poll(() => page.getByText('slices').count()).toBeGreaterThan(0)
    },
  )

  browserTest('in the window leaves the workbook to be saved', async ({ form }) => {
    const { page } = await form.open(() => {
      Reflect.deleteProperty(window, 'showSaveFilePicker')
    })
    await page.route(/\/Bench-/, (route) => route.abort())
    await openExample(page, 'Bass in F, four ways')
    await goTo(page, 'Bench')
    await page.getByRole('heading', { name: 'The window could not be drawn' }).waitFor()
    const downloading = page.waitForEvent('download')
    await page.getByRole('button', { name: 'Save as…' }).click()
    const saved = JSON.parse(await readFile(await (await downloading).path(), 'utf8'))
    expect(saved.designs).toHaveLength(4)
    await page.getByText('Everything is saved in').waitFor()
  })
})
