import type { MenuCommand } from '#shared/bridge/bridge.ts'
import type { Shortcut } from '#shared/bridge/shortcuts.ts'
import { shortcuts } from '#shared/bridge/shortcuts.ts'

/** Whether Command takes the place of Control. */
export const onMac = /mac/i.test(navigator.userAgent)

type Listener = (command: MenuCommand) => void

/** In the browser there is no menu of ours, so the keys of its commands are heard on the page. */
export function keyCommands(): (listener: Listener) => () => void {
  const listeners = new Set<Listener>()
  window.addEventListener('keydown', (event) => {
    const command = commandOf(event)
    if (command === null || event.defaultPrevented || listeners.size === 0) return
    if (isTyping(event.target) && (command === 'undo' || command === 'redo')) return
    event.preventDefault()
    for (const listener of listeners) listener(command)
  })
  return (listener) => {
    listeners.add(listener)
    return () => void listeners.delete(listener)
  }
}

function commandOf(event: KeyboardEvent): MenuCommand | null {
  const commands = Object.entries(shortcuts) as [MenuCommand, readonly Shortcut[]][]
  return commands.find(([, keys]) => keys.some((shortcut) => isPressed(shortcut, event)))?.[0] ?? null
}

function isPressed({ key, main, shift }: Shortcut, event: KeyboardEvent): boolean {
  const mainDown = onMac ? event.metaKey : event.ctrlKey
  const otherDown = event.altKey || (onMac ? event.ctrlKey : event.metaKey)
  return event.key.toLowerCase() === key && mainDown === main && event.shiftKey === shift && !otherDown
}

/** A text field has an undo of its own while something typed in it waits. */
function isTyping(target: EventTarget | null): boolean {
  if (target instanceof HTMLTextAreaElement) return true
  if (target instanceof HTMLElement && target.dataset.settled !== undefined) return false
  if (target instanceof HTMLInputElement)
    return !['checkbox', 'radio', 'range', 'button'].includes(target.type)
  return target instanceof HTMLElement && target.isContentEditable
}
