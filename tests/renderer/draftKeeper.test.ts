import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest'
import { draftKeeper, draftLongestMs, draftPauseMs } from '../../src-renderer/keeping/draftKeeper.ts'

describe('unsaved work', () => {
  beforeEach(() => void vi.useFakeTimers())
  afterEach(() => void vi.useRealTimers())

  test('is kept once, a moment after the last of several changes', () => {
    const keep = vi.fn()
    const keeper = draftKeeper(keep)
    keeper.changed()
    vi.advanceTimersByTime(draftPauseMs - 1)
    keeper.changed()
    vi.advanceTimersByTime(draftPauseMs - 1)
    expect(keep).not.toHaveBeenCalled()
    vi.advanceTimersByTime(1)
    expect(keep).toHaveBeenCalledOnce()
    vi.advanceTimersByTime(60_000)
    expect(keep).toHaveBeenCalledOnce()
  })

  test('is kept every few seconds while changes never pause', () => {
    const startMs = Date.now()
    const keptAtMs: number[] = []
    const keeper = draftKeeper(() => keptAtMs.push(Date.now() - startMs))
    for (let at = 0; at < 3 * draftLongestMs; at += 100) {
      keeper.changed()
      vi.advanceTimersByTime(100)
    }
    expect(keptAtMs).toEqual([1, 2, 3].map((times) => times * draftLongestMs))
  })

  test('that waits is kept at once when it must be, and only when something waits', () => {
    const keep = vi.fn()
    const keeper = draftKeeper(keep)
    keeper.now()
    expect(keep).not.toHaveBeenCalled()
    keeper.changed()
    keeper.now()
    vi.advanceTimersByTime(60_000)
    expect(keep).toHaveBeenCalledOnce()
  })
})
