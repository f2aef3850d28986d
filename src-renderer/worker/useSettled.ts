import { useEffect, useState } from 'react'

/** A value once it has stood still for a while: for work that may wait until a hand pauses. `null` before. */
export function useSettled<Value>(value: Value, pauseMs: number): Value | null {
  const [settled, setSettled] = useState<{ readonly value: Value } | null>(null)
  useEffect(() => {
    const timer = setTimeout(() => setSettled({ value }), pauseMs)
    return () => clearTimeout(timer)
  }, [value, pauseMs])
  return settled?.value === value ? value : null
}
