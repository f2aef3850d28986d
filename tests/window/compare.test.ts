import { describe, expect } from 'vitest'
import { playedCandidate } from '#shared/tuning/notes.ts'
import { spreadOfNotes } from '#shared/tuning/summary.ts'
import { examples } from '#shared/workbook/examples/examples.ts'
import { derive } from '../../src-renderer/state/derived.ts'
import { browserTest } from '../desktop/harness/browserForm.ts'
import { exampleWorkbook } from '../fixtures/exampleFiles.ts'
import { goTo, openExample, startFrom } from './steps.ts'

const bass = exampleWorkbook(examples.find(({ title }) => title === 'Bass in F, four ways')!)

/** The notes that each design plays, midi. */
const played = bass.designs.map((design, i) => {
  const { notes } = derive(bass, design, i).tables
  return {
    notes,
    midi: new Set(notes.filter((note) => playedCandidate(note) !== null).map(({ midi }) => midi)),
  }
})
const shared = [...played[0]!.midi].filter((midi) => played.every((each) => each.midi.has(midi)))

describe('the comparison', () => {
  browserTest('marks no design as better over notes that another does not play', async ({ form }) => {
    const { page } = await form.open()
    await openExample(page, 'Bass in F, four ways')
    await goTo(page, 'Compare')
    const row = (name: RegExp) => page.getByRole('row', { name })
    const rms = row(new RegExp(`^rms over the ${shared.length} shared`))
    const expected = played.map(({ notes }) =>
      spreadOfNotes(notes.filter(({ midi }) => shared.includes(midi))).rmsCents.toFixed(1),
    )
    await expect.poll(() => rms.getByRole('cell').allTextContents()).toEqual(expected)
    expect(await rms.locator('.least').count()).toBe(1)
    const byNote = page.locator('tbody').filter({ hasText: 'By note' }).locator('tr')
    expect(await byNote.nth(1).locator('.least').count()).toBe(0)
    expect(await byNote.nth(2).locator('.least').count()).toBe(0)
  })

  browserTest('has no such rows where every design plays the same notes', async ({ form }) => {
    const { page } = await form.open()
    await startFrom(page, 'Plain, three valves')
    await goTo(page, 'Compare')
    await page.getByRole('row', { name: /^loops in each route/i }).waitFor()
    expect(await page.getByRole('row', { name: /shared/ }).count()).toBe(0)
  })
})
