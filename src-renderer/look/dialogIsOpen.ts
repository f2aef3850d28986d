/** Whether a dialog stands before the window: keys and commands of the window wait for it. */
export function dialogIsOpen(): boolean {
  return document.querySelector('dialog[open]') !== null
}
