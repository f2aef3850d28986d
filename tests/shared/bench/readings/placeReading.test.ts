import { describe, expect, it } from 'vitest'
import { placeReading } from '#shared/bench/readings/placeReading.ts'
import { open, valves } from './bass.ts'

const context = { valves, fingerings: 'all', open, tunerA4Hz: 440, transposition: 0 } as const
const note = (pressed: string[], name: string, midi: number) =>
  ({
    pressed,
    at: { kind: 'note', note: name, midi },
    cents: 7,
  }) as const

describe('A typed reading', () => {
  it('on a harmonic gets its target', () => {
    const typed = { pressed: ['1', '2'], at: { kind: 'harmonic', harmonic: 4 }, cents: 7 } as const
    // F3 down three semitones is D3, 146.83 Hz
    expect(placeReading(typed, context, 'r')).toMatchObject({
      harmonic: 4,
      targetHz: expect.closeTo(146.832, 3),
    })
  })

  it('goes by the drop that its fingering is given', () => {
    const fingerings = [{ pressed: [] }, { pressed: ['1', '2'], semitones: 4 }]
    const typed = { pressed: ['1', '2'], at: { kind: 'harmonic', harmonic: 4 }, cents: 7 } as const
    // F3 down four semitones is C♯3, 138.59 Hz
    expect(placeReading(typed, { ...context, fingerings }, 'r')).toMatchObject({
      targetHz: expect.closeTo(138.591, 3),
    })
    expect(placeReading(note(['1', '2'], 'C#3', 49), { ...context, fingerings }, 'r')).toMatchObject({
      harmonic: 4,
    })
  })

  it('on a note gets its harmonic', () => {
    expect(placeReading(note(['3'], 'D3', 50), context, 'r')).toMatchObject({ harmonic: 4, cents: 7 })
    expect(placeReading(note([], 'C3', 48), context, 'r')).toMatchObject({ harmonic: 3 })
  })

  it('on a written note goes by the transposition', () => {
    const written = placeReading(note([], 'C4', 60), { ...context, transposition: -7 }, 'r')
    expect(written).toMatchObject({ harmonic: 4, targetHz: expect.closeTo(174.614, 3) })
  })

  it('on a note that its fingering has not is found out', () => {
    expect(placeReading(note([], 'B2', 47), context, 'r')).toMatchObject({ field: 'r', found: 'B2' })
  })
})
