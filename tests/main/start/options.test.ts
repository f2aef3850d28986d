import { describe, expect, test } from 'vitest'
import { readOptions } from '../../../src-main/start/options.ts'

const plain = { browser: false, port: null, files: [] }

describe('The options of the start command', () => {
  test('none is the desktop form on whatever port', () => {
    expect(readOptions([])).toEqual({ kind: 'options', options: plain })
  })

  test('a port is given after the option or joined to it', () => {
    expect(readOptions(['--port', '8080'])).toEqual({ kind: 'options', options: { ...plain, port: 8080 } })
    expect(readOptions(['--port=8080', '--browser', 'a.ferrule'])).toEqual({
      kind: 'options',
      options: { browser: true, port: 8080, files: ['a.ferrule'] },
    })
  })

  test('what is no port, or no option, is refused with a sentence', () => {
    for (const port of [['0'], ['65536'], ['x'], ['-1'], ['8e3'], ['']]) {
      expect(readOptions(['--port', ...port])).toMatchObject({
        message: expect.stringContaining('1 to 65535'),
      })
    }
    expect(readOptions(['--port'])).toMatchObject({ kind: 'refused' })
    expect(readOptions(['--colour'])).toEqual({ kind: 'refused', message: '“--colour” is not an option.' })
  })
})
