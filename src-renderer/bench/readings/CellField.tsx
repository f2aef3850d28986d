import { type ReactNode, useId, useState } from 'react'
import { endBurst } from '../../state/workbookStore.ts'

interface CellFieldProps {
  readonly label: string
  readonly shown: string
  readonly width: number
  /** Takes what was typed; a message when it is refused. */
  readonly take: (text: string) => string | null
}

/** A cell of a table that is typed into: keeps what was typed, takes it on Enter or on leaving. */
export function CellField({ label, shown, width, take }: CellFieldProps): ReactNode {
  const [draft, setDraft] = useState<string | null>(null)
  const [message, setMessage] = useState<string | null>(null)
  const id = useId()
  const settle = (): void => {
    if (draft === null) return
    const refused = draft.trim() === shown ? null : take(draft)
    setMessage(refused)
    if (refused === null) setDraft(null)
    endBurst()
  }
  return (
    <span className="cellField">
      <input
        type="text"
        aria-label={label}
        autoComplete="off"
        spellCheck={false}
        value={draft ?? shown}
        style={{ width: `${width}ch` }}
        aria-invalid={message !== null}
        aria-describedby={message === null ? undefined : id}
        onChange={(event) => setDraft(event.target.value)}
        onFocus={(event) => event.target.select()}
        onBlur={settle}
        onKeyDown={(event) => {
          if (event.key === 'Enter') settle()
          if (event.key !== 'Escape' || draft === null) return
          event.stopPropagation()
          setDraft(null)
          setMessage(null)
        }}
      />
      {message === null ? null : (
        <span className="slip" id={id} role="alert">
          {message}
        </span>
      )}
    </span>
  )
}
