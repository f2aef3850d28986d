import { describe, expect, it } from 'vitest'
import { fitted, linesOf, narrowestChartPx } from '../../src-renderer/curves/categoryLabels.ts'

const notes = [
  { key: '48', label: 'C3', short: 'C3' },
  { key: '49', label: 'D♭3', short: 'D♭' },
  { key: '50', label: 'D3', short: 'D' },
]
const fingerings = ['0', '1-2', '1-2-3'].map((label) => ({ key: label, label }))

describe('labels of a chart', () => {
  it('are whole where there is room', () => {
    expect(fitted(notes, 400)).toEqual(['C3', 'D♭3', 'D3'])
    expect(fitted(fingerings, 400)).toEqual(['0', '1-2', '1-2-3'])
  })

  it('of notes are without their octave where there is less, but for each C', () => {
    expect(fitted(notes, narrowestChartPx(notes))).toEqual(['C3', 'D♭', 'D'])
  })

  it('of fingerings stand valve under valve where there is less', () => {
    const labels = fitted(fingerings, narrowestChartPx(fingerings))
    expect(labels).toEqual(['0', '1\n2', '1\n2\n3'])
    expect(linesOf(labels)).toBe(3)
  })

  it('ask for less room when they are short', () => {
    const whole = notes.map(({ key, label }) => ({ key, label }))
    expect(narrowestChartPx(notes)).toBeLessThan(narrowestChartPx(whole))
  })
})
