import { startTransition, useEffect, useState } from 'react'

/** What waits for a frame of its own, the longest waiting first. */
const waiting = new Map<object, () => void>()

let frame = 0

/**
 * A value that may lag behind: what is under the hand is drawn at once, and what only tells of it follows, one
 * follower a frame, so that no frame of a drag has all the work. A follower always gets the newest value, and
 * keeps its place in the queue when a newer one comes.
 */
export function useFollowing<T>(value: T): T {
  const [shown, setShown] = useState(value)
  const [place] = useState(() => ({}))
  useEffect(() => {
    if (shown === value) waiting.delete(place)
    else queue(place, () => startTransition(() => setShown(() => value)))
  }, [shown, value, place])
  useEffect(() => () => void waiting.delete(place), [place])
  return shown
}

function queue(place: object, follow: () => void): void {
  waiting.set(place, follow)
  if (frame === 0) frame = requestAnimationFrame(takeTurn)
}

function takeTurn(): void {
  const [first] = waiting
  frame = 0
  if (first === undefined) return
  waiting.delete(first[0])
  first[1]()
  if (waiting.size > 0) frame = requestAnimationFrame(takeTurn)
}
