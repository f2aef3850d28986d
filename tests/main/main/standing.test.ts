import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest'
import type { WindowState } from '#shared/bridge/bridge.ts'
import { standingOf } from '../../../src-main/main/standing.ts'

const clean: WindowState = { name: 'Bass in F', dirty: false, undo: null, redo: null, hasWorkbook: true }
const dirty: WindowState = { ...clean, dirty: true, undo: 'Change a length' }

beforeEach(() => void vi.useFakeTimers())
afterEach(() => void vi.useRealTimers())

describe('Whether the window has work to lose', () => {
  test('is asked anew, for the last that was done there may not be said yet', async () => {
    const standing = standingOf(() => setTimeout(() => standing.said(dirty), 50))
    standing.said(clean)
    const answer = standing.isDirty()
    await vi.advanceTimersByTimeAsync(50)
    expect(await answer).toBe(true)
    expect(standing.last).toBe(dirty)
  })

  test('is as it last said when it hangs', async () => {
    const question = vi.fn()
    const standing = standingOf(question)
    standing.said(clean)
    const answer = standing.isDirty()
    await vi.advanceTimersByTimeAsync(1000)
    expect(await answer).toBe(false)
    expect(question).toHaveBeenCalledOnce()
    expect(vi.getTimerCount()).toBe(0)
  })

  test('is no question where it is known, or where no page has said anything', async () => {
    const question = vi.fn()
    const standing = standingOf(question)
    expect(await standing.isDirty()).toBe(false)
    standing.said(dirty)
    expect(await standing.isDirty()).toBe(true)
    expect(question).not.toHaveBeenCalled()
  })
})
