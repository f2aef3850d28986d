import type { Page } from 'playwright-core'
import { describe, expect } from 'vitest'
import { beatHz, meetingOf } from '#shared/sound/beats.ts'
import { comparison } from '#shared/sound/comparison.ts'
import { levelLimit } from '#shared/sound/level.ts'
import { isScale, passageNotes, passagePiece } from '#shared/sound/passage.ts'
import { fadeInS, mostShare, type Piece, stopFadeS } from '#shared/sound/piece.ts'
import { warmPartials } from '#shared/sound/warmTone.ts'
import { tuningTables } from '#shared/tuning/tables.ts'
import { plain } from '#shared/valves/systems/plain.ts'
import { pageTest } from '../desktop/harness/pageTest.ts'
import { instrumentWith } from '../fixtures/designs.ts'
import { largestStep, peak, type Samples, swellHz, toneHz } from './measuredSound.ts'
import type { RenderRequest } from './soundPage/main.ts'

const soundTest = pageTest(new URL('./soundPage', import.meta.url))

const sampleHz = 48_000

async function render(
  page: Page,
  piece: Piece,
  { level = 1, stopAtS = null }: Partial<RenderRequest> = {},
): Promise<Samples> {
  const text = await page.evaluate(
    (request: RenderRequest) =>
      (globalThis as unknown as { rendered(asked: RenderRequest): Promise<string> }).rendered(request),
    { piece, level, sampleHz, stopAtS },
  )
  const bytes = Uint8Array.from(Buffer.from(text, 'base64'))
  return { values: new Float32Array(bytes.buffer), sampleHz }
}

/** A bass with three plain valves, whose long combinations are far out. */
const openMm = 3968.7
const bass = tuningTables(
  instrumentWith(openMm, plain(openMm, [2, 1, 3]), { fundamentalHz: 440 * 2 ** (-40 / 12) }),
)
const sharpNotes = bass.notes
  .flatMap(({ targetHz, usual }) => (usual === null ? [] : [{ noteHz: usual.hz, targetHz }]))
  .filter(({ noteHz, targetHz }) => beatHz(noteHz, targetHz) > 0.25 && beatHz(noteHz, targetHz) < 8)

/** What the steepest sum of the piece's partials can change from a sample to the next, fades included. */
function steepestStep({ tones }: Piece): number {
  const slopes = tones.map(({ hz, share }) => {
    const steepest = warmPartials(hz).reduce((sum, each, i) => sum + each * 2 * Math.PI * hz * (i + 1), 0)
    return share * (steepest + Math.PI / (2 * fadeInS))
  })
  return (levelLimit * slopes.reduce((sum, slope) => sum + slope, 0)) / sampleHz
}

describe('what is heard', () => {
  soundTest('beats as often as is calculated', async ({ form }) => {
    const { page } = await form.open()
    const some = sharpNotes.filter((_, i) => i % 4 === 0)
    expect(some.length).toBeGreaterThan(4)
    for (const { noteHz, targetHz } of some) {
      const piece = comparison('together', noteHz, targetHz)
      const measured = swellHz(await render(page, piece), targetHz, targetHz, 0.1, piece.lengthS - 0.1)
      expect(Math.abs(measured - beatHz(noteHz, targetHz))).toBeLessThan(0.05)
    }
  })

  soundTest('would be told apart if it beat a tenth of a hertz faster', async ({ form }) => {
    const { page } = await form.open()
    const { noteHz, targetHz } = sharpNotes[0]!
    const piece = comparison('together', noteHz + 0.1 * Math.sign(noteHz - targetHz), targetHz)
    const measured = swellHz(await render(page, piece), targetHz, targetHz, 0.1, piece.lengthS - 0.1)
    expect(Math.abs(measured - beatHz(noteHz, targetHz))).toBeGreaterThan(0.05)
  })

  soundTest('of a fifth beats where its partials meet', async ({ form }) => {
    const { page } = await form.open()
    const notes = passageNotes(bass.notes, 'fifth', 46, false)
    const [low, high] = notes.map(({ played }) => played!.hz)
    const meeting = meetingOf(low!, high!)!
    const piece = passagePiece('fifth', notes, 'asPlayed')
    const carrierHz = meeting.lowPartial * low!
    const measured = swellHz(await render(page, piece), carrierHz, low! / 2, 0.8, piece.lengthS - 0.1)
    expect(meeting.beatHz).toBeGreaterThan(0.25)
    expect(Math.abs(measured - meeting.beatHz)).toBeLessThan(0.05)
  })

  soundTest('of a scale is each note as its fingering plays it', async ({ form }) => {
    const { page } = await form.open()
    const piece = passagePiece('majorScale', passageNotes(bass.notes, 'majorScale', 41, false), 'asPlayed')
    const samples = await render(page, piece)
    expect(piece.tones).toHaveLength(8)
    for (const { hz, startS, durationS } of piece.tones) {
      const measured = toneHz(samples, hz, startS + 0.07, startS + durationS - 0.1)
      expect(Math.abs(measured - hz)).toBeLessThan(0.05)
    }
  })

  soundTest('stays within the level limit, comes and goes without a step', async ({ form }) => {
    const { page } = await form.open()
    const { noteHz, targetHz } = sharpNotes.at(-1)!
    const pieces = [
      comparison('alternately', noteHz, targetHz),
      comparison('together', noteHz, targetHz),
      ...(['majorScale', 'majorChord'] as const).map((kind) =>
        passagePiece(kind, passageNotes(bass.notes, kind, 41, isScale(kind)), 'asPlayed'),
      ),
    ]
    for (const piece of pieces) {
      const samples = await render(page, piece)
      const level = peak(samples)
      expect(level).toBeLessThanOrEqual(levelLimit)
      expect(level).toBeGreaterThan(levelLimit / 4)
      expect(samples.values[0]).toBe(0)
      expect(peak(samples, 0, 0.002)).toBeLessThan(0.01 * levelLimit)
      expect(largestStep(samples)).toBeLessThan(1.02 * steepestStep(piece))
      expect(peak(samples, piece.lengthS + 0.001)).toBe(0)
    }
  })

  soundTest('is cut off at the limit even if a piece asks for more', async ({ form }) => {
    const { page } = await form.open()
    const piece: Piece = {
      tones: [1, 2, 3].map((part) => ({ startS: 0, durationS: 1, hz: 110, share: 2, part })),
      lengthS: 1,
    }
    expect(mostShare(piece)).toBe(6)
    expect(peak(await render(page, piece))).toBe(levelLimit)
  })

  soundTest('falls silent when it is stopped, without a step', async ({ form }) => {
    const { page } = await form.open()
    const piece = comparison('together', 111, 110)
    const samples = await render(page, piece, { stopAtS: 1.3 })
    expect(peak(samples, 1.1, 1.3)).toBeGreaterThan(0.02)
    expect(peak(samples, 1.3 + stopFadeS + 0.001)).toBe(0)
    expect(largestStep(samples)).toBeLessThan(1.02 * steepestStep(piece))
  })

  soundTest('is as soft as its level asks: half the level is a quarter', async ({ form }) => {
    const { page } = await form.open()
    const piece = comparison('note', 110, 110)
    const [full, half, none] = await Promise.all(
      [1, 0.5, 0].map(async (level) => peak(await render(page, piece, { level }))),
    )
    expect(half! / full!).toBeCloseTo(0.25, 3)
    expect(none).toBe(0)
  })
})
