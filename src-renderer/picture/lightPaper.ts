/**
 * Reads something of the page as it would look in the light theme on white paper. Style sheets tell it by the root's
 * `data-paper`. Nothing is painted in between: the page has its own theme back before this returns.
 */
export function onLightPaper<Value>(read: () => Value): Value {
  const root = document.documentElement
  const theme = root.dataset.theme
  root.dataset.theme = 'light'
  root.dataset.paper = ''
  root.style.setProperty('--paper', '#ffffff')
  try {
    return read()
  } finally {
    root.style.removeProperty('--paper')
    delete root.dataset.paper
    if (theme === undefined) delete root.dataset.theme
    else root.dataset.theme = theme
  }
}
