import { type ReactNode, useId, useState } from 'react'
import { endBurst } from '../state/workbookStore.ts'

interface TextFieldProps {
  readonly label: string
  readonly labelHidden?: boolean
  readonly value: string
  readonly take: (value: string) => string | null
  readonly className?: string
  readonly placeholder?: string
  readonly autoFocus?: boolean
  readonly onDone?: () => void
}

/** A field for a name: taken as it is typed; a refused one stays with its message. */
export function TextField(props: TextFieldProps): ReactNode {
  const [draft, setDraft] = useState<string | null>(null)
  const [message, setMessage] = useState<string | null>(null)
  const id = useId()
  const done = (): void => {
    endBurst()
    if (message === null) setDraft(null)
    props.onDone?.()
  }
  return (
    <div className={`field text ${props.className ?? ''}`}>
      <label htmlFor={id} className={props.labelHidden ? 'unseen' : undefined}>
        {props.label}
      </label>
      <input
        id={id}
        type="text"
        autoComplete="off"
        spellCheck={false}
        // biome-ignore lint/a11y/noAutofocus: set only where the person has just asked to type a name
        autoFocus={props.autoFocus}
        value={draft ?? props.value}
        placeholder={props.placeholder}
        aria-invalid={message !== null}
        aria-describedby={message === null ? undefined : `${id}-message`}
        onChange={(event) => {
          setDraft(event.target.value)
          setMessage(props.take(event.target.value))
        }}
        onBlur={done}
        onKeyDown={(event) => {
          if (event.key === 'Enter' || event.key === 'Escape') event.currentTarget.blur()
        }}
      />
      {message === null ? null : (
        <p className="slip" id={`${id}-message`} role="alert">
          {message}
        </p>
      )}
    </div>
  )
}
