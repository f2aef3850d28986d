import { useRef } from 'react'

/**
 * A range that keeps still while the values stay in it and fill at least half of it, so that curves move and not the
 * axis. Another `key` begins anew.
 */
export function useHeldRange(key: string, wanted: readonly [number, number]): readonly [number, number] {
  const held = useRef({ key, range: wanted })
  const [low, high] = held.current.range
  const margin = 0.06 * (wanted[1] - wanted[0])
  const holds =
    held.current.key === key &&
    low <= wanted[0] + margin &&
    high >= wanted[1] - margin &&
    high - low <= 2 * (wanted[1] - wanted[0])
  if (!holds) held.current = { key, range: wanted }
  return held.current.range
}
