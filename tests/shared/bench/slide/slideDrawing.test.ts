import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Drawing, Shape } from '#shared/bench/drawing/drawing.ts'
import type { SlideJob } from '#shared/bench/slide/slide.ts'
import { slideDrawing } from '#shared/bench/slide/slideDrawing.ts'
import { sized } from './thirdSlide.ts'

function draw(change: Partial<SlideJob> = {}): Drawing {
  return slideDrawing(sized(change), 'Third slide')
}

const words = (drawing: Drawing) =>
  drawing.shapes.flatMap((shape) => (shape.kind === 'label' ? [shape.text] : []))

function centreLengthMm(shape: Shape): number {
  if (shape.kind === 'label' || shape.stroke !== 'centre') return 0
  if (shape.kind === 'line') return Math.hypot(shape.to.xMm - shape.from.xMm, shape.to.yMm - shape.from.yMm)
  return (shape.radiusMm * Math.PI * (shape.endDegrees - shape.startDegrees)) / 180
}

describe('The side view of a slide', () => {
  it('carries its dimensions', () => {
    expect(words(draw())).toEqual([
      'outer leg 60.0',
      'inner leg 59.0',
      'out 6.0',
      'straight end 17.2',
      'overall 111.3',
      'bore 17.2, wall 0.5, millimetres',
      '38.0',
      'R 19.0',
    ])
  })

  it('leaves out what is not there: nothing out, no straight end', () => {
    const text = words(draw({ targetMm: 200, outAtPitchMm: 0 }))
    expect(text.filter((word) => /out |straight/.test(word))).toEqual([])
  })

  it('is to scale: its centre lines are the loop less what lies in the valve', () => {
    const mm = (min: number, max: number) => fc.double({ min, max, noNaN: true })
    const change = fc.record({
      targetMm: mm(700, 1200),
      legSpacingMm: mm(38, 60),
      quarterRadiiMm: fc.tuple(mm(12, 19), mm(12, 19)),
      furtherPairs: fc.array(fc.record({ returnSpacingMm: mm(20, 40), legSpacingMm: mm(20, 50) }), {
        maxLength: 1,
      }),
    })
    fc.assert(
      fc.property(change, (parts) => {
        const drawn = draw({ ...parts, routeLengthMm: 3000 }).shapes.reduce(
          (sum, s) => sum + centreLengthMm(s),
          0,
        )
        const stubsMm = 4 * 2 * (1 + parts.furtherPairs.length)
        expect(drawn - stubsMm).toBeCloseTo(parts.targetMm - (22 + 31 - 14), 6)
      }),
    )
  })

  it('is held by its bounds', () => {
    const { shapes, bounds } = draw({
      furtherPairs: [{ returnSpacingMm: 30, legSpacingMm: 38 }],
      targetMm: 700,
    })
    const points = shapes.flatMap((shape) => (shape.kind === 'line' ? [shape.from, shape.to] : []))
    expect(points.every(({ xMm }) => xMm > bounds.leftMm && xMm < bounds.rightMm)).toBe(true)
    expect(points.every(({ yMm }) => yMm > bounds.bottomMm && yMm < bounds.topMm)).toBe(true)
  })
})
