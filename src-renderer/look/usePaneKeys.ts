import { useEffect } from 'react'
import { dialogIsOpen } from './dialogIsOpen.ts'
import { focusables, takesFocus } from './focusables.ts'

/** The panes of the window, in the order that F6 goes through them. */
const panes = '.strip, .left, .middle, .right'

/** What a pane is entered at first: what is chosen in it, else its first control, whose mark may stand before it. */
const chosen = '.card.on .cardName, [role=tab][aria-selected=true]'
const mark = '.explainMark'

/** F6 goes to the next pane and Shift+F6 to the one before, each time to what had the focus there last. */
export function usePaneKeys(): void {
  useEffect(() => {
    const last = new WeakMap<Element, Element>()
    const remember = ({ target }: FocusEvent): void => {
      const pane = paneOf(target)
      if (pane !== null) last.set(pane, target as Element)
    }
    const key = (event: KeyboardEvent): void => {
      if (event.key !== 'F6' || event.ctrlKey || event.altKey || event.metaKey) return
      if (dialogIsOpen()) return
      event.preventDefault()
      goOn(event.shiftKey ? -1 : 1, last)
    }
    document.addEventListener('focusin', remember)
    window.addEventListener('keydown', key)
    return () => {
      document.removeEventListener('focusin', remember)
      window.removeEventListener('keydown', key)
    }
  }, [])
}

function paneOf(target: EventTarget | null): Element | null {
  return target instanceof Element ? target.closest(panes) : null
}

/** From no pane, the first or the last is the next one. */
function goOn(by: 1 | -1, last: WeakMap<Element, Element>): void {
  const shown = [...document.querySelectorAll(panes)].filter((pane) => pane.checkVisibility())
  const here = paneOf(document.activeElement)
  const at = here === null ? -1 : shown.indexOf(here)
  const next = at < 0 && by < 0 ? shown.length - 1 : (at + by + shown.length) % shown.length
  const pane = shown[next]
  if (pane === undefined) return
  const controls = [...pane.querySelectorAll(focusables)].filter((element) => !element.matches(mark))
  const ways = [last.get(pane) ?? null, pane.querySelector(chosen), ...controls]
  ways
    .filter((element) => pane.contains(element))
    .find(takesFocus)
    ?.focus()
}
