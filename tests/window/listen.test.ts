import type { Page } from 'playwright-core'
import { describe, expect } from 'vitest'
import { levelLimit } from '#shared/sound/level.ts'
import { browserTest } from '../desktop/harness/browserForm.ts'
import { figure, goTo, openExample } from './steps.ts'

interface Heard {
  /** Audio contexts that were made. */
  readonly made: number
  /** The largest of the samples that reach the loudspeaker now. */
  readonly peak: number
}

/** Listens at the loudspeaker: whatever is connected to it is looked at as well. */
function listenAtTheLoudspeaker(): void {
  const ears: AnalyserNode[] = []
  const contexts: AudioContext[] = []
  const Own = window.AudioContext
  window.AudioContext = class extends Own {
    constructor(options?: AudioContextOptions) {
      super(options)
      contexts.push(this)
    }
  }
  const connect = AudioNode.prototype.connect as (this: AudioNode, to: AudioNode) => AudioNode
  AudioNode.prototype.connect = function (this: AudioNode, to: AudioNode): AudioNode {
    if (to instanceof AudioDestinationNode) {
      const ear = this.context.createAnalyser()
      connect.call(this, ear)
      ears.push(ear)
    }
    return connect.call(this, to)
  } as AudioNode['connect']
  const peakOf = (ear: AnalyserNode): number => {
    const samples = new Float32Array(ear.fftSize)
    ear.getFloatTimeDomainData(samples)
    return samples.reduce((most, value) => Math.max(most, Math.abs(value)), 0)
  }
  Object.assign(globalThis, {
    heard: () => ({ made: contexts.length, peak: Math.max(0, ...ears.map(peakOf)) }),
  })
}

function heard(page: Page): Promise<Heard> {
  return page.evaluate(() => (globalThis as unknown as { heard(): Heard }).heard())
}

async function sounds(page: Page): Promise<void> {
  await expect.poll(async () => (await heard(page)).peak, { timeout: 4000 }).toBeGreaterThan(0.003)
}

async function silent(page: Page): Promise<void> {
  await expect.poll(async () => (await heard(page)).peak, { timeout: 4000 }).toBe(0)
  await expect.poll(() => page.getByRole('button', { name: 'together', pressed: true }).count()).toBe(0)
}

const together = (page: Page) => page.getByRole('button', { name: 'together' })

/** The combination 2-3-4 of the compensating bass is 15.5 cents sharp. */
async function listenToTheBass(page: Page): Promise<void> {
  await openExample(page, 'Bass in F, four ways')
  await figure(page, '2-3-4', 1).getByRole('button').click()
  await page.getByRole('button', { name: 'Listen…' }).click()
  await page.getByRole('region', { name: 'Listen' }).waitFor()
}

describe('listening', () => {
  browserTest('makes no sound, and nothing that could, before it is asked', async ({ form }) => {
    const { page, complaints } = await form.open(listenAtTheLoudspeaker)
    await listenToTheBass(page)
    expect(await heard(page)).toEqual({ made: 0, peak: 0 })
    await together(page).click()
    await sounds(page)
    expect((await heard(page)).made).toBe(1)
    expect(complaints).toEqual([])
  })

  browserTest('stops by its button, by Escape, and by a second press', async ({ form }) => {
    const { page } = await form.open(listenAtTheLoudspeaker)
    await listenToTheBass(page)
    const stops = [
      () => page.getByRole('button', { name: /^Stop/ }).click(),
      () => page.keyboard.press('Escape'),
      () => together(page).click(),
    ]
    for (const stop of stops) {
      await together(page).click()
      await sounds(page)
      await stop()
      await silent(page)
    }
  })

  browserTest('stops when the person goes elsewhere or the window is hidden', async ({ form }) => {
    const { page } = await form.open(listenAtTheLoudspeaker)
    await listenToTheBass(page)
    const leaves = [
      () => goTo(page, 'Compare'),
      () => page.locator('.cardName').first().click(),
      () =>
        page.evaluate(() => {
          Object.defineProperty(document, 'hidden', { configurable: true, get: () => true })
          document.dispatchEvent(new Event('visibilitychange'))
          Reflect.deleteProperty(document, 'hidden')
        }),
      () => page.getByRole('slider', { name: 'Length of second', exact: true }).press('ArrowRight'),
    ]
    for (const leave of leaves) {
      await page.getByRole('tab', { name: 'Curves' }).click()
      await figure(page, '2-3-4', 1).getByRole('button').click()
      await together(page).click()
      await sounds(page)
      await leave()
      await silent(page)
    }
  })

  browserTest('stops before it has begun', async ({ form }) => {
    const { page } = await form.open(listenAtTheLoudspeaker)
    await listenToTheBass(page)
    await page.evaluate(() => {
      const button = [...document.querySelectorAll('button')].find((each) => each.textContent === 'together')
      button?.click()
      window.dispatchEvent(new KeyboardEvent('keydown', { key: 'Escape' }))
    })
    await page.waitForTimeout(400)
    await silent(page)
  })

  browserTest('keeps to the limit at the highest level, and to the level over a reload', async ({ form }) => {
    const { page } = await form.open(listenAtTheLoudspeaker)
    await listenToTheBass(page)
    const level = page.getByRole('slider', { name: 'Level' })
    await expect.poll(() => level.inputValue()).toBe('40')
    await level.press('End')
    await together(page).click()
    await expect.poll(async () => (await heard(page)).peak, { timeout: 4000 }).toBeGreaterThan(0.08)
    expect((await heard(page)).peak).toBeLessThanOrEqual(levelLimit)
    await level.press('Home')
    await expect.poll(async () => (await heard(page)).peak, { timeout: 4000 }).toBeLessThan(1e-4)
    await page.reload()
    await listenToTheBass(page)
    await expect.poll(() => level.inputValue()).toBe('0')
  })

  browserTest('shows the beats of the cell that is picked, and of the notes of a chord', async ({ form }) => {
    const { page } = await form.open(listenAtTheLoudspeaker)
    await listenToTheBass(page)
    const listen = page.getByRole('region', { name: 'Listen' })
    // Harmonic 4, 9 semitones below 43.6535 Hz, on 6614.9 mm for 6674.5: 103.826·(6674.5/6614.9 − 1) = 0.9355.
    await expect
      .poll(() => listen.textContent())
      .toMatch(/0\.94 beats a second, 1\.87 at partial 2, 2\.81 at 3/)
    await listen.getByRole('combobox', { name: 'on harmonic' }).selectOption('8')
    await expect.poll(() => listen.textContent()).toMatch(/1\.87 beats a second/)
    await figure(page, '0', 1).getByRole('button').click()
    await expect.poll(() => listen.textContent()).toContain('No beat: in tune.')
    await listen.getByRole('combobox', { name: 'Scale or chord' }).selectOption('fifth')
    await expect.poll(() => listen.textContent()).toMatch(/Beats a second: F\d–C\d \d\.\d\d/)
    await listen.getByRole('group', { name: 'fifth' }).getByRole('button', { name: 'as it plays' }).click()
    await sounds(page)
    await page.keyboard.press('Escape')
    await silent(page)
  })

  browserTest('says so when there is no sound to be had', async ({ form }) => {
    const { page } = await form.open(() => {
      Reflect.deleteProperty(window, 'AudioContext')
    })
    await listenToTheBass(page)
    await together(page).click()
    await expect.poll(() => page.getByRole('alert').textContent()).toContain('expected a device that plays')
    await expect.poll(() => page.getByRole('button', { name: 'together', pressed: true }).count()).toBe(0)
  })
})
