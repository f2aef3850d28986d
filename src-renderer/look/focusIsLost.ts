/** Whether nothing has the focus, as when what had it has gone. */
export function focusIsLost(): boolean {
  return document.activeElement === null || document.activeElement === document.body
}
