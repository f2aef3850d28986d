import { describe, expect, test } from 'vitest'
import type { Surroundings } from '../../../src-main/start/obstacles.ts'
import { obstacle } from '../../../src-main/start/obstacles.ts'

const good: Surroundings = {
  platform: 'linux',
  isRoot: false,
  hasDisplay: true,
  runtimeIsHere: true,
  nodeVersion: '20.19.0',
}

describe('What stands in the way of the desktop form', () => {
  test('nothing, where there is a screen and the runtime', () => {
    expect(obstacle(good)).toBeNull()
  })

  test('root on Linux, because the sandbox is never switched off', () => {
    expect(obstacle({ ...good, isRoot: true })).toContain('root')
    expect(obstacle({ ...good, isRoot: true, platform: 'darwin' })).toBeNull()
  })

  test('no screen on Linux; other systems do not tell it that way', () => {
    expect(obstacle({ ...good, hasDisplay: false })).toContain('no screen')
    expect(obstacle({ ...good, hasDisplay: false, platform: 'win32' })).toBeNull()
  })

  test('a Node that cannot fetch a missing runtime', () => {
    const missing = { ...good, runtimeIsHere: false }
    expect(obstacle({ ...missing, nodeVersion: '22.11.9' })).toContain('22.11.9')
    for (const nodeVersion of ['22.12.0', '24.0.0']) expect(obstacle({ ...missing, nodeVersion })).toBeNull()
  })
})
