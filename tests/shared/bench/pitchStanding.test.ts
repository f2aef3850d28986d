import { describe, expect, it } from 'vitest'
import { alreadyThere } from '#shared/bench/pitchStanding.ts'

// F1 at 440 is 440·2^((29 − 69)/12) = 43.654 Hz; at 452.5 it is 44.894 Hz, 48.5 cents higher.
describe('An instrument at the pitch that its change leads to', () => {
  it('is in tune there and not where the change begins', () => {
    expect(alreadyThere(43.654, 452.5, 440)).toEqual({ midi: 29, cents: expect.closeTo(0, 1) })
    expect(alreadyThere(43.854, 452.5, 440)).toEqual({ midi: 29, cents: expect.closeTo(7.9, 1) })
  })

  // 14 cents above F1 at 440 it is 34.5 below the one at 452.5: nearer to the new pitch, and still in tune with neither.
  it('is within 12 cents of its note', () => {
    const sharpBy = (cents: number) => 440 * 2 ** (-40 / 12 + cents / 1200)
    expect(alreadyThere(sharpBy(11), 452.5, 440)).toEqual({ midi: 29, cents: expect.closeTo(11, 9) })
    expect(alreadyThere(sharpBy(14), 452.5, 440)).toBeNull()
  })

  it('is not one that stands where the change begins, between the two, or at both', () => {
    expect(alreadyThere(44.894, 452.5, 440)).toBeNull()
    expect(alreadyThere(44.27, 452.5, 440)).toBeNull()
    expect(alreadyThere(43.654, 466.164, 440)).toBeNull()
    expect(alreadyThere(43.654, 440, 440)).toBeNull()
  })
})
