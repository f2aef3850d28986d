import { expect, it } from 'vitest'
import { cautions } from '#shared/bench/cautions.ts'

const text = cautions.map((caution) => caution.text.toLowerCase()).join(' ')

it.each([
  'dry-fit',
  'deburr',
  'solder',
  'flux',
  'pickle',
  'eyes',
  'hands',
  'lead',
  'cadmium',
  'burns',
  'water',
  'buffing',
  'rules',
  'trained',
  'ideal tube',
  'before you solder',
])('The cautions speak of: %s', (word) => expect(text).toContain(word))

it('The cautions have ids of their own and each ends its sentence', () => {
  expect(new Set(cautions.map(({ id }) => id)).size).toBe(cautions.length)
  expect(cautions.filter((caution) => !caution.text.endsWith('.'))).toEqual([])
})
