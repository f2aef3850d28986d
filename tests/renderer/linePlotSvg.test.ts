import { describe, expect, it } from 'vitest'
import { linePlotSvg } from '../../src-renderer/bore/pictures/linePlotSvg.ts'
import type { PlotModel } from '../../src-renderer/bore/pictures/plotModel.ts'
import { seriesLook } from '../../src-renderer/look/seriesLook.ts'
import { inks } from '../fixtures/inks.ts'

const hz = Float64Array.from([100, 200, 300, 400, 500])
const model: PlotModel = {
  hz,
  lines: [
    { key: '0', series: 0, values: Float64Array.from([0, 12, 3.5, 40, 7]) },
    { key: '1-2', series: 1, values: Float64Array.from([10, 10, 20, 20, 0]) },
    { key: '1-3', series: 5, values: Float64Array.from([1, 2, 3, 4, 5]) },
  ],
  marks: [
    { line: '0', series: 0, mode: 1, hz: 200, value: 12 },
    { line: '0', series: 0, mode: 2, hz: 412.5, value: 41 },
    { line: '0', series: 0, mode: 3, hz: 501, value: 20 },
    { line: '1-2', series: 1, mode: 1, hz: 250, value: null },
    { line: '1-3', series: 5, mode: 1, hz: 250, value: null },
  ],
  range: [0, 45],
  axisName: '|Z| & more',
}
const size = { title: 'Impedance of <one>', widthPx: 720, plotPx: 300 }

type Place = readonly [number, number]

/** Places of a line's points, in the order of the lines. */
function points(svg: string, line: number): readonly Place[] {
  const [, data = ''] = [...svg.matchAll(/<path class="line" d="([^"]+)"/g)][line] ?? []
  return [...data.matchAll(/[ML](\S+?) ([^ML]+)/g)].map(([, x, y]) => [Number(x), Number(y)] as const)
}

/** Places of a line's marks, and the numbers that they carry. */
function marks(svg: string, line: number): { places: readonly Place[]; numbers: readonly string[] } {
  const group = svg.split('<g class="marks"')[line + 1]!.split('</g>')[0]!
  return {
    places: [...group.matchAll(/translate\((\S+) (\S+)\)/g)].map(
      ([, x, y]) => [Number(x), Number(y)] as const,
    ),
    numbers: [...group.matchAll(/>(\d+)<\/text>/g)].map(([, number]) => number!),
  }
}

/** Figures of a scale with their places. */
function scale(svg: string, kind: 'level' | 'frequency'): readonly Place[] {
  const place = kind === 'level' ? 'y1' : 'x1'
  const pattern = new RegExp(
    `<line class="${kind}"[^>]* ${place}="([^"]+)"[^>]*/><text[^>]*>([^<]+)</text>`,
    'g',
  )
  return [...svg.matchAll(pattern)].map(
    ([, px, text]) => [Number(text!.replace('−', '-')), Number(px)] as const,
  )
}

/** The value at a place, by two figures of a scale. */
function read(figures: readonly Place[], px: number): number {
  const [low, high] = [figures[0]!, figures.at(-1)!]
  return low[0] + ((px - low[1]) / (high[1] - low[1])) * (high[0] - low[0])
}

describe('A plot over frequency as vectors', () => {
  const svg = linePlotSvg(model, inks, size)
  const [levels, frequencies] = [scale(svg, 'level'), scale(svg, 'frequency')]

  it('has a title, a key of the fingerings and both units, spelt as the language wants it', () => {
    expect(svg).toContain('<title>Impedance of &lt;one&gt;</title>')
    for (const words of ['>|Z| &amp; more</text>', '>Hz</text>', '>0</text>', '>1-2</text>', '>1-3</text>'])
      expect(svg).toContain(words)
  })

  it('has round figures along both scales', () => {
    expect(levels.map(([value]) => value)).toEqual([0, 10, 20, 30, 40])
    expect(frequencies.map(([value]) => value)).toEqual([0, 50, 100, 150, 200, 250, 300, 350, 400, 450, 500])
    const phase = linePlotSvg({ ...model, range: [-100, 100], ticks: [-90, -45, 0, 45, 90] }, inks, size)
    expect(scale(phase, 'level').map(([value]) => value)).toEqual([-90, -45, 0, 45, 90])
  })

  it('has every point of every line where the scales say it is', () => {
    for (const [i, { values }] of model.lines.entries()) {
      const drawn = points(svg, i)
      expect(drawn).toHaveLength(hz.length)
      for (const [place, [x, y]] of drawn.entries()) {
        expect(read(frequencies, x)).toBeCloseTo(hz[place]!, 1)
        expect(read(levels, y)).toBeCloseTo(values[place]!, 2)
      }
    }
  })

  it('marks what is within the plot, on the line where the mark has no value, and numbers the first line’s', () => {
    const first = marks(svg, 0)
    expect(first.numbers).toEqual(['1', '2'])
    expect(first.places.map(([x]) => read(frequencies, x))).toEqual([
      expect.closeTo(200, 1),
      expect.closeTo(412.5, 1),
    ])
    expect(first.places.map(([, y]) => read(levels, y))).toEqual([
      expect.closeTo(12, 2),
      expect.closeTo(41, 2),
    ])
    const second = marks(svg, 1)
    expect(second.numbers).toEqual([])
    expect(second.places.map(([, y]) => read(levels, y))).toEqual([expect.closeTo(15, 2)])
  })

  it('tells lines apart as the page does: colour, dash, and filled marks beyond the fifth', () => {
    for (const [i, { series }] of model.lines.entries()) {
      const [line = ''] = [...svg.matchAll(/<path class="line"[^>]*>/g)][i] ?? []
      expect(line).toContain(`stroke="${inks.ofSeries(series)}"`)
      expect(/stroke-dasharray="([^"]*)"/.exec(line)?.[1] ?? '').toBe(seriesLook(series).dash.join(' '))
    }
    const fills = [...svg.matchAll(/<g class="marks"[^>]* fill="([^"]+)"/g)].map(([, fill]) => fill)
    expect(fills).toEqual(['#ffffff', '#ffffff', inks.ofSeries(5)])
  })

  it('of no lines, and of lines that are nothing, is still a picture without a figure that is none', () => {
    const nothing = { ...model, marks: [], range: [0, 0] as const }
    const flat = [{ key: '0', series: 0, values: new Float64Array(5) }]
    for (const empty of [
      { ...nothing, lines: [], hz: new Float64Array() },
      { ...nothing, lines: flat },
    ]) {
      const drawn = linePlotSvg(empty, inks, size)
      expect(drawn).not.toMatch(/NaN|Infinity|undefined/)
      expect(drawn).toContain('</svg>')
    }
  })
})
