import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { folded } from '#shared/find/fold.ts'
import { type Match, matchOfWords, typedWords } from '#shared/find/match.ts'
import { prepared, ranked } from '#shared/find/ranked.ts'
import { searchedText } from '#shared/find/wordMatch.ts'

const matchOf = (typed: string, text: string): Match | null =>
  matchOfWords(typedWords(typed), searchedText(text))
const marked = (typed: string, text: string): string | null => {
  const match = matchOf(typed, text)
  return match === null ? null : match.places.map((place) => text[place]).join('')
}
const order = (typed: string, names: readonly string[]): readonly string[] =>
  ranked(typed, prepared(names.map((name) => ({ name }))), 99).map(({ thing }) => thing.name)

describe('folding', () => {
  it('keeps every place, whatever the text', () => {
    const anything = fc.array(fc.nat(0xffff), { maxLength: 20 }).map((codes) => String.fromCharCode(...codes))
    fc.assert(fc.property(anything, (text) => folded(text).length === text.length))
  })

  it('takes the signs of a keyboard for those of the trade', () => {
    expect(folded('E♭ F♯ −3 Façade É')).toBe('eb f# -3 facade e')
  })
})

describe('a match', () => {
  it('is everything when nothing is typed', () => {
    expect(matchOf('', 'Leg spacing')).toEqual({ cost: 0, places: [] })
    expect(matchOf('  ', '')).toEqual({ cost: 0, places: [] })
  })

  it('is nothing when a word is not there', () => {
    expect(matchOf('leg xyzzy', 'Leg spacing')).toBeNull()
    expect(matchOf('a', '')).toBeNull()
  })

  it('needs no signs that a keyboard lacks', () => {
    expect(marked('eb3', 'E♭3')).toBe('E♭3')
    expect(marked('alto in eb', 'Alto in E♭, three ways')).toBe('AltoinE♭')
  })

  it('takes typed words in any order', () => {
    expect(marked('spacing leg', 'Leg spacing')).toBe('Legspacing')
  })

  it('takes first letters, parts of words, a slip, and letters in order', () => {
    expect(marked('sas', 'Size a slide')).toBe('Sas')
    expect(marked('undament', 'Fundamental')).toBe('undament')
    expect(marked('tempramen', 'Temperament')).not.toBeNull()
    expect(marked('slied', 'Size a slide')).not.toBeNull()
    expect(marked('trasnpose', 'Transpose')).toBe('Transpose')
    expect(marked('cmpnst', 'Compensating')).toBe('Cmpnst')
  })

  it('does not guess at short words', () => {
    expect(matchOf('ft', 'first thing')).not.toBeNull()
    expect(matchOf('fg', 'first thing')).toBeNull()
    expect(matchOf('lop', 'loop')).not.toBeNull()
    expect(matchOf('lap', 'loop')).toBeNull()
  })

  it('has no more than two letters between for each that is typed', () => {
    expect(marked('abcd', `a${'x'.repeat(8)}bcd`)).toBe('abcd')
    expect(matchOf('abcd', `a${'x'.repeat(9)}bcd`)).toBeNull()
  })

  it('has the places of the text in order, once each', () => {
    const words = fc.stringMatching(/^[a-e ]{0,12}$/)
    fc.assert(
      fc.property(words, words, (typed, text) => {
        const places = matchOf(typed, text)?.places ?? []
        for (const [i, place] of places.entries()) {
          expect(place).toBeLessThan(text.length)
          if (i > 0) expect(place).toBeGreaterThan(places[i - 1]!)
        }
      }),
    )
  })

  it('finds whatever part of a text is typed', () => {
    const text = fc.stringMatching(/^[a-z]{1,12}( [a-z]{1,8})?$/)
    fc.assert(
      fc.property(text, fc.nat(20), fc.nat(20), (whole, from, length) => {
        expect(matchOf(whole.slice(from, from + length), whole)).not.toBeNull()
      }),
    )
  })
})

describe('what is found', () => {
  it('comes best first: whole words, starts, first letters, within, slips', () => {
    expect(order('bore', ['Boredom', 'Carbore', 'Bore', 'Full bore', 'borr'])).toEqual([
      'Bore',
      'Full bore',
      'Boredom',
      'Carbore',
      'borr',
    ])
  })

  it('keeps its order where it fits alike', () => {
    expect(order('', ['b', 'a', 'c'])).toEqual(['b', 'a', 'c'])
  })

  it('is no more than asked for', () => {
    expect(ranked('a', prepared([{ name: 'a' }, { name: 'ab' }, { name: 'abc' }]), 2)).toHaveLength(2)
  })

  it('counts a name before further words, and words spread over both', () => {
    const things = [
      { name: 'third', alsoCalled: 'loop of Plain' },
      { name: 'Loop', alsoCalled: 'a word of the trade' },
    ]
    expect(ranked('loop', prepared(things), 9).map(({ thing }) => thing.name)).toEqual(['Loop', 'third'])
    expect(ranked('plain third', prepared(things), 9)).toEqual([
      { thing: things[0], places: [0, 1, 2, 3, 4] },
    ])
  })

  it('lets a weight decide between what fits alike', () => {
    const things = [{ name: 'Air', weight: 1 }, { name: 'Air' }]
    expect(ranked('air', prepared(things), 9)[0]?.thing).toBe(things[1])
  })
})
