import { describe, expect, test } from 'vitest'
import { sourcesOf } from './imports/sources.ts'
import { undocumented } from './imports/undocumented.ts'

describe('the exports of src-shared', () => {
  test('each say what they are, directly above', () => {
    const sources = sourcesOf('src-shared')
    expect(sources.length).toBeGreaterThan(0)
    expect(sources.flatMap(undocumented)).toEqual([])
  })
})

describe('the look at docstrings', () => {
  const found = (...lines: readonly string[]) => undocumented({ path: 'a.ts', text: lines.join('\n') })

  test.each([
    'export function a(): void {',
    'export async function a(): Promise<void> {',
    'export const a = 1',
    'export interface a {',
    'export type a = 1',
  ])('misses no form of export: %s', (line) => {
    expect(found(line)).toEqual(['a.ts: a'])
    expect(found('/** One. */', line)).toEqual([])
    expect(found('/**', ' * One.', ' */', line)).toEqual([])
  })

  test('wants one for each export, directly above it', () => {
    expect(found('/** Two. */', 'export const a = 1', 'export const b = 2')).toEqual(['a.ts: b'])
    expect(found('/** One. */', '', 'export const a = 1')).toEqual(['a.ts: a'])
  })

  test('takes no plain comment for one', () => {
    expect(found('// One.', 'export const a = 1')).toEqual(['a.ts: a'])
    expect(found('/** One. */', 'const b = 1', '/* Two. */', 'export const a = 1')).toEqual(['a.ts: a'])
  })

  test('leaves alone what is not exported', () => {
    expect(found('const a = 1', 'type B = 1')).toEqual([])
  })
})
