import { type ReactNode, type RefObject, useRef } from 'react'
import { Button, Menu, MenuItem, MenuTrigger, Popover } from 'react-aria-components'

interface ActionsProps {
  readonly label: string
  /** What the button shows; three dots when absent. */
  readonly text?: string
  readonly items: readonly Action[]
}

export interface Action {
  readonly text: string
  readonly keys?: string | undefined
  readonly off?: boolean
  readonly act: () => void
}

/** A button that drops a list of actions. One begins when the list has closed and the button has the focus again. */
export function Actions({ label, text, items }: ActionsProps): ReactNode {
  const button = useRef<HTMLButtonElement>(null)
  return (
    <MenuTrigger>
      <Button className="quiet" aria-label={label} ref={button}>
        {text ?? '⋯'}
      </Button>
      <Popover className="menuFrame" placement="bottom start">
        <Menu className="menu" aria-label={label}>
          {items.map(({ text: itemText, keys, off, act }) => (
            <MenuItem
              key={itemText}
              className="menuItem"
              isDisabled={off ?? false}
              textValue={itemText}
              onAction={() => onceFocused(button, act)}
            >
              <span>{itemText}</span>
              {keys === undefined ? null : <kbd>{keys}</kbd>}
            </MenuItem>
          ))}
        </Menu>
      </Popover>
    </MenuTrigger>
  )
}

/** A list that is closing gives the focus back in a frame or two; no longer than this is waited for it, ms. */
const longestClosingMs = 400

/** Does something once the button has the focus, so that what it opens keeps the focus, and can give it back. */
function onceFocused(button: RefObject<HTMLButtonElement | null>, act: () => void): void {
  const begun = performance.now()
  const look = (): void => {
    const isBack = document.activeElement === button.current
    if (isBack || performance.now() - begun > longestClosingMs) act()
    else requestAnimationFrame(look)
  }
  requestAnimationFrame(look)
}
