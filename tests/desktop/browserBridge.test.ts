import { readFile, truncate, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import type { Page } from 'playwright-core'
import { describe, expect } from 'vitest'
import type { Bridge, MenuCommand } from '#shared/bridge/bridge.ts'
import { askingOf, cleanState, dirtyState } from './harness/bridgeInPage.ts'
import { bridgeTest as test } from './harness/bridgePage.ts'
import { choose, withPickers } from './harness/pickers.ts'

type BridgePage = typeof globalThis & { bridgeInForce: Bridge; heard: MenuCommand[]; heldFiles: string[] }

/** The browser's bridge. */
const ask = askingOf('bridgeInForce')

/** As in a browser that has no file dialogs for pages. */
function withoutPickers(): void {
  for (const name of ['showOpenFilePicker', 'showSaveFilePicker']) {
    Reflect.deleteProperty(globalThis, name)
  }
}

function putFile(page: Page, name: string, text: string): Promise<void> {
  return page.evaluate(
    async ([file, content]) => {
      const folder = await navigator.storage.getDirectory()
      const writing = await (await folder.getFileHandle(file, { create: true })).createWritable()
      await writing.write(content)
      await writing.close()
    },
    [name, text] as const,
  )
}

function fileText(page: Page, name: string): Promise<string> {
  return page.evaluate(async (file) => {
    const folder = await navigator.storage.getDirectory()
    return (await (await folder.getFileHandle(file)).getFile()).text()
  }, name)
}

describe('The browser form of the bridge', () => {
  test('has the members of the desktop form, and says that it is the browser', async ({ form }) => {
    const { page, complaints } = await form.open()
    const members = await page.evaluate(() => Object.keys((globalThis as BridgePage).bridgeInForce).length)
    expect(members).toBe(22)
    expect(await page.evaluate(() => (globalThis as BridgePage).bridgeInForce.form)).toBe('browser')
    expect(complaints).toEqual([])
  })

  test('gives way to the desktop form where there is one', async ({ form }) => {
    const { page } = await form.open(() => Object.assign(globalThis, { ferrule: { form: 'desktop' } }))
    expect(await page.evaluate(() => (globalThis as BridgePage).bridgeInForce.form)).toBe('desktop')
  })

  test('titles the page', async ({ form }) => {
    const { page } = await form.open()
    await ask(page, 'showState', dirtyState)
    expect(await page.title()).toBe('• Bass in F – Ferrule')
    await ask(page, 'showState', cleanState)
    expect(await page.title()).toBe('Bass in F – Ferrule')
  })

  test('hears the keys of commands, but leaves undo to a field that is typed in', async ({ form }) => {
    const { page } = await form.open()
    await page.evaluate(() => {
      const { bridgeInForce } = globalThis as BridgePage
      const heard: MenuCommand[] = []
      Object.assign(globalThis, { heard, stop: bridgeInForce.onCommand((command) => heard.push(command)) })
    })
    for (const keys of [
      'Control+s',
      'Control+Shift+S',
      'Control+z',
      'Control+y',
      'F1',
      's',
      'Control+Alt+s',
    ]) {
      await page.keyboard.press(keys)
    }
    await page.getByLabel('Name').focus()
    for (const keys of ['Control+z', 'Control+o']) await page.keyboard.press(keys)
    const heard = await page.evaluate(() => (globalThis as BridgePage).heard)
    expect(heard).toEqual(['save', 'saveAs', 'undo', 'redo', 'help', 'open'])
  })

  test('prints on the paper that was asked for, and leaves the page as it was', async ({ form }) => {
    const { page } = await form.open(() => {
      Object.assign(globalThis, {
        print: () => {
          document.title = [...document.adoptedStyleSheets]
            .flatMap((sheet) => sheet.cssRules[0]?.cssText)
            .join()
        },
      })
    })
    const request = { to: 'pdf', paper: 'A4', landscape: true, name: 'Sheet' } as const
    expect(await ask(page, 'print', request)).toEqual({ kind: 'saved', name: 'Sheet' })
    expect(await page.title()).toMatch(/@page.*a4 landscape/i)
    expect(await page.evaluate(() => document.adoptedStyleSheets.length)).toBe(0)
  })
})

describe('Files where the browser only uploads and downloads', () => {
  test('an uploaded file is read, and kept by downloading it anew under its name', async ({ form }) => {
    const { page, complaints } = await form.open(withoutPickers)
    const chooser = page.waitForEvent('filechooser')
    const opening = ask(page, 'openWorkbook')
    await (await chooser).setFiles({ name: 'bass.ferrule', mimeType: '', buffer: Buffer.from('{"a":"♭"}') })
    const answer = await opening
    expect(answer).toMatchObject({ kind: 'opened', name: 'bass.ferrule', text: '{"a":"♭"}' })
    await ask(page, 'adoptFile', answer.kind === 'opened' ? answer.ticket : '')

    const downloading = page.waitForEvent('download')
    expect(await ask(page, 'saveWorkbook', 'new ♭', 'x')).toEqual({ kind: 'saved', name: 'bass.ferrule' })
    const download = await downloading
    expect(download.suggestedFilename()).toBe('bass.ferrule')
    expect(await readFile(await download.path(), 'utf8')).toBe('new ♭')
    expect(complaints).toEqual([])
  })

  test('a file that is too large, or is not text, is refused with a sentence', async ({ form, folder }) => {
    const { page } = await form.open(withoutPickers)
    const upload = async (name: string, sizeBytes: number): Promise<unknown> => {
      const path = join(folder, name)
      await writeFile(path, Buffer.from([0xff, 0xd8]))
      await truncate(path, sizeBytes)
      const chooser = page.waitForEvent('filechooser')
      const opening = ask(page, 'openWorkbook')
      await (await chooser).setFiles(path)
      return opening
    }
    expect(await upload('large.ferrule', 20 * 1024 * 1024 + 1)).toMatchObject({
      message: '“large.ferrule” is larger than 20 MB, more than any workbook needs.',
    })
    expect(await upload('picture.ferrule', 2)).toMatchObject({
      message: '“picture.ferrule” is not text in UTF-8, so it is not a workbook.',
    })
  })

  test('a picture is offered under a name that every system accepts', async ({ form }) => {
    const { page } = await form.open(withoutPickers)
    const downloading = page.waitForEvent('download')
    const answer = await ask(page, 'exportFile', {
      name: 'a/b: c.svg',
      mediaType: 'image/svg+xml',
      content: '<svg/>',
    })
    expect(answer).toEqual({ kind: 'saved', name: 'a b c.svg' })
    expect(await readFile(await (await downloading).path(), 'utf8')).toBe('<svg/>')
  })

  test('there are no recent files', async ({ form }) => {
    const { page } = await form.open(withoutPickers)
    expect(await ask(page, 'recentWorkbooks')).toEqual([])
  })
})

describe('Files where the browser gives handles', () => {
  test('an opened file is written in place, and stands among the recent ones in a new tab', async ({
    form,
  }) => {
    const { page } = await form.open(withPickers)
    await putFile(page, 'bass.ferrule', 'old')
    await choose(page, 'bass.ferrule')
    const answer = await ask(page, 'openWorkbook')
    expect(answer).toMatchObject({ kind: 'opened', name: 'bass.ferrule', text: 'old' })
    await ask(page, 'adoptFile', answer.kind === 'opened' ? answer.ticket : '')
    await choose(page, null)
    expect(await ask(page, 'saveWorkbook', 'new', 'x')).toEqual({ kind: 'saved', name: 'bass.ferrule' })
    expect(await fileText(page, 'bass.ferrule')).toBe('new')

    const other = (await form.open(withPickers)).page
    const [recent] = await ask(other, 'recentWorkbooks')
    expect(recent).toMatchObject({ name: 'bass.ferrule', place: '' })
    expect(await ask(other, 'openRecent', recent?.id ?? '')).toMatchObject({ kind: 'opened', text: 'new' })
    await ask(other, 'clearRecent')
    expect(await ask(other, 'recentWorkbooks')).toEqual([])
  })

  test('a cancelled dialog changes nothing', async ({ form }) => {
    const { page } = await form.open(withPickers)
    expect(await ask(page, 'openWorkbook')).toEqual({ kind: 'cancelled' })
    expect(await ask(page, 'saveWorkbook', 'new', 'x')).toEqual({ kind: 'cancelled' })
  })

  test('a file changed by another program is asked about before it is overwritten', async ({ form }) => {
    const { page } = await form.open(withPickers)
    await choose(page, 'bass.ferrule')
    await ask(page, 'saveWorkbookAs', 'mine', 'x')
    await page.waitForTimeout(20)
    await putFile(page, 'bass.ferrule', 'theirs')

    page.once('dialog', (dialog) => void dialog.dismiss())
    expect(await ask(page, 'saveWorkbook', 'mine 2', 'x')).toEqual({ kind: 'cancelled' })
    expect(await fileText(page, 'bass.ferrule')).toBe('theirs')

    page.once('dialog', (dialog) => void dialog.accept())
    expect(await ask(page, 'saveWorkbook', 'mine 2', 'x')).toMatchObject({ kind: 'saved' })
    expect(await fileText(page, 'bass.ferrule')).toBe('mine 2')
    expect(await ask(page, 'saveWorkbook', 'mine 3', 'x')).toMatchObject({ kind: 'saved' })
  })

  test('a slow save is over before another file becomes the current one', async ({ form }) => {
    const { page } = await form.open(withPickers)
    await putFile(page, 'b.ferrule', 'B')
    await choose(page, 'a.ferrule')
    await ask(page, 'saveWorkbookAs', 'A', 'x')
    await page.evaluate(() => {
      const { close } = FileSystemWritableFileStream.prototype
      FileSystemWritableFileStream.prototype.close = async function slowly() {
        await new Promise((resolve) => setTimeout(resolve, 500))
        return close.call(this)
      }
    })
    const saving = ask(page, 'saveWorkbook', 'A edited', 'x')
    await choose(page, 'b.ferrule')
    const opened = await ask(page, 'openWorkbook')
    if (opened.kind !== 'opened') throw new Error('the second file was not read')
    await ask(page, 'adoptFile', opened.ticket)
    await saving
    await ask(page, 'saveWorkbook', 'B edited', 'x')
    expect(await fileText(page, 'a.ferrule')).toBe('A edited')
    expect(await fileText(page, 'b.ferrule')).toBe('B edited')
  })

  test('a file changed by another program is noticed when the person comes back', async ({ form }) => {
    const { page } = await form.open(withPickers)
    await choose(page, 'bass.ferrule')
    await ask(page, 'saveWorkbookAs', 'mine', 'x')
    await page.evaluate(() => {
      const told: string[] = []
      Object.assign(globalThis, { told })
      ;(globalThis as BridgePage).bridgeInForce.onFileChanged((change) => told.push(change))
    })
    const told = () => page.evaluate(() => (globalThis as unknown as { told: string[] }).told)
    const comeBack = async (): Promise<void> => {
      await page.evaluate(() => window.dispatchEvent(new Event('focus')))
      await page.waitForTimeout(100)
    }
    await comeBack()
    expect(await told()).toEqual([])
    await putFile(page, 'bass.ferrule', 'theirs')
    await comeBack()
    await expect.poll(told).toEqual(['changed'])
    await comeBack()
    expect(await told()).toEqual(['changed'])
    expect(await ask(page, 'readCurrentFile')).toMatchObject({ kind: 'opened', text: 'theirs' })
    await page.evaluate(async () => (await navigator.storage.getDirectory()).removeEntry('bass.ferrule'))
    await comeBack()
    await expect.poll(told).toEqual(['changed', 'gone'])
    await comeBack()
    expect(await told()).toEqual(['changed', 'gone'])
  })

  test('a file that cannot be written gives a sentence for each reason, and stays as it was', async ({
    form,
  }) => {
    const { page } = await form.open(withPickers)
    await choose(page, 'bass.ferrule')
    await ask(page, 'saveWorkbookAs', 'mine', 'x')
    const messages: string[] = []
    for (const name of [
      'QuotaExceededError',
      'NotFoundError',
      'NoModificationAllowedError',
      'NotAllowedError',
      '',
    ]) {
      await page.evaluate((reason) => {
        FileSystemWritableFileStream.prototype.write = async () => {
          throw new DOMException('no', reason)
        }
      }, name)
      const answer = await ask(page, 'saveWorkbook', 'mine 2', 'x')
      messages.push(answer.kind === 'failed' ? answer.message : answer.kind)
    }
    expect(messages[0]).toBe(
      'The disk is full, so “bass.ferrule” could not be written; the file there is unchanged.',
    )
    expect(new Set(messages).size).toBe(5)
    for (const message of messages) expect(message).toContain('bass.ferrule')
    expect(await fileText(page, 'bass.ferrule')).toBe('mine')
  })

  test('a recent file that is gone is told, and dropped', async ({ form }) => {
    const { page } = await form.open(withPickers)
    await choose(page, 'bass.ferrule')
    await ask(page, 'saveWorkbookAs', 'mine', 'x')
    await page.evaluate(async () => (await navigator.storage.getDirectory()).removeEntry('bass.ferrule'))
    const [recent] = await ask(page, 'recentWorkbooks')
    expect(await ask(page, 'openRecent', recent?.id ?? '')).toEqual({
      kind: 'failed',
      message: '“bass.ferrule” could not be read; it may have been moved or deleted.',
    })
    expect(await ask(page, 'recentWorkbooks')).toEqual([])
  })
})

describe('Unsaved work in the browser', () => {
  const draft = { name: 'Bass in F', text: 'unsaved', keptAt: 1_000, fileName: null }

  test('the browser asks before a page with unsaved work is left, and only then', async ({ form }) => {
    const { page } = await form.open()
    let questions = 0
    page.on('dialog', (dialog) => {
      questions += 1
      void dialog.accept()
    })
    // A browser asks only on a page that the person has touched.
    await page.getByLabel('Name').click()
    await ask(page, 'showState', dirtyState)
    await page.reload()
    expect(questions).toBe(1)
    await page.getByLabel('Name').click()
    await ask(page, 'showState', dirtyState)
    await ask(page, 'showState', cleanState)
    await page.reload()
    expect(questions).toBe(1)
  })

  test('a draft outlives its tab, is offered to the next until it is forgotten', async ({ form }) => {
    const first = (await form.open()).page
    expect(await ask(first, 'leftDrafts')).toEqual([])
    await ask(first, 'keepDraft', draft)
    await first.close()

    const second = (await form.open()).page
    await expect.poll(() => ask(second, 'leftDrafts')).toMatchObject([draft])
    await ask(second, 'keepDraft', { ...draft, text: 'another' })
    await ask(second, 'keepDraft', null)
    await second.reload()
    await expect.poll(() => ask(second, 'leftDrafts')).toMatchObject([draft])
    const [left] = await ask(second, 'leftDrafts')
    await ask(second, 'forgetDraft', left?.id ?? '')
    expect(await ask(second, 'leftDrafts')).toEqual([])
  })

  test('a draft of a tab that is still open is not offered to another', async ({ form }) => {
    const first = (await form.open()).page
    await ask(first, 'keepDraft', draft)
    const second = (await form.open()).page
    await ask(second, 'keepDraft', { ...draft, text: 'another' })
    expect(await ask(second, 'leftDrafts')).toEqual([])
    expect(await ask(first, 'leftDrafts')).toEqual([])
  })

  test('a draft whose file has a handle is joined to it, and the file is read as it stands', async ({
    form,
  }) => {
    const first = (await form.open(withPickers)).page
    await choose(first, 'bass.ferrule')
    await ask(first, 'saveWorkbookAs', 'saved', 'x')
    await ask(first, 'keepDraft', { ...draft, fileName: 'bass.ferrule' })
    await first.close()

    const second = (await form.open(withPickers)).page
    await expect.poll(() => ask(second, 'leftDrafts')).toMatchObject([{ fileName: 'bass.ferrule' }])
    const [left] = await ask(second, 'leftDrafts')
    expect(await ask(second, 'openDraftFile', left?.id ?? '')).toMatchObject({
      kind: 'opened',
      text: 'saved',
    })
    expect(await ask(second, 'openDraftFile', 'unknown')).toMatchObject({ kind: 'failed' })
  })

  test('a draft that the browser has no room for is refused, not lost silently', async ({ form }) => {
    const { page } = await form.open()
    const keeping = page.evaluate(() => {
      const { bridgeInForce } = globalThis as BridgePage
      return bridgeInForce.keepDraft({ name: '', text: 'x'.repeat(12_000_000), keptAt: 0, fileName: null })
    })
    await expect(keeping).rejects.toThrow(/quota/i)
  })
})
