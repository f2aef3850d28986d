import { describe, expect, test } from 'vitest'
import { readingTrouble, writingTrouble } from '../../../src-main/files/troubles.ts'

const written = (code: string): string => writingTrouble({ code }, '/shop/bass.ferrule')
const read = (code: string): string => readingTrouble({ code }, '/shop/bass.ferrule')

describe('The sentence for a file that cannot be written', () => {
  test('tells a full disk, a read-only place, a vanished folder and a refused name apart', () => {
    const codes = ['ENOSPC', 'EROFS', 'ENOENT', 'ENAMETOOLONG', 'ENOTDIR', 'EISDIR', 'EFBIG', 'EBUSY']
    expect(new Set(codes.map(written)).size).toBe(codes.length)
  })

  test('is the same for the codes that different systems give for one reason', () => {
    expect(written('EDQUOT')).toBe(written('ENOSPC'))
    expect(new Set(['EROFS', 'EACCES', 'EPERM'].map(written)).size).toBe(1)
    expect(new Set(['EINVAL', 'EILSEQ', 'ENAMETOOLONG'].map(written)).size).toBe(1)
  })

  test('is one sentence that names the file and never the whole path of it', () => {
    for (const code of ['ENOSPC', 'EROFS', 'EBUSY', 'EWHATEVER']) {
      expect(written(code)).toMatch(/^[^.]*“bass\.ferrule”[^.]*\.$/)
      expect(written(code)).not.toContain('/shop/bass')
    }
  })

  test('gives the code of a trouble that it does not know, and stays whole without one', () => {
    expect(written('EWHATEVER')).toBe('“bass.ferrule” could not be written (the system reports EWHATEVER).')
    expect(writingTrouble(new Error('odd'), '/shop/bass.ferrule')).toBe(
      '“bass.ferrule” could not be written.',
    )
    expect(writingTrouble(null, '/shop/bass.ferrule')).toBe('“bass.ferrule” could not be written.')
  })
})

describe('The sentence for a file that cannot be read', () => {
  test('tells a missing, a forbidden and an unreadable file apart', () => {
    expect(read('ENOENT')).toBe('“bass.ferrule” is no longer there.')
    expect(read('EACCES')).toBe('The system does not allow “bass.ferrule” to be read.')
    expect(read('EIO')).toBe('“bass.ferrule” could not be read (the system reports EIO).')
  })
})
