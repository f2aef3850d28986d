import { expect, test } from 'vitest'
import { prepareBody } from '#shared/bore/body.ts'
import { cutBore } from '#shared/bore/cutBore.ts'
import { impedanceAt } from '#shared/bore/inputImpedance.ts'
import { plainImpedance } from '../../bench/bore.ts'
import { demand, highBore } from './bores.ts'

test('the textbook matrices in a library’s complex numbers give the same impedance', () => {
  const cut = cutBore(highBore, 3, 38)
  const body = demand(prepareBody(highBore, { temperatureC: 26.85 }))
  const hz = [60, 233, 466, 911, 1500]
  const { re, im } = demand(impedanceAt(body, [], hz))
  for (const [i, at] of hz.entries()) {
    const plain = plainImpedance([...cut.before, ...cut.after], cut.mouthRadiusM, at)
    expect(Math.hypot(plain.re - re[i]!, plain.im - im[i]!) / Math.hypot(re[i]!, im[i]!)).toBeLessThan(1e-3)
  }
})
