import { EventEmitter } from 'node:events'
import type { BrowserWindow } from 'electron'
import { describe, expect, test, vi } from 'vitest'
import { type ClosingActs, guardClosing } from '../../../src-main/main/closing.ts'

/** A guarded window, and what was done to it; `close` presses its close button and lets what follows come to rest. */
function guarded(dirty: boolean, keepChanges: ClosingActs['keepChanges'] = async () => 'cancel') {
  const did: string[] = []
  const window = Object.assign(new EventEmitter(), {
    isDestroyed: () => did.includes('destroyed'),
    destroy: () => did.push('destroyed'),
  })
  const asked = vi.fn(keepChanges)
  guardClosing(window as unknown as BrowserWindow, {
    isDirty: async () => dirty,
    keepChanges: asked,
    saveThenClose: () => did.push('saves'),
    tidy: async () => void did.push('tidied'),
  })
  const close = async () => {
    const event = { preventDefault: vi.fn() }
    window.emit('close', event)
    expect(event.preventDefault).toHaveBeenCalledOnce()
    await new Promise(setImmediate)
  }
  return { close, asked, did }
}

describe('Closing the window', () => {
  test('without work to lose asks nothing, and tidies before the window goes', async () => {
    const { close, asked, did } = guarded(false)
    await close()
    expect(asked).not.toHaveBeenCalled()
    expect(did).toEqual(['tidied', 'destroyed'])
  })

  test.each([
    ['save', ['saves']],
    ['discard', ['tidied', 'destroyed']],
    ['cancel', []],
  ] as const)('with work to lose does as it is told: %s', async (choice, expected) => {
    const { close, did } = guarded(true, async () => choice)
    await close()
    expect(did).toEqual(expected)
  })

  test('asks once however often it is tried, and again after the answer', async () => {
    const answers: ((choice: 'cancel') => void)[] = []
    const { close, asked, did } = guarded(true, () => new Promise((resolve) => answers.push(resolve)))
    await close()
    await close()
    expect(asked).toHaveBeenCalledTimes(1)
    answers[0]!('cancel')
    await new Promise(setImmediate)
    await close()
    expect(asked).toHaveBeenCalledTimes(2)
    expect(did).toEqual([])
  })
})
