import { type RefObject, useEffect, useRef, useState } from 'react'
import { awaitTaking } from '../state/waitingEntries.ts'
import { fieldWords } from '../words/fields.ts'
import type { QuantityFieldProps } from './QuantityField.tsx'

/** What is typed into a field and not yet settled. */
export interface Draft {
  /** The text as typed; `null` when the field shows its value. */
  readonly draft: string | null
  /** What is wrong with it. */
  readonly message: string | null
  /** Takes note of a text; it is taken when typing pauses. */
  readonly type: (text: string) => void
  /** Takes the text now; on leaving, the field shows its value again. */
  readonly settle: (leaving: boolean) => void
  /** Goes back to the value. */
  readonly forget: () => void
  /** Adds to what was typed, or else to the value. */
  readonly step: (by: number) => void
}

type Taker = Pick<QuantityFieldProps, 'read' | 'take' | 'clear' | 'label' | 'shown' | 'step'>

/** A typed value is taken when typing pauses this long, ms. */
const pauseMs = 600

/** The draft of a quantity's field. One that was not tried yet counts as unsaved work, and is taken with it. */
export function useDraft(props: Taker, input: RefObject<HTMLInputElement | null>): Draft {
  const [draft, setDraft] = useState<string | null>(null)
  const [message, setMessage] = useState<string | null>(null)
  const [waits, setWaits] = useState(false)
  const timer = useRef<ReturnType<typeof setTimeout>>(undefined)
  useEffect(() => () => clearTimeout(timer.current), [])

  /** Ends the waiting for a pause: from here on nothing of it comes later. */
  const stopWaiting = (): void => {
    clearTimeout(timer.current)
    setWaits(false)
  }
  const settle = (leaving: boolean): void => {
    stopWaiting()
    const problem = taken(props, draft ?? props.shown)
    setMessage(problem)
    if (problem === null && leaving) setDraft(null)
  }
  const present = useRef(settle)
  present.current = settle
  useEffect(() => (waits ? awaitTaking(() => present.current(false)) : undefined), [waits])

  // A refused text is of no use once another value has come from elsewhere.
  // biome-ignore lint/correctness/useExhaustiveDependencies: another value is what this waits for
  useEffect(() => {
    if (document.activeElement === input.current) return
    setDraft(null)
    setMessage(null)
    setWaits(false)
  }, [props.shown])

  return {
    draft,
    message,
    settle,
    type: (text) => {
      setDraft(text)
      setWaits(true)
      clearTimeout(timer.current)
      timer.current = setTimeout(() => {
        // While typing goes on, what is not yet a value is no mistake.
        if (text.trim() === '' || !props.read(text).ok || taken(props, text) !== null) return
        setMessage(null)
        setWaits(false)
      }, pauseMs)
    },
    forget: () => {
      stopWaiting()
      setDraft(null)
      setMessage(null)
    },
    step: (by) => {
      stopWaiting()
      const typed = draft === null ? null : props.read(draft)
      const from = typed?.ok ? typed.value : (props.step?.value ?? 0)
      setDraft(null)
      setMessage(props.take(withoutRounding(from + by)))
    },
  }
}

/** A sum without the error of adding: what a person steps to is what goes into the file. */
function withoutRounding(value: number): number {
  return Number(value.toPrecision(12))
}

/** Hands a typed text on; the message when it is no value or is refused. */
function taken({ read, take, clear, label, shown }: Taker, text: string): string | null {
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
