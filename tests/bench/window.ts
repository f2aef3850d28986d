import { resolve } from 'node:path'
import { setTimeout } from 'node:timers/promises'
import { type CDPSession, chromium, type Page } from 'playwright-core'
import { writeWorkbook } from '#shared/workbook/writeWorkbook.ts'
import { serveWindow } from '../../src-main/server/server.ts'
import { ownChromium } from '../desktop/harness/chromiumFlags.ts'
import { dropFile } from '../window/steps.ts'
import { type Figure, quantile } from './figure.ts'
import { firstLoadKilobytes } from './firstLoad.ts'
import { fourDesigns } from './sevenValves.ts'

const built = resolve(import.meta.dirname, '../../out/renderer')

/** The window in Chromium: size of its first load, first paint from a cold start, frames while a loop is dragged. */
export async function measureWindow(): Promise<readonly Figure[]> {
  const server = await serveWindow(built, 0)
  const kilobytes = await firstLoadKilobytes(server.address)
  const [paint, frames] = [await firstPaintMs(server.address), await dragFrames(server.address)]
  await server.stop()
  return [
    { name: 'first load, script and style, gzip', value: kilobytes, unit: 'KB', target: 400 },
    { name: 'first paint, cold start of Chromium', value: paint, unit: 'ms', target: 1000 },
    { name: 'drag, frames a second', value: frames.perSecond, unit: 'fps', target: 58, atLeast: true },
    { name: 'drag, work of a frame, median', value: quantile(frames.workMs, 0.5), unit: 'ms', target: null },
    {
      name: 'drag, work of a frame, 99th percentile',
      value: quantile(frames.workMs, 0.99),
      unit: 'ms',
      target: 12,
    },
    {
      name: 'drag, the same by the clock, 99th percentile',
      value: quantile(frames.clockMs, 0.99),
      unit: 'ms',
      target: null,
    },
  ]
}

async function firstPaintMs(address: string): Promise<number> {
  const browser = await chromium.launch(ownChromium)
  const page = await browser.newPage({ viewport: { width: 1280, height: 800 } })
  await page.goto(address)
  await page.getByRole('heading', { name: 'Ferrule' }).waitFor()
  const paint = await page.evaluate(
    () => performance.getEntriesByName('first-contentful-paint')[0]?.startTime ?? -1,
  )
  await browser.close()
  return paint
}

interface Frames {
  readonly perSecond: number
  /** Time that the thread ran. */
  readonly workMs: readonly number[]
  /** With what it waited for a core, which Chromium's own threads want too: here they draw the page, without a GPU. */
  readonly clockMs: readonly number[]
}

/** Drags a loop back and forth in the workbook of four designs with seven valves each. */
async function dragFrames(address: string): Promise<Frames> {
  const browser = await chromium.launch(ownChromium)
  const page = await browser.newPage({ viewport: { width: 1280, height: 800 } })
  await page.goto(address)
  await dropFile(page, 'four.ferrule', writeWorkbook(fourDesigns(7, 16)))
  await page.getByRole('complementary', { name: 'Tubing' }).waitFor()
  const bow = page.getByRole('slider', { name: 'Length of fourth', exact: true })
  const box = await bow.boundingBox()
  if (box === null) throw new Error('the loop to drag is not in sight')
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2]
  const session = await page.context().newCDPSession(page)
  await page.mouse.move(x, y)
  await page.mouse.down()
  await drag(session, x, y, 500)
  const events: TraceEvent[] = []
  session.on('Tracing.dataCollected', ({ value }) => events.push(...(value as unknown as TraceEvent[])))
  await session.send('Tracing.start', {
    traceConfig: { includedCategories: ['devtools.timeline', 'toplevel'] },
  })
  await startCounting(page)
  await drag(session, x, y, 3000)
  const perSecond = await stopCounting(page)
  await page.mouse.up()
  const done = new Promise((resolved) => session.once('Tracing.tracingComplete', resolved))
  await session.send('Tracing.end')
  await done
  await browser.close()
  return { perSecond, workMs: frameMs(events, 'tdur'), clockMs: frameMs(events, 'dur') }
}

/**
 * Moves the held loop back and forth as often as an ordinary mouse tells of it, faster than frames come. The moves
 * go to the browser bare: what the driver's own mouse runs in the page at every move is no work of the program's.
 */
async function drag(session: CDPSession, x: number, y: number, moves: number): Promise<void> {
  const arriving: Promise<unknown>[] = []
  for (let move = 1; move <= moves; move++) {
    const sent = session.send('Input.dispatchMouseEvent', {
      type: 'mouseMoved',
      x: x - 40 + 40 * Math.cos(move / 24),
      y,
      button: 'left',
      buttons: 1,
    })
    // A move is acknowledged with the next frame: the hand does not wait for that.
    arriving.push(sent)
    await setTimeout(8)
  }
  await Promise.all(arriving)
}

/** Given as text: the page knows nothing of what a TypeScript runner adds to functions. */
async function startCounting(page: Page): Promise<void> {
  await page.evaluate(`
    window.counted = { frames: 0, begun: performance.now() }
    requestAnimationFrame(function count() { window.counted.frames++; requestAnimationFrame(count) })
  `)
}

function stopCounting(page: Page): Promise<number> {
  return page.evaluate<number>('(1000 * window.counted.frames) / (performance.now() - window.counted.begun)')
}

interface TraceEvent {
  readonly name: string
  readonly ph: string
  readonly ts: number
  readonly dur?: number
  /** Time the thread ran, without waiting for a core. */
  readonly tdur?: number
  readonly tid: number
  readonly pid: number
  readonly args?: { readonly name?: string }
}

/**
 * Main-thread work from one frame to the next, ms: events, script, style, layout and paint. A frame is the task
 * in which animation callbacks are fired; the tasks up to the next one are counted with it.
 */
function frameMs(events: readonly TraceEvent[], time: 'dur' | 'tdur'): readonly number[] {
  const fired = events.filter(({ name }) => name === 'FireAnimationFrame')
  const [pid, tid] = [fired[0]?.pid, fired[0]?.tid]
  const calls = fired.filter((event) => event.pid === pid).map(({ ts }) => ts)
  const tasks = events
    .filter((event) => event.pid === pid && event.tid === tid && event.ph === 'X' && event.name === topLevel)
    .sort((a, b) => a.ts - b.ts)
  const frames: number[] = []
  for (const task of tasks) {
    const isFrame = calls.some((ts) => ts >= task.ts && ts <= task.ts + (task.dur ?? 0))
    if (isFrame) frames.push(0)
    if (frames.length > 0) frames[frames.length - 1]! += (task[time] ?? 0) / 1000
  }
  return frames.slice(0, -1)
}

/** A task of the renderer's main thread; everything else in the trace lies inside one. */
const topLevel = 'ThreadControllerImpl::RunTask'
