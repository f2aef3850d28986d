import { expect, test } from 'vitest'
import { wallFactors, wallShare } from '#shared/bore/wallLoss.ts'
import reference from '../../fixtures/wallShare.json' with { type: 'json' }

const out = new Float64Array(4)

test.each(reference.rows)(
  'the share held back by the wall is right to 1e-11 at rv = $rv',
  ({ rv, re, im }) => {
    wallShare(rv, out, 0)
    expect(Math.hypot(out[0]! - re, out[1]! - im) / Math.hypot(re, im)).toBeLessThan(1e-11)
  },
)

test('at rv = 0 the wall holds all of the air', () => {
  wallShare(0, out, 0)
  expect([...out.subarray(0, 2)]).toEqual([1, 0])
})

test('without losses the factors are one', () => {
  wallFactors('none', 7, 0.841, 0.4, out)
  expect([...out]).toEqual([1, 0, 1, 0])
})

test('the wide-tube series agrees with the exact form to a part in a thousand at rv = 30', () => {
  const exact = new Float64Array(4)
  wallFactors('exact', 30, 0.841, 0.4017, exact)
  wallFactors('wideTube', 30, 0.841, 0.4017, out)
  for (let i = 0; i < 4; i++) expect(Math.abs(out[i]! - exact[i]!)).toBeLessThan(1e-3)
})
