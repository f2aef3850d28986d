import { describe, expect, it } from 'vitest'
import { levelDimension, uprightDimension } from '#shared/bench/drawing/dimension.ts'
import { drawing, line, point } from '#shared/bench/drawing/drawing.ts'
import { dxfText } from '#shared/bench/drawing/dxf.ts'
import { svgText } from '#shared/bench/drawing/svg.ts'
import { templateDrawing } from '#shared/bench/drawing/template.ts'

const quarter = {
  kind: 'arc',
  stroke: 'centre',
  centre: point(10, 0),
  radiusMm: 5,
  startDegrees: 0,
  endDegrees: 90,
} as const
const words = {
  kind: 'label',
  at: point(1, 2),
  text: 'a < b & Ø −5 “°”',
  heightMm: 3,
  upright: true,
} as const
const plain = drawing('Slide <3>', [line('hidden', point(0, 0), point(60, 20)), quarter, words], 4)

describe('A drawing', () => {
  it('of nothing has bounds of its margins', () => {
    expect(drawing('', [], 4).bounds).toEqual({ leftMm: -4, bottomMm: -4, rightMm: 4, topMm: 4 })
  })

  it('has bounds that hold an arc by the part of the circle that it draws', () => {
    const { bounds } = drawing('', [quarter], 0)
    expect(bounds.leftMm).toBeCloseTo(10, 9)
    expect(bounds.topMm).toBeCloseTo(5, 9)
    const half = drawing('', [{ ...quarter, startDegrees: 270, endDegrees: 450 }], 0)
    expect(half.bounds.rightMm).toBeCloseTo(15, 9)
  })

  it('as a template has its title and a line of exactly 100 mm', () => {
    const added = templateDrawing(plain).shapes.slice(plain.shapes.length)
    expect(added).toContainEqual(expect.objectContaining({ text: 'Slide <3>', heightMm: 5, upright: false }))
    const lengths = added.flatMap((s) => (s.kind === 'line' ? [Math.abs(s.to.xMm - s.from.xMm)] : []))
    expect(lengths).toContain(100)
  })
})

describe('A dimension', () => {
  // words 3 mm high: lines reach half of that beyond the level, on the side where it lies
  it.each([
    [-20, -21.5],
    [20, 21.5],
  ])('at %d mm has lines out to %d', (atMm, toMm) => {
    expect(levelDimension(point(0, 0), point(60, 0), atMm, '60.0').slice(0, 2)).toEqual([
      line('dimension', point(0, 0), point(0, toMm)),
      line('dimension', point(60, 0), point(60, toMm)),
    ])
    expect(uprightDimension(point(0, 0), point(0, 60), atMm, '60.0').slice(0, 2)).toEqual([
      line('dimension', point(0, 0), point(toMm, 0)),
      line('dimension', point(0, 60), point(toMm, 60)),
    ])
  })

  // four letters take 0.58 × 3 × 4 = 6.96 mm; to the left of 8 mm they end two arrows of 2.1 mm from it: −4.2 − 3.48
  it.each([
    [60, 30, -19],
    [8, -7.68, -21],
  ])('of %d mm has its words at %d, in the middle or where there is room', (toMm, xMm, yMm) => {
    const words = levelDimension(point(0, 0), point(toMm, 0), -20, '60.0').at(-1)
    expect(words).toMatchObject({ at: { xMm: expect.closeTo(xMm, 9), yMm: expect.closeTo(yMm, 9) } })
  })
})

describe('As SVG', () => {
  const text = svgText(plain)

  it('a drawing is in millimetres, one to a unit', () => {
    const [, width, box] = /width="([\d.]+)mm".*viewBox="\S+ \S+ ([\d.]+) /.exec(text) ?? []
    expect(width).toBe(box)
    expect(Number(width)).toBeCloseTo(plain.bounds.rightMm - plain.bounds.leftMm, 3)
  })

  it('y is turned over, words stand upright about their place, and an anticlockwise arc stays so', () => {
    expect(text).toContain('M 0 0 L 60 -20')
    expect(text).toMatch(/<text x="1" y="-2" .* transform="rotate\(-90 1 -2\)">/)
    expect(text).toContain('M 15 0 A 5 5 0 0 0 10 -5')
  })

  it('signs of the language itself are spelt out', () => {
    expect(text).toContain('<title>Slide &lt;3&gt;</title>')
    expect(text).toContain('>a &lt; b &amp; Ø −5 “°”</text>')
    expect(balanced(text)).toBe(true)
  })

  it('a figure that is not finite throws', () => {
    expect(() => svgText(drawing('', [line('outline', point(Number.NaN, 0), point(1, 1))], 0))).toThrow(
      RangeError,
    )
  })
})

describe('As DXF', () => {
  const lines = dxfText(plain).trimEnd().split('\n')
  const groups = lines.flatMap((code, index) =>
    index % 2 === 0 ? [[Number(code), lines[index + 1]] as const] : [],
  )

  it('a drawing is pairs of a code and a value from a section to the end of the file', () => {
    expect(lines.length % 2).toBe(0)
    expect(groups.every(([code]) => Number.isInteger(code))).toBe(true)
    expect(groups[0]).toEqual([0, 'SECTION'])
    expect(groups.at(-1)).toEqual([0, 'EOF'])
    const count = (value: string) => groups.filter((group) => group[0] === 0 && group[1] === value).length
    expect(count('SECTION')).toBe(count('ENDSEC'))
    expect(count('TABLE')).toBe(count('ENDTAB'))
  })

  it('every shape is an entity on a layer that the file declares', () => {
    const start = groups.findIndex(([, value]) => value === 'ENTITIES')
    const entities = groups.slice(start)
    expect(entities.filter(([code]) => code === 0).map(([, value]) => value)).toEqual([
      'LINE',
      'ARC',
      'TEXT',
      'ENDSEC',
      'EOF',
    ])
    const declared = groups
      .slice(0, start)
      .filter(([code]) => code === 2)
      .map(([, value]) => value)
    for (const [code, value] of entities) if (code === 8) expect(declared).toContain(value)
  })

  it('coordinates are millimetres with y up', () => {
    const start = groups.findIndex(([, value]) => value === 'LINE')
    expect(groups.slice(start + 2, start + 8)).toEqual([
      [10, '0'],
      [20, '0'],
      [30, '0'],
      [11, '60'],
      [21, '20'],
      [31, '0'],
    ])
  })

  it('words are ASCII', () => {
    expect(groups).toContainEqual([1, 'a < b & %%c -5 ?%%d?'])
  })

  it('a figure that is not finite throws', () => {
    const bad = drawing('', [line('outline', point(Number.POSITIVE_INFINITY, 0), point(1, 1))], 0)
    expect(() => dxfText(bad)).toThrow(RangeError)
  })
})

/** Whether every element that is opened is closed, in order. */
function balanced(text: string): boolean {
  const open: string[] = []
  for (const [, close, name, self] of text.matchAll(/<(\/?)(\w+)[^>]*?(\/?)>/g)) {
    if (close === '/' && open.pop() !== name) return false
    if (close === '' && self === '') open.push(name!)
  }
  return open.length === 0
}
