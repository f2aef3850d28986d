import { useEffect, useState } from 'react'

/** What waits for a frame of its own, the longest waiting first. */
const waiting = new Map<object, () => void>()

let frame = 0

/**
 * A value that may lag behind: what is under the hand is drawn at once, and what only tells of it follows, one
 * follower every other frame, so that no frame of a drag has all the work. A follower always gets the newest value,
 * and keeps its place in the queue when a newer one comes. It is rendered with what the same frame draws under the
 * hand: on its own it would have the page laid out twice.
 *
 * @param of what the value is of: another one is there at once
 */
export function useFollowing<T>(value: T, of: string): T {
  const [{ shown, shownOf }, setShown] = useState({ shown: value, shownOf: of })
  const [place] = useState(() => ({}))
  useEffect(() => {
    if (shown === value) waiting.delete(place)
    else queue(place, () => setShown({ shown: value, shownOf: of }))
  }, [shown, value, of, place])
  useEffect(() => () => void waiting.delete(place), [place])
  return shownOf === of ? shown : value
}

function queue(place: object, follow: () => void): void {
  waiting.set(place, follow)
  if (frame === 0) frame = requestAnimationFrame(takeTurn)
}

function takeTurn(): void {
  const [first] = waiting
  frame = requestAnimationFrame(afterRest)
  if (first === undefined) return
  waiting.delete(first[0])
  first[1]()
}

/** A frame without a follower: no figure need change faster than it can be read. */
function afterRest(): void {
  frame = waiting.size > 0 ? requestAnimationFrame(takeTurn) : 0
}
