import { useLayoutEffect, useSyncExternalStore } from 'react'
import { useSettings } from '../state/settings.ts'

const dark = window.matchMedia('(prefers-color-scheme: dark)')

function watchSystem(changed: () => void): () => void {
  dark.addEventListener('change', changed)
  return () => dark.removeEventListener('change', changed)
}

/** The theme in force: the one chosen, else the system's. */
export function useTheme(): 'light' | 'dark' {
  const chosen = useSettings((settings) => settings.theme)
  const systemIsDark = useSyncExternalStore(watchSystem, () => dark.matches)
  return chosen === 'system' ? (systemIsDark ? 'dark' : 'light') : chosen
}

/** Puts the theme in force on the page. */
export function useThemeOnPage(): void {
  const theme = useTheme()
  useLayoutEffect(() => {
    document.documentElement.dataset.theme = theme
  }, [theme])
}
