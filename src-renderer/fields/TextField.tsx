import { type ReactNode, useId, useRef, useState } from 'react'
import { dropStepsAfter, endBurst, stepsDone } from '../state/workbookStore.ts'
import { fieldWords } from '../words/fields.ts'

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

/** A field for a name: taken as it is typed; a refused one stays with its message, Escape brings back what was there. */
export function TextField(props: TextFieldProps): ReactNode {
  const [draft, setDraft] = useState<string | null>(null)
  const [message, setMessage] = useState<string | null>(null)
  const before = useRef({ value: props.value, steps: 0 })
  const id = useId()
  const done = (): void => {
    endBurst()
    // A field that closes takes back what ended in a refusal: its message would go with it.
    if (message !== null && props.onDone !== undefined) takeBack()
    if (message === null) setDraft(null)
    before.current = { value: props.value, steps: stepsDone() }
    props.onDone?.()
  }
  const takeBack = (): void => {
    setDraft(null)
    setMessage(null)
    bringBack()
  }
  /** As it was before the typing: a name that ended in a refusal is not to leave its first letters behind. */
  const bringBack = (): void => {
    const { value, steps } = before.current
    // What was just taken may not be drawn yet: the steps know of it before the value does.
    const isTaken = props.value !== value || stepsDone() !== steps
    if (isTaken && !dropStepsAfter(steps)) props.take(value)
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
          const refused = props.take(event.target.value)
          setMessage(refused === null ? null : fieldWords.named(props.label, refused))
          if (refused !== null) bringBack()
        }}
        onFocus={(event) => {
          before.current = { value: props.value, steps: stepsDone() }
          event.target.select()
        }}
        onBlur={done}
        onKeyDown={(event) => {
          if (event.key === 'Escape' && draft !== null) {
            // What Escape takes back here is no question to a dialog around it.
            event.stopPropagation()
            takeBack()
          }
          if (event.key === 'Enter' && (message === null || props.onDone === undefined)) done()
          if (event.key === 'Escape') props.onDone?.()
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
