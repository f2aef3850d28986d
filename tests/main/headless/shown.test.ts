import { describe, expect, it } from 'vitest'
import { alignedTable } from '../../../src-main/headless/alignedTable.ts'
import { shown, shownLine } from '../../../src-main/headless/shown.ts'

describe('a name from a file, shown in a terminal', () => {
  it('is kept when it is plain, emoji joined of several included', () => {
    for (const name of ['Bass in F', 'E♭ crook', '👩\u200d🔧 🎺', 'e\u0301']) expect(shown(name)).toBe(name)
  })

  it.each(['צינור 3', 'أنبوب', '3 צ'])('is held together when it runs from right to left: %s', (name) => {
    expect(shown(name)).toBe(`\u2068${name}\u2069`)
  })

  it.each(['a\u202eb', 'a\u2069b', 'a\u001bb', 'a\nb', 'a\0b', 'a\ud800b', 'a\u2028b'])(
    'loses what would turn, break or move the line: %j',
    (name) => {
      expect(shown(name)).toBe('a\uFFFDb')
      expect(shownLine(name)).toBe('a\uFFFDb')
    },
  )

  it('lines up with the others, whichever way it runs', () => {
    const columns = [
      { heading: 'loop', align: 'left' },
      { heading: 'mm', align: 'right' },
    ] as const
    expect(
      alignedTable(columns, [
        ['ראשון', '1'],
        ['third', '22'],
      ]),
    ).toBe('loop   mm\n\u2068ראשון\u2069   1\nthird  22\n')
  })
})
