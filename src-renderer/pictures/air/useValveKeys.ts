import { useEffect } from 'react'
import type { Valve } from '#shared/valves/valve.ts'
import { usePictures } from '../picturesStore.ts'

/** The keys 1 to 9 press the first nine valves. */
export const mostKeys = 9

/** Presses a valve that is up, and lets one up that is down. */
export function pressValve(pressed: readonly string[], id: string): void {
  usePictures.setState({
    pressed: pressed.includes(id) ? pressed.filter((each) => each !== id) : [...pressed, id],
  })
}

/** Number keys press valves by their place, a letter the valve of that name, and 0 lets all of them up. */
export function useValveKeys(valves: readonly Valve[], pressed: readonly string[]): void {
  useEffect(() => {
    const key = (event: KeyboardEvent): void => {
      if (event.repeat || event.defaultPrevented || isElsewhere(event)) return
      const id = valveOfKey(event.key, valves)
      if (event.key === '0') usePictures.setState({ pressed: [] })
      else if (id !== null) pressValve(pressed, id)
      else return
      event.preventDefault()
    }
    window.addEventListener('keydown', key)
    return () => window.removeEventListener('keydown', key)
  }, [valves, pressed])
}

function valveOfKey(key: string, valves: readonly Valve[]): string | null {
  if (/^[1-9]$/.test(key)) return valves[Number(key) - 1]?.id ?? null
  if (!/^[a-z]$/i.test(key)) return null
  return valves.find(({ id }) => id.toLowerCase() === key.toLowerCase())?.id ?? null
}

/** Whether the key belongs to a field, a list or a dialog. */
function isElsewhere(event: KeyboardEvent): boolean {
  if (event.ctrlKey || event.metaKey || event.altKey) return true
  const { target } = event
  return (
    target instanceof Element && target.closest('input, select, textarea, dialog, [role="menu"]') !== null
  )
}
