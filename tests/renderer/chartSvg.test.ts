import { describe, expect, it } from 'vitest'
import type { ChartModel } from '../../src-renderer/curves/chartModel.ts'
import { roundValues } from '../../src-renderer/curves/chartScale.ts'
import { chartSvg } from '../../src-renderer/curves/chartSvg.ts'
import { inks } from '../fixtures/inks.ts'

const model: ChartModel = {
  title: 'Error & <more>',
  categories: ['0', '1', '2', '1-2'].map((label) => ({ key: label, label })),
  series: [
    { id: 'a', name: 'Plain', series: 0, values: [0, -10, null, 30], notes: ['0', '1', null, '1-2'] },
    { id: 'b', name: 'Other', series: 1, values: [0, 0, 0, 0], notes: ['0', '1', '2', '1-2'] },
  ],
  bandCents: 15,
}
const size = { widthPx: 720, plotPx: 300 }

/** Places of the markers of a series. */
function markers(svg: string, series: number): readonly (readonly [number, number])[] {
  const group = svg.split('<g class="markers"')[series + 1]!.split('</g>')[0]!
  return [...group.matchAll(/translate\((\S+) (\S+)\)/g)].map(([, x, y]) => [Number(x), Number(y)] as const)
}

/** Height of a place on the scale, by its figure. */
function level(svg: string, text: string): number {
  const [, y] =
    new RegExp(`<line [^>]*y1="([^"]+)"[^>]*/><text[^>]*>${text.replace('+', '\\+')}</text>`).exec(svg) ?? []
  return Number(y)
}

describe('The error chart as vectors', () => {
  const svg = chartSvg(model, inks, size)

  it('has a title, a key and an axis in words, spelt as the language wants it', () => {
    expect(svg).toContain('<title>Error &amp; &lt;more&gt;</title>')
    for (const words of ['>Plain</text>', '>Other</text>', 'cents, sharp above the line', '>1-2</text>'])
      expect(svg).toContain(words)
  })

  it('has every value where the scale says it is, to the hundredth of a pixel', () => {
    const [zero, ten] = [level(svg, '0'), level(svg, '+10')]
    const centsAt = (y: number) => (10 * (zero - y)) / (zero - ten)
    const places = markers(svg, 0)
    expect(places.map(([, y]) => Math.round(centsAt(y) * 10) / 10 + 0)).toEqual([0, -10, 30])
    expect(markers(svg, 1).map(([, y]) => y)).toEqual(
      [zero, zero, zero, zero].map((y) => expect.closeTo(y, 2)),
    )
  })

  it('breaks the line and has no marker where a design has no value', () => {
    expect(markers(svg, 0)).toHaveLength(3)
    const [, data = ''] = /<path class="line" d="([^"]+)"/.exec(svg) ?? []
    expect(data.match(/M/g)).toHaveLength(2)
  })

  it('draws the band as wide as it is', () => {
    const [, y, height] = /<rect class="band"[^>]* y="([^"]+)"[^>]* height="([^"]+)"/.exec(svg) ?? []
    const perCent = (level(svg, '0') - level(svg, '+10')) / 10
    expect(Number(height) / perCent).toBeCloseTo(30, 2)
    expect(level(svg, '0') - Number(y)).toBeCloseTo(15 * perCent, 1)
  })

  it('draws doubt behind, from the lowest to the highest', () => {
    const doubt = { series: 0, lowest: [-5, -15, null, 25], highest: [5, -5, null, 35] }
    const drawn = chartSvg({ ...model, doubt }, inks, size)
    expect(drawn).toContain('fill-opacity="0.16"')
    expect(drawn.indexOf('fill-opacity="0.16"')).toBeLessThan(drawn.indexOf('class="line"'))
  })

  it('of no categories and of no designs is still a picture without a figure that is none', () => {
    for (const empty of [
      { ...model, categories: [], series: [] },
      { ...model, series: [] },
    ]) {
      const drawn = chartSvg(empty, inks, size)
      expect(drawn).not.toMatch(/NaN|Infinity|undefined/)
      expect(drawn).toContain('</svg>')
    }
  })

  it('becomes as wide as its labels need', () => {
    const many = Array.from({ length: 256 }, (_, i) => ({ key: String(i), label: `${i}-11-12` }))
    const values = many.map(() => 1)
    const series = [{ ...model.series[0]!, values, notes: many.map(() => null) }]
    const [, width] =
      / width="([\d.]+)"/.exec(chartSvg({ ...model, categories: many, series }, inks, size)) ?? []
    expect(Number(width)).toBeGreaterThan(256 * 15)
  })
})

describe('Round values along a scale', () => {
  it('are multiples of 1, 2 or 5 with enough room between them, within the range', () => {
    expect(roundValues([-20, 30], 100, 30)).toEqual([-20, 0, 20])
    expect(roundValues([-1, 1], 400, 34)).toEqual([-1, -0.8, -0.6, -0.4, -0.2, 0, 0.2, 0.4, 0.6, 0.8, 1])
    for (const value of roundValues([-183.2, 21.7], 300, 34)) expect(value % 50).toBe(value < 0 ? -0 : 0)
  })
})
