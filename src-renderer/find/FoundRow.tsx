import type { ReactNode } from 'react'
import { findWords as words } from '../words/find.ts'
import type { Item } from './item.ts'

interface FoundRowProps {
  readonly id: string
  readonly item: Item
  readonly places: readonly number[]
  readonly on: boolean
  readonly onGo: () => void
  readonly onPoint: () => void
}

/** One thing that was found: what it is, its name with what was typed marked, and what else is said of it. */
export function FoundRow({ id, item, places, on, onGo, onPoint }: FoundRowProps): ReactNode {
  return (
    // biome-ignore lint/a11y/useFocusableInteractive: the field keeps the focus and names the chosen row
    // biome-ignore lint/a11y/useKeyWithClickEvents: the field hears the keys
    <div
      id={id}
      className="found"
      role="option"
      aria-selected={on}
      onClick={onGo}
      onPointerMove={on ? undefined : onPoint}
    >
      <span className="foundKind">{words.kinds[item.kind]}</span>
      <span className="foundName">
        <Marked text={item.name} places={places} />
      </span>
      {item.detail === undefined ? null : <span className="foundDetail">{item.detail}</span>}
      {item.keys === undefined ? null : <kbd>{item.keys}</kbd>}
    </div>
  )
}

/** A text with the letters that were typed set bold. */
function Marked({ text, places }: { readonly text: string; readonly places: readonly number[] }): ReactNode {
  return piecesOf(text, new Set(places)).map(({ from, part, meant }) =>
    meant ? <b key={from}>{part}</b> : part,
  )
}

/** A text cut where what was meant begins and ends. */
function piecesOf(text: string, places: ReadonlySet<number>) {
  const starts = Array.from({ length: text.length }, (_, at) => at).filter(
    (at) => at === 0 || places.has(at) !== places.has(at - 1),
  )
  return starts.map((from, i) => ({
    from,
    part: text.slice(from, starts[i + 1] ?? text.length),
    meant: places.has(from),
  }))
}
