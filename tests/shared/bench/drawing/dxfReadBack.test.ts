import DxfParser, { type IArcEntity, type IDxf, type ILineEntity, type ITextEntity } from 'dxf-parser'
import { describe, expect, it } from 'vitest'
import { type Drawing, type Shape, strokeKinds } from '#shared/bench/drawing/drawing.ts'
import { dxfText } from '#shared/bench/drawing/dxf.ts'
import { checkLineMm, templateDrawing } from '#shared/bench/drawing/template.ts'
import { sizeSlide } from '#shared/bench/slide/sizeSlide.ts'
import { slideDrawing } from '#shared/bench/slide/slideDrawing.ts'
import { thirdSlide } from '../slide/thirdSlide.ts'

/** A slide whose two quarters differ, so that no two arcs of its bow are alike. */
const sized = sizeSlide({ ...thirdSlide, targetMm: 300, quarterRadiiMm: [19, 15] })
if (sized.kind !== 'sized') throw new Error(sized.findings[0]?.message)
const slide = slideDrawing(sized, 'Third slide ± Ø 17.2')

function readBack(drawing: Drawing): IDxf {
  const found = new DxfParser().parseSync(dxfText(drawing))
  if (found === null) throw new Error('nothing was read')
  return found
}

const entities = <Entity>(dxf: IDxf, type: string) =>
  dxf.entities.filter((entity) => entity.type === type) as unknown as readonly Entity[]
const shapes = <Kind extends Shape['kind']>({ shapes: all }: Drawing, kind: Kind) =>
  all.filter((shape): shape is Extract<Shape, { kind: Kind }> => shape.kind === kind)

describe.each([
  ['the slide drawing', slide],
  ['the template', templateDrawing(slide)],
])('Read by another library, %s', (_, drawing) => {
  const dxf = readBack(drawing)

  it('has every shape, in order, and nothing else', () => {
    const types = { line: 'LINE', arc: 'ARC', label: 'TEXT' }
    expect(dxf.entities.map(({ type }) => type)).toEqual(drawing.shapes.map(({ kind }) => types[kind]))
    expect(shapes(drawing, 'arc').length).toBeGreaterThan(5)
  })

  it('has its lines where they were drawn', () => {
    const lines = entities<ILineEntity>(dxf, 'LINE')
    for (const [i, { from, to, stroke }] of shapes(drawing, 'line').entries()) {
      const { vertices, layer } = lines[i]!
      expect(vertices[0]!.x).toBeCloseTo(from.xMm, 5)
      expect(vertices[0]!.y).toBeCloseTo(from.yMm, 5)
      expect(vertices[1]!.x).toBeCloseTo(to.xMm, 5)
      expect(vertices[1]!.y).toBeCloseTo(to.yMm, 5)
      expect(layer).toBe(stroke.toUpperCase())
    }
  })

  it('has its arcs with centre, radius and angles', () => {
    const arcs = entities<IArcEntity>(dxf, 'ARC')
    for (const [i, { centre, radiusMm, startDegrees, endDegrees }] of shapes(drawing, 'arc').entries()) {
      const { center, radius, startAngle, endAngle } = arcs[i]!
      expect([center.x, center.y]).toEqual([expect.closeTo(centre.xMm, 5), expect.closeTo(centre.yMm, 5)])
      expect(radius).toBeCloseTo(radiusMm, 5)
      const turn = (radians: number, degrees: number) => Math.cos(radians - (degrees * Math.PI) / 180)
      expect(turn(startAngle, startDegrees)).toBeCloseTo(1, 9)
      expect(turn(endAngle, endDegrees)).toBeCloseTo(1, 9)
    }
  })

  it('has its words at their height, turned where they stand upright', () => {
    const words = entities<ITextEntity>(dxf, 'TEXT')
    for (const [i, { text, heightMm, upright }] of shapes(drawing, 'label').entries()) {
      expect(words[i]!.textHeight).toBeCloseTo(heightMm, 5)
      expect(words[i]!.rotation ?? 0).toBe(upright ? 90 : 0)
      expect(words[i]!.text).toBe(text.replace('±', '%%p').replace('Ø', '%%c'))
    }
  })

  it('has a layer and a line type for every stroke', () => {
    const { layer, lineType } = dxf.tables
    const names = strokeKinds.map((kind) => kind.toUpperCase())
    expect(Object.keys(layer.layers).sort()).toEqual([...names].sort())
    expect(Object.keys(lineType.lineTypes).sort()).toEqual([...names].sort())
    expect(lineType.lineTypes.HIDDEN!.patternLength).toBeCloseTo(3, 9)
  })
})

describe('Read by another library', () => {
  it('the template holds a level line of exactly 100 mm, at full size', () => {
    const level = entities<ILineEntity>(readBack(templateDrawing(slide)), 'LINE').filter(
      ({ vertices: [a, b] }) => a!.y === b!.y && Math.abs(Math.abs(b!.x - a!.x) - checkLineMm) < 1e-6,
    )
    expect(level).toHaveLength(1)
  })

  it('the file names its release', () => {
    expect(readBack(slide).header.$ACADVER).toBe('AC1009')
  })
})
