import { describe, expect, it } from 'vitest'
import { formulaEntry, formulas } from '../../src-renderer/words/formulas.ts'
import { glossary, glossaryWord } from '../../src-renderer/words/glossary.ts'
import { markNames } from '../../src-renderer/words/marks.ts'

describe('the words and formulas of the help', () => {
  it('are each there once', () => {
    for (const ids of [glossary, formulas].map((list) => list.map(({ id }) => id)))
      expect(new Set(ids).size).toBe(ids.length)
  })

  it('stand in the order of the alphabet', () => {
    const words = glossary.map(({ word }) => word)
    expect(words).toEqual(words.toSorted((a, b) => a.localeCompare(b, 'en')))
  })

  it('are there for every mark', () => {
    expect(Object.keys(markNames).length).toBeGreaterThan(0)
    for (const id of Object.keys(markNames)) expect(glossaryWord(id) ?? formulaEntry(id), id).toBeDefined()
  })

  it('has every mark in use, so that no explanation waits where nobody can ask for it', () => {
    const sources = Object.values(
      import.meta.glob<string>('../../src-renderer/**/*.tsx', {
        query: '?raw',
        import: 'default',
        eager: true,
      }),
    ).join('\n')
    const used = (id: string): boolean =>
      new RegExp(`mark(="|: ')${id}["']|<Mark id=("${id}"|{[^}]*'${id}'[^}]*})`).test(sources)
    for (const id of Object.keys(markNames)) expect(used(id), id).toBe(true)
  })

  it('refer only to formulas that there are, and every formula has a source', () => {
    for (const { formulas: own = [] } of glossary)
      for (const id of own) expect(formulaEntry(id), id).toBeDefined()
    for (const { source } of formulas) expect(source.length).toBeGreaterThan(3)
  })
})
