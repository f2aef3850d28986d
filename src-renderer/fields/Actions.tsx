import type { ReactNode } from 'react'
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

/** A button that drops a list of actions. */
export function Actions({ label, text, items }: ActionsProps): ReactNode {
  return (
    <MenuTrigger>
      <Button className="quiet" aria-label={label}>
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
              onAction={act}
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
