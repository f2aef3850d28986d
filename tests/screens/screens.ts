import { mkdirSync, rmSync } from 'node:fs'
import { resolve } from 'node:path'
import { chromium, type Page } from 'playwright-core'
import { serveWindow } from '../../src-main/server/server.ts'
import { ownChromium } from '../desktop/harness/chromiumFlags.ts'
import { type Scene, scenes } from './scenes.ts'

/** Takes a picture of every scene at both sizes and in both themes, into `screens/`. Names after the command narrow it. */
const folder = resolve(import.meta.dirname, '../../screens')
const sizes = [
  { width: 1280, height: 800 },
  { width: 1920, height: 1080 },
]
const wanted = process.argv.slice(2)

async function take(page: Page, scene: Scene, theme: string, width: number): Promise<void> {
  await scene.set(page)
  await page.evaluate(() => document.fonts.ready)
  await page.screenshot({ path: `${folder}/${scene.name}-${width}-${theme}.png` })
}

rmSync(folder, { recursive: true, force: true })
mkdirSync(folder, { recursive: true })
const server = await serveWindow(resolve(import.meta.dirname, '../../out/renderer'), 0)
// As a person has them, with the bars of what scrolls.
const browser = await chromium.launch({ ...ownChromium, ignoreDefaultArgs: ['--hide-scrollbars'] })
for (const theme of ['light', 'dark'] as const) {
  for (const viewport of sizes) {
    for (const scene of scenes.filter(({ name }) => wanted.length === 0 || wanted.includes(name))) {
      const context = await browser.newContext({ viewport, colorScheme: theme })
      const page = await context.newPage()
      page.on('pageerror', (error) => console.error(scene.name, error.message))
      page.on('console', (message) => {
        if (message.type() === 'error') console.error(scene.name, message.text())
      })
      await page.goto(server.address)
      await take(page, scene, theme, viewport.width)
      await context.close()
    }
  }
}
await browser.close()
await server.stop()
