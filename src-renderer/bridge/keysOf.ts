import type { MenuCommand } from '#shared/bridge/bridge.ts'
import { shortcuts, shortcutText } from '#shared/bridge/shortcuts.ts'
import { bridge } from './bridge.ts'
import { onMac } from './keyCommands.ts'

/** The keys of a command as the person presses them here; browsers keep those of a new window for themselves. */
export function keysOf(name: MenuCommand): string | undefined {
  const [first] = shortcuts[name] ?? []
  if (first === undefined || (bridge.form === 'browser' && name === 'new')) return undefined
  return shortcutText(first, onMac)
}
