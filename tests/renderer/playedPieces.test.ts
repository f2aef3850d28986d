import { describe, expect, it } from 'vitest'
import type { LengthProblem } from '#shared/solve/lengthProblem.ts'
import { slideMovements } from '#shared/solve/slideMovement.ts'
import { movedSlides, presentRoutes, reachedBy, slidesOf } from '../../src-renderer/lengths/played.ts'
import { derive } from '../../src-renderer/state/derived.ts'
import { mainSlideId } from '../../src-renderer/state/lengthsStore.ts'
import { workbookWith } from '../fixtures/workbooks.ts'

describe('a slide that stands farther out than it can travel', () => {
  it('goes in while playing, but not farther out', () => {
    const workbook = workbookWith('plain-3')
    const [design] = workbook.designs
    const stretched = design!.loops.map((loop) => ({ ...loop, slide: { outMm: 30, travelMm: 5 } }))
    const derived = derive(workbook, { ...design!, loops: stretched }, 0)
    const slides = movedSlides(derived, new Set(stretched.map(({ id }) => id)))
    const routes = presentRoutes(derived).map((route) => ({ ...route, targetLengthMm: route.routeLengthMm }))
    const needing = (mm: number) =>
      routes.map((route) => ({ ...route, targetLengthMm: route.targetLengthMm + 2 * mm }))
    const alone = (mm: number) => slideMovements(needing(mm), slides).find(({ name }) => name === '1')!
    expect(alone(10).moves).toEqual([])
    expect(alone(-10).moves.map(({ outMm }) => outMm)).toEqual([expect.closeTo(-10, 6)])
  })
})

describe('the main slide of a design that is tuned', () => {
  // 3968.66 mm at A4 440 are 4014.32 at 435, and half of the difference is 22.83 of movement.
  it.each([
    [60, 34.83],
    [30, 30],
  ])('stands where the tuning puts it, within its travel of %d mm', (travelMm, outMm) => {
    const workbook = workbookWith('plain-3', {
      mainSlide: { outMm: 12, travelMm },
      tuning: { kind: 'open', harmonic: 4 },
    })
    const reference = { a4Hz: 435, temperament: { kind: 'equal' } as const }
    const derived = derive({ ...workbook, reference }, workbook.designs[0]!, 0)
    expect(slidesOf(derived)).toEqual([{ id: mainSlideId, outMm: expect.closeTo(outMm, 2), travelMm }])
  })
})

describe('what is derived from a design', () => {
  it('is made anew for another pitch, and only then', () => {
    const workbook = workbookWith('plain-3')
    const [design] = workbook.designs
    const derived = derive(workbook, design!, 0)
    expect(derive({ ...workbook, name: 'another' }, design!, 0)).toBe(derived)
    const low = { ...workbook, reference: { ...workbook.reference, a4Hz: 415 } }
    const a3 = derive(low, design!, 0).tables.notes.find(({ midi }) => midi === 57)
    expect(a3?.targetHz).toBeCloseTo(207.5, 9)
  })
})

describe('what lengths reach', () => {
  // sqrt((6² + 3·2²) / 4) = 3.4641
  it('counts each fingering by its weight, and one without weight not at all', () => {
    const [first, second, third] = ['1', '2', '3'].map((name) => ({ name, semitones: 1, loops: [] }))
    const problem: LengthProblem = {
      openLengthMm: 2000,
      open: { kind: 'held' },
      loops: [],
      rows: [first!, { ...second!, weight: 0 }, { ...third!, weight: 3 }],
      objective: 'rms',
    }
    const cents = new Map(Object.entries({ '1': -6, '2': 50, '3': 2 }))
    expect(reachedBy(problem, cents)).toEqual({
      rmsCents: expect.closeTo(3.4641, 4),
      largestCents: -6,
      largestAt: '1',
    })
  })
})
