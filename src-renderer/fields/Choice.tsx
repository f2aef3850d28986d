import { type ReactNode, useId } from 'react'
import { Mark } from '../help/Mark.tsx'
import type { MarkId } from '../words/marks.ts'

interface ChoiceProps<Value extends string> {
  readonly label: string
  readonly labelHidden?: boolean
  /** A word explained behind the label. */
  readonly mark?: MarkId
  readonly value: Value
  readonly options: readonly { readonly value: Value; readonly text: string }[]
  readonly take: (value: Value) => void
}

/** One of a few values, in a list that drops down. */
export function Choice<Value extends string>(props: ChoiceProps<Value>): ReactNode {
  const id = useId()
  return (
    <div className="field">
      <label htmlFor={id} className={props.labelHidden ? 'unseen' : undefined}>
        {props.label}
      </label>
      {props.mark === undefined ? null : <Mark id={props.mark} />}
      <select id={id} value={props.value} onChange={(event) => props.take(event.target.value as Value)}>
        {props.options.map(({ value, text }) => (
          <option key={value} value={value}>
            {text}
          </option>
        ))}
      </select>
    </div>
  )
}

/** One of two or three values, all in sight. */
export function Segments<Value extends string>(props: ChoiceProps<Value>): ReactNode {
  return (
    <fieldset className="segments">
      <legend className={props.labelHidden ? 'unseen' : undefined}>{props.label}</legend>
      {props.mark === undefined ? null : <Mark id={props.mark} />}
      {props.options.map(({ value, text }) => (
        <button
          key={value}
          type="button"
          aria-pressed={value === props.value}
          onClick={() => props.take(value)}
        >
          {text}
        </button>
      ))}
    </fieldset>
  )
}
