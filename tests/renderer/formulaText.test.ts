import { describe, expect, it } from 'vitest'
import { partsOf } from '../../src-renderer/help/FormulaText.tsx'
import { formulas } from '../../src-renderer/words/formulas.ts'

/** The text of a formula as it is set, what is raised or lowered in it too. */
function textOf(formula: string): string {
  return partsOf(formula)
    .map(({ place, text }) => (place === 'raised' ? textOf(text) : text))
    .join('')
}

describe('A formula', () => {
  it('is divided into what stands on the line, what is lowered and what is raised', () => {
    expect(partsOf('required = L·2^(k/12)')).toEqual([
      { place: 'line', text: 'required = L·2' },
      { place: 'raised', text: 'k/12' },
      { place: 'line', text: '' },
    ])
    expect(partsOf('f_old / f_new').map(({ text }) => text)).toEqual(['f', 'old', ' / f', 'new', ''])
    expect(partsOf('x_w²').map(({ text }) => text)).toEqual(['x', 'w', '²'])
    expect(partsOf('2^((a + b)/12) − 1')[1]).toEqual({ place: 'raised', text: '(a + b)/12' })
  })

  it.each(formulas.map(({ formula }) => formula))('shows no sign of how it is written: %s', (formula) => {
    expect(textOf(formula)).not.toMatch(/[_^]/)
  })
})
