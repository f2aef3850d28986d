import { type KeyboardEvent, type ReactNode, useEffect, useId, useRef, useState } from 'react'
import { Mark } from '../help/Mark.tsx'
import { awaitTaking } from '../state/waitingEntries.ts'
import { endBurst } from '../state/workbookStore.ts'
import { fieldWords } from '../words/fields.ts'
import type { MarkId } from '../words/marks.ts'

/** What a typed text means, or what is wrong with it. */
export type Typed =
  | { readonly ok: true; readonly value: number }
  | { readonly ok: false; readonly message: string }

export interface QuantityFieldProps {
  readonly label: string
  /** Hides the label from sight where its surroundings already say it. */
  readonly labelHidden?: boolean
  /** As it is shown when nothing is being typed; empty for no value. */
  readonly shown: string
  readonly unit?: ReactNode
  readonly help?: string
  /** A word explained behind the label. */
  readonly mark?: MarkId
  /** A derived figure is drawn lighter than one that was typed. */
  readonly derived?: boolean
  readonly read: (text: string) => Typed
  /** Takes the value; a message when it is refused. */
  readonly take: (value: number) => string | null
  /** Takes an emptied field; without it an empty field is a slip. */
  readonly clear?: () => void
  /** Steps by arrow key; with Shift ten times as far. */
  readonly step?: { readonly value: number; readonly by: number }
  readonly width?: number
}

/** A typed value is taken when typing pauses this long, ms. */
const pauseMs = 600

/** A text field for a quantity: keeps what was typed, takes it on Enter, on leaving or after a pause. */
export function QuantityField(props: QuantityFieldProps): ReactNode {
  const [draft, setDraft] = useState<string | null>(null)
  const [message, setMessage] = useState<string | null>(null)
  const timer = useRef<ReturnType<typeof setTimeout>>(undefined)
  const id = useId()
  useEffect(() => () => clearTimeout(timer.current), [])
  const present = useRef(props)
  present.current = props
  useEffect(() => {
    if (draft === null) return
    return awaitTaking(() => {
      clearTimeout(timer.current)
      setMessage(taken(present.current, draft))
    })
  }, [draft])

  const input = useRef<HTMLInputElement>(null)
  // A refused text is of no use once another value has come from elsewhere.
  // biome-ignore lint/correctness/useExhaustiveDependencies: another value is what this waits for
  useEffect(() => {
    if (document.activeElement === input.current) return
    setDraft(null)
    setMessage(null)
  }, [props.shown])

  const settle = (text: string, leaving: boolean): void => {
    clearTimeout(timer.current)
    const problem = taken(props, text)
    setMessage(problem)
    if (problem === null && leaving) setDraft(null)
  }
  const type = (text: string): void => {
    setDraft(text)
    clearTimeout(timer.current)
    timer.current = setTimeout(() => {
      // While typing goes on, what is not yet a value is no mistake.
      if (text.trim() !== '' && props.read(text).ok && taken(props, text) === null) setMessage(null)
    }, pauseMs)
  }
  const key = (event: KeyboardEvent): void => {
    if (event.key === 'Enter') settle(draft ?? props.shown, true)
    else if (event.key === 'Escape' && draft !== null) {
      event.stopPropagation()
      clearTimeout(timer.current)
      setDraft(null)
      setMessage(null)
    } else if (props.step && (event.key === 'ArrowUp' || event.key === 'ArrowDown')) {
      event.preventDefault()
      const by = props.step.by * (event.shiftKey ? 10 : 1) * (event.key === 'ArrowUp' ? 1 : -1)
      setDraft(null)
      setMessage(props.take(props.step.value + by))
    }
  }

  return (
    <div className={props.derived ? 'field derived' : 'field'}>
      <label htmlFor={id} className={props.labelHidden ? 'unseen' : undefined} title={props.help}>
        {props.label}
      </label>
      {props.mark === undefined ? null : <Mark id={props.mark} />}
      <span className="entry">
        <input
          id={id}
          ref={input}
          type="text"
          inputMode="text"
          autoComplete="off"
          spellCheck={false}
          value={draft ?? props.shown}
          style={{ width: `${props.width ?? 8}ch` }}
          // Nothing typed here waits, so undo means the workbook's.
          data-settled={draft === null ? '' : undefined}
          aria-invalid={message !== null}
          aria-describedby={message === null ? undefined : `${id}-message`}
          onChange={(event) => type(event.target.value)}
          onFocus={(event) => event.target.select()}
          onBlur={() => {
            if (draft !== null) settle(draft, true)
            endBurst()
          }}
          onKeyDown={key}
        />
        {props.unit === undefined ? null : <span className="unit">{props.unit}</span>}
      </span>
      {message === null ? null : (
        <p className="slip" id={`${id}-message`} role="alert">
          {message}
        </p>
      )}
    </div>
  )
}

/** Hands a typed text on; the message when it is no value or is refused. */
function taken({ read, take, clear, label, shown }: QuantityFieldProps, text: string): string | null {
  if (text === shown) return null
  if (text.trim() === '' && clear !== undefined) {
    clear()
    return null
  }
  const typed = read(text)
  if (!typed.ok) return fieldWords.named(label, typed.message)
  const refused = take(typed.value)
  return refused === null ? null : fieldWords.named(label, refused)
}
