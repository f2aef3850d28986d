import { describe, expect, it } from 'vitest'
import { slideMovements } from '#shared/solve/slideMovement.ts'
import { movedSlides, presentRoutes } from '../../src-renderer/lengths/played.ts'
import { derive } from '../../src-renderer/state/derived.ts'
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
