import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Drawing, Shape } from '#shared/bench/drawing/drawing.ts'
import { dxfText } from '#shared/bench/drawing/dxf.ts'
import { tubingDrawing } from '#shared/bench/tubing/tubingDrawing.ts'
import type { Loop } from '#shared/valves/loop.ts'

function centreLengthMm(shape: Shape): number {
  if (shape.kind === 'label' || shape.stroke !== 'centre') return 0
  if (shape.kind === 'line') return Math.hypot(shape.to.xMm - shape.from.xMm, shape.to.yMm - shape.from.yMm)
  return (shape.radiusMm * Math.PI * (shape.endDegrees - shape.startDegrees)) / 180
}
const tubeMm = ({ shapes }: Drawing) => shapes.reduce((sum, shape) => sum + centreLengthMm(shape), 0)
const words = ({ shapes }: Drawing) => shapes.flatMap((shape) => (shape.kind === 'label' ? [shape.text] : []))

describe('The tubing of a design, drawn', () => {
  it('has nothing of no loops', () => {
    expect(tubingDrawing('Bugle', []).shapes).toEqual([])
  })

  it('names a loop of no length and draws none of it', () => {
    expect(words(tubingDrawing('Bass', [{ id: 'L1', lengthMm: 0, pressed: ['1'] }]))).toEqual([
      'L1: 1 down, 0.0 mm of tube',
    ])
  })

  it('says of each loop its name, its gate and its length, and of each leg its own', () => {
    const loop = {
      id: 'C1',
      name: 'first, compensating',
      lengthMm: 162.9,
      pressed: ['1', '4'],
      diameterMm: 17.2,
    }
    // (162.9 − π·43/2)/2 = 47.68
    expect(words(tubingDrawing('Bass', [loop]))).toEqual([
      'first, compensating: 1 and 4 down, 162.9 mm of tube',
      '47.7',
    ])
  })

  it('is to scale: its centre lines together are the tube of its loops, however short', () => {
    const loop = fc.record({
      lengthMm: fc.double({ min: 0.01, max: 3000, noNaN: true }),
      diameterMm: fc.double({ min: 5, max: 40, noNaN: true }),
    })
    fc.assert(
      fc.property(fc.array(loop, { minLength: 1, maxLength: 12 }), (parts) => {
        const loops: Loop[] = parts.map((part, i) => ({ ...part, id: `L${i}`, pressed: ['1'] }))
        const wantedMm = loops.reduce((sum, { lengthMm }) => sum + lengthMm, 0)
        expect(tubeMm(tubingDrawing('Any', loops))).toBeCloseTo(wantedMm, 6)
      }),
    )
  })

  it('keeps its loops apart: none reaches into the next', () => {
    const loops = [480, 160, 20, 900].map((lengthMm, i) => ({ id: `L${i}`, lengthMm, pressed: ['1'] }))
    const alone = loops.map((loop) => tubingDrawing('', [loop]).bounds)
    const all = tubingDrawing('', loops).bounds
    const sumMm = alone.reduce((sum, { topMm, bottomMm }) => sum + (topMm - bottomMm - 20), 0)
    expect(all.topMm - all.bottomMm - 20).toBeGreaterThan(sumMm)
  })

  it('becomes a DXF', () => {
    expect(dxfText(tubingDrawing('Bass', [{ id: 'L1', lengthMm: 480, pressed: ['1'] }]))).toContain('\nARC\n')
  })
})
