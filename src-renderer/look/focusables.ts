/** What may have the focus, as a selector. */
export const focusables =
  'button:not(:disabled), a[href], input:not(:disabled), select:not(:disabled), textarea:not(:disabled), [tabindex]:not([tabindex="-1"])'

export function takesFocus(element: Element | null | undefined): element is HTMLElement {
  return element instanceof HTMLElement && element.matches(focusables) && element.checkVisibility()
}
