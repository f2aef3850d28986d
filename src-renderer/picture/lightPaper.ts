/**
 * Reads something of the page as it would look in the light theme on white paper. Nothing is painted in between:
 * the page has its own theme back before this returns.
 */
export function onLightPaper<Value>(read: () => Value): Value {
  const root = document.documentElement
  const theme = root.dataset.theme
  root.dataset.theme = 'light'
  root.style.setProperty('--paper', '#ffffff')
  try {
    return read()
  } finally {
    root.style.removeProperty('--paper')
    if (theme === undefined) delete root.dataset.theme
    else root.dataset.theme = theme
  }
}
