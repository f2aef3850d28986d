import { type ReactNode, useEffect, useId, useRef } from 'react'

interface DialogProps {
  readonly title: string
  readonly onClose: () => void
  readonly children: ReactNode
  readonly wide?: boolean
}

/**
 * A modal dialog: focus is kept inside, Escape closes it, and what opened it gets the focus back. It begins on what
 * bears `data-first`, else where the browser begins.
 */
export function Dialog({ title, onClose, children, wide }: DialogProps): ReactNode {
  const element = useRef<HTMLDialogElement>(null)
  const titleId = useId()
  useEffect(() => {
    const dialog = element.current
    const before = document.activeElement
    dialog?.showModal()
    // A list that scrolls would have the focus itself; its chosen row is wanted.
    dialog?.querySelector<HTMLElement>('[data-first]')?.focus()
    return () => {
      dialog?.close()
      if (before instanceof HTMLElement) before.focus()
    }
  }, [])
  return (
    <dialog
      ref={element}
      className={wide ? 'dialog wide' : 'dialog'}
      aria-labelledby={titleId}
      onCancel={(event) => {
        event.preventDefault()
        onClose()
      }}
    >
      <h2 id={titleId}>{title}</h2>
      {children}
    </dialog>
  )
}
