import { useEffect } from 'react'
import { onMac } from '../bridge/keyCommands.ts'

/** Marks all of a field with its keys, and outside of one nothing: the whole window marked is of no use to anybody. */
export function useMarkAllInFields(): void {
  useEffect(() => {
    const key = (event: KeyboardEvent): void => {
      const isMain = onMac ? event.metaKey : event.ctrlKey
      if (isMain && event.key.toLowerCase() === 'a' && !isField(event.target)) event.preventDefault()
    }
    window.addEventListener('keydown', key)
    return () => window.removeEventListener('keydown', key)
  }, [])
}

function isField(target: EventTarget | null): boolean {
  return target instanceof HTMLInputElement || target instanceof HTMLTextAreaElement
}
