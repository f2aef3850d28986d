import { describe, expect, it } from 'vitest'
import type { Drawing } from '#shared/bench/drawing/drawing.ts'
import { fittedDrawing } from '#shared/bench/drawing/fitted.ts'
import { sizeSlide } from '#shared/bench/slide/sizeSlide.ts'
import { slideDrawing } from '#shared/bench/slide/slideDrawing.ts'
import { thirdSlide } from '../slide/thirdSlide.ts'

function draw(targetMm: number): (heightMm: number) => Drawing {
  const sized = sizeSlide({ ...thirdSlide, targetMm, routeLengthMm: 5000 })
  if (sized.kind !== 'sized') throw new Error(sized.findings[0]?.message)
  return (heightMm) => slideDrawing(sized, 'Third slide', heightMm)
}

const words = ({ shapes }: Drawing) => shapes.flatMap((shape) => (shape.kind === 'label' ? [shape] : []))
const size = ({ bounds }: Drawing) =>
  [bounds.rightMm - bounds.leftMm, bounds.topMm - bounds.bottomMm] as const

describe('A drawing fitted to a space', () => {
  it('of its own size keeps its usual words', () => {
    const { drawing, scale } = fittedDrawing(draw(265), 2000, 2000, 12.5)
    expect(drawing).toEqual(draw(265)(3))
    expect(scale).toBeGreaterThan(12.5 / 3)
  })

  it('fits, with legible words, however long the slide', () => {
    for (const targetMm of [265, 500, 748, 1000, 1500]) {
      const { drawing, scale } = fittedDrawing(draw(targetMm), 480, 420, 12.5)
      const [width, height] = size(drawing)
      expect(width * scale).toBeLessThan(480.001)
      expect(height * scale).toBeLessThan(420.001)
      for (const { heightMm } of words(drawing)) expect(heightMm * scale).toBeGreaterThan(12.4)
    }
  })

  it('keeps the slide itself to one scale: only words, levels and arrows grow', () => {
    const outline = ({ shapes }: Drawing) =>
      shapes.filter((s) => s.kind !== 'label' && s.stroke === 'outline')
    expect(outline(fittedDrawing(draw(748), 480, 420, 12.5).drawing)).toEqual(outline(draw(748)(3)))
  })

  it('without room for words still shows the slide', () => {
    const { drawing, scale } = fittedDrawing(draw(265), 60, 40, 12.5)
    const [width, height] = size(drawing)
    expect(Math.max((width * scale) / 60, (height * scale) / 40)).toBeCloseTo(1, 6)
    expect(words(drawing)[0]!.heightMm).toBeLessThan(0.1 * width)
  })
})
