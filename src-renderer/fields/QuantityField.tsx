import { type KeyboardEvent, type ReactNode, useId, useLayoutEffect, useRef } from 'react'
import { Mark } from '../help/Mark.tsx'
import { endBurst } from '../state/workbookStore.ts'
import type { MarkId } from '../words/marks.ts'
import { useDraft } from './useDraft.ts'

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

/** A text field for a quantity: keeps what was typed, takes it on Enter, on leaving or after a pause. */
export function QuantityField(props: QuantityFieldProps): ReactNode {
  const id = useId()
  const input = useRef<HTMLInputElement>(null)
  const { draft, message, type, settle, forget, step } = useDraft(props, input)
  // Once a value is taken, what is typed next is another one, as where the field is entered.
  const anew = useRef(false)
  useLayoutEffect(() => {
    if (draft === null && document.activeElement === input.current) input.current?.select()
  }, [draft])
  const key = (event: KeyboardEvent): void => {
    if (event.key === 'Enter') {
      settle(true)
      anew.current = true
    } else if (event.key === 'Escape' && draft !== null) {
      event.stopPropagation()
      forget()
    } else if (props.step && (event.key === 'ArrowUp' || event.key === 'ArrowDown')) {
      event.preventDefault()
      step(props.step.by * (event.shiftKey ? 10 : 1) * (event.key === 'ArrowUp' ? 1 : -1))
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
          onChange={(event) => {
            anew.current = false
            type(event.target.value)
          }}
          onMouseUp={(event) => {
            if (anew.current && draft === null) {
              event.preventDefault()
              event.currentTarget.select()
            }
            anew.current = false
          }}
          onFocus={(event) => event.target.select()}
          onBlur={() => {
            if (draft !== null) settle(true)
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
