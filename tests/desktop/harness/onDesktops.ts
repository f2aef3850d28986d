/**
 * The program in its desktop form, for tests.
 *
 *     onDesktops('Saving', (test) => {
 *       test('writes the file that was asked for', async ({ open, folder }) => {
 *         const desktop = await open()
 *         await desktop.answerFile('showSaveDialog', join(folder, 'bass.ferrule'))
 *         await desktop.chooseMenu('save')
 *         await desktop.page.getByText('Saved').waitFor()
 *         expect(desktop.complaints).toEqual([])
 *       })
 *     })
 *
 * `open()` starts the built program (`npm run build` first) with user data of its own and waits for the page;
 * `desktop.page` is a Playwright page. Starting takes a second or more, so tests that only look can share one
 * program, `({ desktop }) => …`, started once for the file. Dialogs are answered before they are asked, with
 * `answerFile` and `answerMessage`; one without an answer fails in the program and stands in `askedDialogs()`.
 * `folder` is an empty folder. Whatever a test leaves running is ended after it, and its folders are removed.
 *
 * Each group runs twice: over a double of Electron's module, which drives Chromium and needs no runtime, and in
 * the real Electron, reported as skipped where that cannot run. `inDouble` groups what only the double can
 * show. The double has neither Electron's isolated world nor its sandbox, and no native dialogs.
 *
 * Scripts without a test runner call `openDouble()` themselves, and `kill()` when they are done.
 */
import { rm } from 'node:fs/promises'
import { describe } from 'vitest'
import { test as base } from '../../folder.ts'
import type { Chromium } from './chromium.ts'
import { launchChromium } from './chromium.ts'
import type { Desktop, Launch, LaunchOptions } from './desktop.ts'
import { openDouble } from './openDouble.ts'
import { electronCanRun, openElectron } from './openElectron.ts'

type LaunchIn<Place> = (options: LaunchOptions | undefined, place: Place) => Promise<Desktop>

/** `Place` is what every program of a file runs in, made once. */
interface Place<Kind> {
  make(): Promise<Kind>
  end(place: Kind): Promise<void>
}

interface Fixtures<Kind> {
  readonly place: Kind
  readonly desktop: Desktop
  readonly open: Launch
}

// biome-ignore-start lint/correctness/noEmptyPattern: the test runner reads the needed fixtures from the pattern
function testWith<Kind>(place: Place<Kind>, launch: LaunchIn<Kind>) {
  return base.extend<Fixtures<Kind>>({
    place: [
      async ({}, use: (made: Kind) => Promise<void>) => {
        const made = await place.make()
        await use(made)
        await place.end(made)
      },
      { scope: 'file' },
    ],
    desktop: [
      async ({ place: made }, use) => {
        const desktop = await launch(undefined, made)
        await use(desktop)
        await endAll([desktop])
      },
      { scope: 'file' },
    ],
    open: async ({ place: made }, use) => {
      const running: Desktop[] = []
      await use(async (options) => {
        const desktop = await launch(options, made)
        running.push(desktop)
        return desktop
      })
      await endAll(running)
    },
  })
}
// biome-ignore-end lint/correctness/noEmptyPattern: the test runner reads the needed fixtures from the pattern

async function endAll(running: readonly Desktop[]): Promise<void> {
  for (const desktop of running) await desktop.kill()
  for (const { userData } of running) await rm(userData, { recursive: true, force: true })
}

const doublePlace: Place<Chromium> = { make: launchChromium, end: (chromium) => chromium.close() }
const electronPlace: Place<null> = { make: async () => null, end: async () => undefined }

const doubleTest = testWith(doublePlace, openDouble)
const electronTest = testWith(electronPlace, openElectron)

export type DesktopTest = typeof doubleTest

/** Tests of the desktop form, over the double and in the real Electron. */
export function onDesktops(title: string, tests: (test: DesktopTest) => void): void {
  inDouble(title, tests)
  describe.skipIf(!electronCanRun)(`${title} (Electron)`, () => tests(electronTest as unknown as DesktopTest))
}

/** Tests that look into the double, or forge what a real system would not give. */
export function inDouble(title: string, tests: (test: DesktopTest) => void): void {
  describe(title, () => tests(doubleTest))
}
