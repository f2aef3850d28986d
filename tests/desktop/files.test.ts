import { chmod, readFile, rename, rm, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { expect } from 'vitest'
import {
  ask,
  cleanState,
  dirtyState,
  heardChange,
  heardCommand,
  heardFile,
  listen,
} from './harness/bridgeInPage.ts'
import type { Desktop } from './harness/desktop.ts'
import { inDouble } from './harness/onDesktops.ts'
import { startSecond } from './harness/openDouble.ts'

/** Saves as a new file, which is current from then on. */
async function saveNew(desktop: Desktop, path: string, text: string): Promise<void> {
  await desktop.answerFile('showSaveDialog', path)
  expect((await ask(desktop.page, 'saveWorkbookAs', text, 'Bass in F')).kind).toBe('saved')
}

inDouble('Opening', (test) => {
  test('a chosen file is read, and is current only once it is adopted', async ({ open, folder }) => {
    const path = join(folder, 'bass.ferrule')
    await writeFile(path, '{"a":"♭"}')
    const desktop = await open({ bare: true })
    await desktop.answerFile('showOpenDialog', path)
    const answer = await ask(desktop.page, 'openWorkbook')
    expect(answer).toMatchObject({ kind: 'opened', name: 'bass.ferrule', text: '{"a":"♭"}' })
    expect(await ask(desktop.page, 'recentWorkbooks')).toEqual([])

    await desktop.answerFile('showSaveDialog', null)
    expect(await ask(desktop.page, 'saveWorkbook', 'new', 'x')).toEqual({ kind: 'cancelled' })

    await ask(desktop.page, 'adoptFile', answer.kind === 'opened' ? answer.ticket : '')
    expect(await ask(desktop.page, 'saveWorkbook', 'new', 'x')).toEqual({
      kind: 'saved',
      name: 'bass.ferrule',
    })
    expect(await readFile(path, 'utf8')).toBe('new')
    expect(await readFile(`${path}~`, 'utf8')).toBe('{"a":"♭"}')
    expect(await ask(desktop.page, 'recentWorkbooks')).toMatchObject([{ name: 'bass.ferrule' }])
  })

  test('a cancelled dialog opens nothing', async ({ open }) => {
    const desktop = await open({ bare: true })
    await desktop.answerFile('showOpenDialog', null)
    expect(await ask(desktop.page, 'openWorkbook')).toEqual({ kind: 'cancelled' })
  })

  test('a file that cannot be a workbook is refused with a sentence', async ({ open, folder }) => {
    const desktop = await open({ bare: true })
    const large = join(folder, 'large.ferrule')
    const binary = join(folder, 'picture.ferrule')
    await writeFile(large, Buffer.alloc(20 * 1024 * 1024 + 1, 32))
    await writeFile(binary, Buffer.from([0xff, 0xfe, 0x00, 0xd8]))
    const messages: string[] = []
    for (const path of [large, binary, folder, join(folder, 'absent.ferrule')]) {
      await desktop.answerFile('showOpenDialog', path)
      const answer = await ask(desktop.page, 'openWorkbook')
      messages.push(answer.kind === 'failed' ? answer.message : answer.kind)
    }
    expect(messages[0]).toBe('“large.ferrule” is larger than 20 MB, more than any workbook needs.')
    expect(messages[1]).toBe('“picture.ferrule” is not text in UTF-8, so it is not a workbook.')
    expect(messages[2]).toMatch(/is a folder, not a file\.$/)
    expect(messages[3]).toBe('“absent.ferrule” is no longer there.')
  })

  test('a ticket that was never given out is refused', async ({ open }) => {
    const desktop = await open({ bare: true })
    await expect(ask(desktop.page, 'adoptFile', '/etc/passwd')).rejects.toThrow('ticket')
  })

  test('a file on the command line waits for the page to listen', async ({ open, folder }) => {
    const path = join(folder, 'given.ferrule')
    await writeFile(path, 'given')
    const desktop = await open({ bare: true, files: [path] })
    await listen(desktop.page)
    expect(await heardFile(desktop.page)).toMatchObject({
      kind: 'opened',
      name: 'given.ferrule',
      text: 'given',
    })
  })

  test('a file on the command line that is not there is told', async ({ open, folder }) => {
    const desktop = await open({ bare: true, files: [join(folder, 'absent.ferrule')] })
    await listen(desktop.page)
    expect(await heardFile(desktop.page)).toEqual({
      kind: 'failed',
      message: '“absent.ferrule” is no longer there.',
    })
  })

  test('a second start hands its file to the first and ends', async ({ open, folder }) => {
    const path = join(folder, 'second.ferrule')
    await writeFile(path, 'second')
    const desktop = await open({ bare: true })
    await listen(desktop.page)
    expect(await startSecond(desktop.userData, [path])).toBe(0)
    // The double of the system does not carry the message between two processes.
    await desktop.inMain(({ app }, file) => {
      app.emit('second-instance', {}, [], '/', { files: [file] })
    }, path)
    expect(await heardFile(desktop.page)).toMatchObject({ kind: 'opened', name: 'second.ferrule' })
    expect(await desktop.inMain(({ control }) => control.asked.map(({ what }) => what), null)).toContain(
      'focus',
    )
  })

  test('a second start whose message has another shape only brings the window forward', async ({ open }) => {
    const desktop = await open({ bare: true })
    await desktop.inMain(
      ({ app }) => app.emit('second-instance', {}, [], '/', { files: '/etc/passwd' }),
      null,
    )
    const asked = () => desktop.inMain(({ control }) => control.asked.map(({ what }) => what), null)
    await expect.poll(asked).toContain('focus')
    await listen(desktop.page)
    expect(await desktop.page.evaluate(() => (globalThis as { heardFiles?: unknown[] }).heardFiles)).toEqual(
      [],
    )
  })
})

inDouble('Saving', (test) => {
  test('the first save asks for a file, under a name that every system accepts', async ({ open, folder }) => {
    const desktop = await open({ bare: true })
    await desktop.answerFile('showSaveDialog', join(folder, 'typed'))
    const answer = await ask(desktop.page, 'saveWorkbook', 'text', 'Bass in F: three/ways')
    expect(answer).toEqual({ kind: 'saved', name: 'typed.ferrule' })
    expect(await readFile(join(folder, 'typed.ferrule'), 'utf8')).toBe('text')
    expect((await desktop.askedDialogs())[0]?.options.defaultPath).toMatch(/Bass in F three ways\.ferrule$/)
  })

  test('a completed name that is taken is asked about', async ({ open, folder }) => {
    const path = join(folder, 'taken.ferrule')
    await writeFile(path, 'old')
    const desktop = await open({ bare: true })
    await desktop.answerFile('showSaveDialog', join(folder, 'taken'))
    await desktop.answerMessage('Cancel')
    expect(await ask(desktop.page, 'saveWorkbook', 'new', 'x')).toEqual({ kind: 'cancelled' })
    expect(await readFile(path, 'utf8')).toBe('old')

    await desktop.answerFile('showSaveDialog', join(folder, 'taken'))
    await desktop.answerMessage('Replace')
    expect(await ask(desktop.page, 'saveWorkbook', 'new', 'x')).toMatchObject({ kind: 'saved' })
    expect(await readFile(path, 'utf8')).toBe('new')
  })

  test('the second save asks nothing', async ({ open, folder }) => {
    const desktop = await open({ bare: true })
    const path = join(folder, 'bass.ferrule')
    await saveNew(desktop, path, 'one')
    expect(await ask(desktop.page, 'saveWorkbook', 'two', 'x')).toEqual({
      kind: 'saved',
      name: 'bass.ferrule',
    })
    expect(await readFile(path, 'utf8')).toBe('two')
    expect(await desktop.askedDialogs()).toHaveLength(1)
  })

  test('a workbook that was released from its file asks again', async ({ open, folder }) => {
    const desktop = await open({ bare: true })
    await saveNew(desktop, join(folder, 'bass.ferrule'), 'one')
    await ask(desktop.page, 'releaseFile')
    await desktop.answerFile('showSaveDialog', join(folder, 'other.ferrule'))
    await ask(desktop.page, 'saveWorkbook', 'two', 'x')
    expect(await readFile(join(folder, 'bass.ferrule'), 'utf8')).toBe('one')
    expect(await readFile(join(folder, 'other.ferrule'), 'utf8')).toBe('two')
  })

  test('a file changed by another program is asked about before it is overwritten', async ({
    open,
    folder,
  }) => {
    const desktop = await open({ bare: true })
    const path = join(folder, 'bass.ferrule')
    const other = join(folder, 'other.ferrule')
    await saveNew(desktop, path, 'mine')

    await writeFile(path, 'theirs')
    await desktop.answerMessage('Cancel')
    expect(await ask(desktop.page, 'saveWorkbook', 'mine 2', 'x')).toEqual({ kind: 'cancelled' })
    expect(await readFile(path, 'utf8')).toBe('theirs')

    await desktop.answerMessage('Save as…')
    await desktop.answerFile('showSaveDialog', other)
    expect(await ask(desktop.page, 'saveWorkbook', 'mine 3', 'x')).toEqual({
      kind: 'saved',
      name: 'other.ferrule',
    })
    expect(await readFile(path, 'utf8')).toBe('theirs')

    await writeFile(other, 'theirs again')
    await desktop.answerMessage('Overwrite')
    expect(await ask(desktop.page, 'saveWorkbook', 'mine 4', 'x')).toEqual({
      kind: 'saved',
      name: 'other.ferrule',
    })
    expect(await readFile(other, 'utf8')).toBe('mine 4')
    expect(await readFile(`${other}~`, 'utf8')).toBe('theirs again')
  })

  test('a file changed by another program is noticed when the person comes back', async ({
    open,
    folder,
  }) => {
    const desktop = await open({ bare: true })
    const comeBack = () =>
      desktop.inMain(({ BrowserWindow }) => void BrowserWindow.getAllWindows()[0]?.emit('focus'), null)
    const path = join(folder, 'bass.ferrule')
    await saveNew(desktop, path, 'mine')
    await listen(desktop.page)
    await comeBack()
    // At once: a look at a half-written file would be news of its own.
    await writeFile(`${path}.new`, 'theirs')
    await rename(`${path}.new`, path)
    await comeBack()
    expect(await heardChange(desktop.page)).toBe('changed')
    expect(await ask(desktop.page, 'readCurrentFile')).toMatchObject({ kind: 'opened', text: 'theirs' })
    await comeBack()
    await rm(path)
    await comeBack()
    expect(await heardChange(desktop.page)).toBe('gone')
  })

  test('a file that cannot be written gives a sentence and stays as it was', async ({ open, folder }) => {
    const desktop = await open({ bare: true })
    const path = join(folder, 'bass.ferrule')
    await saveNew(desktop, path, 'one')
    await chmod(path, 0o444)
    expect(await ask(desktop.page, 'saveWorkbook', 'two', 'x')).toEqual({
      kind: 'failed',
      message: '“bass.ferrule” or its folder is read-only, so it could not be written.',
    })
    expect(await readFile(path, 'utf8')).toBe('one')
  })

  test('a workbook too large to be opened again is not written', async ({ open, folder }) => {
    const desktop = await open({ bare: true })
    await desktop.answerFile('showSaveDialog', join(folder, 'large.ferrule'))
    const answer = await desktop.page.evaluate(() => {
      const { ferrule } = globalThis as unknown as {
        ferrule: { saveWorkbook(text: string, name: string): unknown }
      }
      return ferrule.saveWorkbook(' '.repeat(20 * 1024 * 1024 + 1), 'x')
    })
    expect(answer).toMatchObject({ kind: 'failed', message: expect.stringContaining('larger than 20 MB') })
    await expect(readFile(join(folder, 'large.ferrule'))).rejects.toThrow('ENOENT')
  })

  test('text and bytes are exported as they are', async ({ open, folder }) => {
    const desktop = await open({ bare: true })
    await desktop.answerFile('showSaveDialog', join(folder, 'table.csv'))
    const table = { name: 'table.csv', mediaType: 'text/csv', content: 'a,b\r\n1,♭\r\n' }
    expect(await ask(desktop.page, 'exportFile', table)).toEqual({ kind: 'saved', name: 'table.csv' })
    expect(await readFile(join(folder, 'table.csv'), 'utf8')).toBe('a,b\r\n1,♭\r\n')

    await desktop.answerFile('showSaveDialog', join(folder, 'curve'))
    const answer = await desktop.page.evaluate(() => {
      type Exporting = { ferrule: { exportFile(file: object): Promise<unknown> } }
      const { ferrule } = globalThis as unknown as Exporting
      return ferrule.exportFile({
        name: 'curve.png',
        mediaType: 'image/png',
        content: new Uint8Array([1, 0, 255]),
      })
    })
    expect(answer).toEqual({ kind: 'saved', name: 'curve.png' })
    expect([...(await readFile(join(folder, 'curve.png')))]).toEqual([1, 0, 255])
  })

  test('the page is kept as a PDF on the paper that was asked for', async ({ open, folder }) => {
    const desktop = await open({ bare: true })
    await desktop.answerFile('showSaveDialog', join(folder, 'sheet.pdf'))
    const request = { to: 'pdf', paper: 'A4', landscape: true, name: 'Sheet' } as const
    expect(await ask(desktop.page, 'print', request)).toEqual({ kind: 'saved', name: 'sheet.pdf' })
    const pdf = await readFile(join(folder, 'sheet.pdf'), 'latin1')
    expect(pdf.slice(0, 5)).toBe('%PDF-')
    expect(pdf).toMatch(/MediaBox\s*\[0 0 84[12][.\d]* 59[56]/)
  })
})

inDouble('Recent files', (test) => {
  test('the newest is first, the missing are dropped, and the list can be cleared', async ({
    open,
    folder,
  }) => {
    const desktop = await open({ bare: true })
    for (const name of ['a', 'b', 'c']) await saveNew(desktop, join(folder, `${name}.ferrule`), name)
    await rm(join(folder, 'b.ferrule'))
    const recent = await ask(desktop.page, 'recentWorkbooks')
    expect(recent.map(({ name }) => name)).toEqual(['c.ferrule', 'a.ferrule'])
    expect(await ask(desktop.page, 'openRecent', recent[1]?.id ?? '')).toMatchObject({
      kind: 'opened',
      text: 'a',
    })
    expect(await ask(desktop.page, 'openRecent', 'unknown')).toMatchObject({ kind: 'failed' })

    await desktop.chooseMenu('clearRecent')
    await expect.poll(() => ask(desktop.page, 'recentWorkbooks')).toEqual([])
  })

  test('they stand in the menu and open from there, in a later run too', async ({ open, folder }) => {
    const first = await open({ bare: true })
    await saveNew(first, join(folder, 'bass & alto.ferrule'), 'text')
    await first.kill()
    const second = await open({ bare: true, userData: first.userData })
    await listen(second.page)
    const file = (await second.menu()).find(({ id }) => id === 'file')
    const items = file?.items.find(({ id }) => id === 'openRecent')?.items ?? []
    expect(items[0]?.label).toMatch(/^bass && alto\.ferrule — /)
    await second.chooseMenu(items[0]?.id ?? '')
    expect(await heardFile(second.page)).toMatchObject({ kind: 'opened', text: 'text' })
  })
})

inDouble('The menu and the title', (test) => {
  test('a menu item asks the window', async ({ open }) => {
    const desktop = await open({ bare: true })
    await listen(desktop.page)
    await desktop.chooseMenu('new')
    expect(await heardCommand(desktop.page)).toBe('new')
    await desktop.chooseMenu('palette')
    expect(await heardCommand(desktop.page)).toBe('palette')
  })

  test('undo and redo carry the name of their step, and saving needs a workbook', async ({ open }) => {
    const desktop = await open({ bare: true })
    const items = async (): Promise<Record<string, string>> => {
      const all = (await desktop.menu()).flatMap((menu) => menu.items)
      return Object.fromEntries(all.map(({ id, label, enabled }) => [id, enabled ? label : `(${label})`]))
    }
    expect(await items()).toMatchObject({
      undo: '(Undo)',
      redo: '(Redo)',
      save: '(Save)',
      pdf: '(Save as PDF…)',
    })
    await ask(desktop.page, 'showState', dirtyState)
    expect(await items()).toMatchObject({ undo: 'Undo “Change a length”', redo: '(Redo)', save: 'Save' })
    await ask(desktop.page, 'showState', { ...cleanState, redo: 'Change a length' })
    expect(await items()).toMatchObject({ undo: '(Undo)', redo: 'Redo “Change a length”' })
  })

  test('the title names the workbook and marks it while it is not saved', async ({ open, folder }) => {
    const desktop = await open({ bare: true })
    expect(await desktop.title()).toBe('Ferrule')
    await ask(desktop.page, 'showState', dirtyState)
    expect(await desktop.title()).toBe('• Bass in F – Ferrule')
    await ask(desktop.page, 'showState', cleanState)
    expect(await desktop.title()).toBe('Bass in F – Ferrule')
    await saveNew(desktop, join(folder, 'bass.ferrule'), 'text')
    const shown = await desktop.inMain(({ BrowserWindow }) => {
      const window = BrowserWindow.getAllWindows()[0]
      return [window?.getRepresentedFilename(), window?.isDocumentEdited()]
    }, null)
    expect(shown).toEqual([join(folder, 'bass.ferrule'), false])
  })
})
