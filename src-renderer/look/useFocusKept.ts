import { useEffect } from 'react'
import { focusables, takesFocus } from './focusables.ts'
import { focusIsLost } from './focusIsLost.ts'

/** An element of the window with its place within its parent, which outlasts both it and its parent's other children. */
interface Place {
  readonly parent: Element
  readonly index: number
}

/** An element that has had the focus, and the dialog it stands in. */
interface Held {
  readonly element: HTMLElement
  readonly dialog: Element | null
  readonly places: readonly Place[]
}

/**
 * Keeps the focus near where it was when what had it is taken away, as with a row that is deleted: it goes to what
 * stands in its place now, or else beside it. What lies over the window
 * (dialogs, menus) returns the focus by itself; only when that has gone too is it brought back here.
 */
export function useFocusKept(): void {
  useEffect(() => {
    const root = document.getElementById('root')
    if (root === null) return
    let last: Held | null = null
    // What had the focus before the dialog that is open.
    let beneath: Held | null = null
    const remember = (): void => {
      const { activeElement } = document
      if (!(activeElement instanceof HTMLElement) || !root.contains(activeElement)) return
      const dialog = activeElement.closest('dialog')
      if (dialog !== null && last?.dialog === null) beneath = last
      last = { element: activeElement, dialog, places: placesUpTo(root, activeElement) }
    }
    const look = (): void => {
      if (!focusIsLost() || last === null || takesFocusStill(last.element)) return
      const held = last.dialog === null || last.dialog.isConnected ? last : (beneath ?? last)
      last = null
      const found = takesFocusStill(held.element) ? held.element : nearest(held.places)
      found?.focus({ preventScroll: true })
    }
    // A closing dialog or menu gives the focus back a frame later.
    const observer = new MutationObserver(() => {
      if (last === null || takesFocusStill(last.element)) return
      requestAnimationFrame(() => requestAnimationFrame(look))
    })
    // Who clicks beside everything gives the focus up; what is taken away loses it.
    const forget = ({ relatedTarget }: FocusEvent): void => {
      const left = last
      if (relatedTarget !== null || left === null) return
      requestAnimationFrame(() => {
        if (last === left && takesFocusStill(left.element) && focusIsLost()) last = null
      })
    }
    document.addEventListener('focusin', remember)
    document.addEventListener('focusout', forget)
    observer.observe(root, { childList: true, attributeFilter: ['disabled'], subtree: true })
    return () => {
      document.removeEventListener('focusin', remember)
      document.removeEventListener('focusout', forget)
      observer.disconnect()
    }
  }, [])
}

/** Whether an element is there and can have the focus: a button may be taken out of use under the hand. */
function takesFocusStill(element: HTMLElement): boolean {
  return element.isConnected && !element.matches(':disabled')
}

function placesUpTo(root: Element, element: Element): readonly Place[] {
  const places: Place[] = []
  let child = element
  while (child !== root && child.parentElement !== null) {
    const parent = child.parentElement
    places.push({ parent, index: [...parent.children].indexOf(child) })
    child = parent
  }
  return places
}

/**
 * What can have the focus nearest to the innermost place that is still there: what follows it first, then what is before
 * it; of a row like the one that went, its counterpart there.
 */
function nearest(places: readonly Place[]): HTMLElement | null {
  for (const [depth, { parent, index }] of places.entries()) {
    if (!parent.isConnected) continue
    const children = [...parent.children]
    const within = places.slice(0, depth).map((place) => place.index)
    for (const child of [...children.slice(index), ...children.slice(0, index).reverse()]) {
      const counterpart = within.reduceRight<Element | undefined>((at, i) => at?.children[i], child)
      const found = [counterpart, child, ...child.querySelectorAll(focusables)].find(takesFocus)
      if (found !== undefined) return found
    }
  }
  return null
}
