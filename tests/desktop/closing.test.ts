import { readdir, readFile, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { expect } from 'vitest'
import { ask, cleanState, dirtyState, heardCommand, listen } from './harness/bridgeInPage.ts'
import type { Desktop } from './harness/desktop.ts'
import { inDouble } from './harness/onDesktops.ts'

const draft = { name: 'Bass in F', text: 'unsaved', keptAt: 1_000, fileName: null }

const draftFiles = (desktop: Desktop): Promise<readonly string[]> => readdir(join(desktop.userData, 'drafts'))

const isOpen = (desktop: Desktop): Promise<boolean> =>
  desktop.inMain(({ BrowserWindow }) => BrowserWindow.getAllWindows().length === 1, null)

inDouble('Closing', (test) => {
  test('a saved workbook closes without a question', async ({ open }) => {
    const desktop = await open({ bare: true })
    await ask(desktop.page, 'showState', cleanState)
    await desktop.pressClose()
    expect(await desktop.ended).toBe(0)
  })

  test('“Cancel” keeps the window and the work', async ({ open }) => {
    const desktop = await open({ bare: true })
    await ask(desktop.page, 'showState', dirtyState)
    await ask(desktop.page, 'keepDraft', draft)
    await desktop.answerMessage('Cancel')
    await desktop.pressClose()
    expect((await desktop.askedDialogs())[0]?.options).toMatchObject({
      message: 'Save the changes to “Bass in F”?',
      buttons: ['Save', "Don't save", 'Cancel'],
    })
    expect(await isOpen(desktop)).toBe(true)
    expect(await draftFiles(desktop)).toHaveLength(1)
  })

  test("“Don't save” closes and forgets the draft", async ({ open }) => {
    const desktop = await open({ bare: true })
    await ask(desktop.page, 'showState', dirtyState)
    await ask(desktop.page, 'keepDraft', draft)
    await desktop.answerMessage("Don't save")
    await desktop.pressClose()
    expect(await desktop.ended).toBe(0)
    expect(await draftFiles(desktop)).toEqual([])
  })

  test('“Save” lets the window save, and then close', async ({ open, folder }) => {
    const desktop = await open({ bare: true })
    await listen(desktop.page)
    await ask(desktop.page, 'showState', dirtyState)
    await desktop.answerMessage('Save')
    await desktop.pressClose()
    expect(await heardCommand(desktop.page)).toBe('saveThenClose')
    await desktop.answerFile('showSaveDialog', join(folder, 'kept.ferrule'))
    expect(await ask(desktop.page, 'saveWorkbook', 'kept', 'x')).toMatchObject({ kind: 'saved' })
    await ask(desktop.page, 'closeWindow').catch(() => undefined)
    expect(await desktop.ended).toBe(0)
    expect(await readFile(join(folder, 'kept.ferrule'), 'utf8')).toBe('kept')
  })

  test('a save that fails or is cancelled leaves the window open, and it asks again', async ({
    open,
    folder,
  }) => {
    const desktop = await open({ bare: true })
    await listen(desktop.page)
    await ask(desktop.page, 'showState', dirtyState)
    await desktop.answerMessage('Save')
    await desktop.pressClose()
    expect(await heardCommand(desktop.page)).toBe('saveThenClose')
    await desktop.answerFile('showSaveDialog', join(folder, 'vanished', 'kept.ferrule'))
    const answer = await ask(desktop.page, 'saveWorkbook', 'kept', 'x')
    expect(answer).toMatchObject({ kind: 'failed', message: expect.stringContaining('is no longer there') })
    expect(await isOpen(desktop)).toBe(true)

    await desktop.answerMessage('Cancel')
    await desktop.pressClose()
    expect(await desktop.askedDialogs()).toHaveLength(3)
    expect(await isOpen(desktop)).toBe(true)
  })

  test('Quit asks the same question', async ({ open }) => {
    const desktop = await open({ bare: true })
    await ask(desktop.page, 'showState', dirtyState)
    await desktop.answerMessage('Cancel')
    await desktop.chooseMenu('quit')
    await expect.poll(async () => (await desktop.askedDialogs()).length).toBe(1)
    expect(await isOpen(desktop)).toBe(true)
    await desktop.answerMessage("Don't save")
    await desktop.chooseMenu('quit')
    expect(await desktop.ended).toBe(0)
  })
})

inDouble('A crash', (test) => {
  test('leaves the draft for the next run, until it is forgotten there', async ({ open }) => {
    const first = await open({ bare: true })
    expect(await ask(first.page, 'leftDrafts')).toEqual([])
    await ask(first.page, 'showState', dirtyState)
    await ask(first.page, 'keepDraft', draft)
    await first.kill()

    const second = await open({ bare: true, userData: first.userData })
    const [left] = await ask(second.page, 'leftDrafts')
    expect(left).toMatchObject(draft)
    await ask(second.page, 'keepDraft', { ...draft, text: 'of the second run' })
    await ask(second.page, 'keepDraft', null)
    expect(await ask(second.page, 'leftDrafts')).toHaveLength(1)
    await ask(second.page, 'forgetDraft', left?.id ?? '')
    expect(await ask(second.page, 'leftDrafts')).toEqual([])
  })

  test('leaves the draft joined to its file, which is read as it stands now', async ({ open, folder }) => {
    const path = join(folder, 'bass.ferrule')
    const first = await open({ bare: true })
    await first.answerFile('showSaveDialog', path)
    await ask(first.page, 'saveWorkbookAs', 'saved', 'x')
    await ask(first.page, 'keepDraft', { ...draft, fileName: 'bass.ferrule' })
    await first.kill()

    const second = await open({ bare: true, userData: first.userData })
    const [left] = await ask(second.page, 'leftDrafts')
    const answer = await ask(second.page, 'openDraftFile', left?.id ?? '')
    expect(answer).toMatchObject({ kind: 'opened', name: 'bass.ferrule', text: 'saved' })
    await ask(second.page, 'adoptFile', answer.kind === 'opened' ? answer.ticket : '')
    expect(await ask(second.page, 'saveWorkbook', 'restored', 'x')).toMatchObject({ kind: 'saved' })
    expect(await readFile(path, 'utf8')).toBe('restored')
    expect(await ask(second.page, 'openDraftFile', 'unknown')).toMatchObject({ kind: 'failed' })
  })

  test('a draft that is not one any more is no draft', async ({ open }) => {
    const first = await open({ bare: true })
    await ask(first.page, 'keepDraft', draft)
    const [name = ''] = await draftFiles(first)
    await first.kill()
    await writeFile(join(first.userData, 'drafts', name), '{"name":"x","text":')
    const second = await open({ bare: true, userData: first.userData })
    expect(await ask(second.page, 'leftDrafts')).toEqual([])
  })

  test('of the page alone opens the page again, with its draft', async ({ open }) => {
    const desktop = await open({ bare: true })
    await ask(desktop.page, 'showState', dirtyState)
    await ask(desktop.page, 'keepDraft', draft)
    await desktop.answerMessage('Open the window again')
    const loadedAgain = desktop.page.waitForEvent('load')
    await desktop.inMain(({ BrowserWindow }) => {
      const contents = BrowserWindow.getAllWindows()[0]?.webContents
      contents?.emit('render-process-gone', {}, { reason: 'crashed', exitCode: 5 })
    }, null)
    await loadedAgain
    expect(await ask(desktop.page, 'leftDrafts')).toMatchObject([draft])
    await desktop.pressClose()
    expect(await desktop.ended).toBe(0)
  })
})

inDouble('The place of the window', (test) => {
  test('is kept on closing and taken again', async ({ open }) => {
    const first = await open({ bare: true })
    await first.inMain(({ BrowserWindow }) => {
      const window = BrowserWindow.getAllWindows()[0] as unknown as { bounds: object }
      Object.assign(window.bounds, { x: 300, y: 50, width: 1100, height: 720 })
    }, null)
    await first.pressClose()
    await first.ended

    const second = await open({ bare: true, userData: first.userData })
    const bounds = await second.inMain(
      ({ BrowserWindow }) => BrowserWindow.getAllWindows()[0]?.getNormalBounds(),
      null,
    )
    expect(bounds).toEqual({ x: 300, y: 50, width: 1100, height: 720 })
  })
})
