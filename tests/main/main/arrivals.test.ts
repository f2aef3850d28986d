import { describe, expect, test } from 'vitest'
import { filesNamed, filesOfStart } from '../../../src-main/main/arrivals.ts'

describe('Files on the command line', () => {
  test('are full paths, from where the program was started', () => {
    expect(filesNamed(['/opt/ferrule', 'bass.ferrule', '/x/alto.ferrule'], false, '/shop')).toEqual([
      '/shop/bass.ferrule',
      '/x/alto.ferrule',
    ])
  })

  test('come after the program’s folder in a run from the sources, wherever options stand', () => {
    expect(filesNamed(['electron', '.', 'a'], true, '/shop')).toEqual(['/shop/a'])
    expect(filesNamed(['electron', '--inspect=0', '.', '--x', 'a'], true, '/shop')).toEqual(['/shop/a'])
    expect(filesNamed(['electron', '.'], true, '/shop')).toEqual([])
  })

  test('of a second start are believed only in their own shape', () => {
    expect(filesOfStart({ files: ['/shop/a'] })).toEqual(['/shop/a'])
    for (const odd of [
      null,
      undefined,
      'x',
      [],
      { files: 'x' },
      { files: [1] },
      { files: ['x'.repeat(5000)] },
    ]) {
      expect(filesOfStart(odd)).toEqual([])
    }
  })
})
