import { type KeyboardEvent, type ReactNode, useEffect, useId, useMemo, useRef, useState } from 'react'
import { prepared, ranked } from '#shared/find/ranked.ts'
import { Dialog } from '../dialogs/Dialog.tsx'
import { closeDialog } from '../dialogs/dialogStore.ts'
import { findWords as words } from '../words/find.ts'
import { FoundRow } from './FoundRow.tsx'
import type { Item } from './item.ts'
import { allItems } from './items.ts'
import './find.css'

/** As many as can be looked through; a longer list wants another word. */
const mostFound = 40

/** A step of the Page keys. */
const page = 8

/** Looks for anything by its name; arrow keys choose, Enter goes there. */
export function FindDialog(): ReactNode {
  // What is in the window is gathered before the dialog is in it.
  const [items] = useState(() => prepared(allItems()))
  const [typed, setTyped] = useState('')
  const [at, setAt] = useState(0)
  const found = useMemo(() => ranked(typed, items, mostFound), [typed, items])
  const go = useGoOnClose()
  const id = useId()
  const key = (event: KeyboardEvent): void => {
    if (event.key === 'Enter') {
      event.preventDefault()
      const chosen = found[at]
      if (chosen !== undefined) go(chosen.thing)
    }
    const next = steppedTo(event.key, at, found.length)
    if (next === null) return
    event.preventDefault()
    setAt(next)
  }
  const chosenId = found.length === 0 ? undefined : `${id}-${at}`
  return (
    <Dialog title={words.title} onClose={closeDialog}>
      <div className="find">
        <label htmlFor={id} className="soft">
          {words.label}
        </label>
        <input
          id={id}
          type="text"
          role="combobox"
          autoComplete="off"
          spellCheck={false}
          aria-expanded={found.length > 0}
          aria-controls={`${id}-list`}
          aria-activedescendant={chosenId}
          aria-autocomplete="list"
          placeholder={words.placeholder}
          value={typed}
          onChange={(event) => {
            setTyped(event.target.value)
            setAt(0)
          }}
          onKeyDown={key}
        />
        <FoundList id={`${id}-list`} rowId={id} found={found} at={at} go={go} point={setAt} />
        {found.length === 0 ? <p className="empty">{words.none(typed.trim())}</p> : null}
        <p className="soft findKeys">
          <span role="status">{words.count(found.length)}</span>
          <span>{words.keys}</span>
        </p>
      </div>
    </Dialog>
  )
}

/** Goes to what was chosen once the dialog is gone and has given the focus back. */
function useGoOnClose(): (item: Item) => void {
  const chosen = useRef<Item>(null)
  useEffect(() => () => queueMicrotask(() => chosen.current?.act()), [])
  return (item) => {
    chosen.current = item
    closeDialog()
  }
}

/** The place that a key leads to; `null` for other keys. Up from the first is the last, and down from it the first. */
function steppedTo(key: string, at: number, count: number): number | null {
  if (count === 0) return null
  const steps: Readonly<Record<string, number>> = {
    ArrowDown: (at + 1) % count,
    ArrowUp: (at + count - 1) % count,
    PageDown: Math.min(count - 1, at + page),
    PageUp: Math.max(0, at - page),
  }
  return steps[key] ?? null
}

interface FoundListProps {
  readonly id: string
  readonly rowId: string
  readonly found: ReturnType<typeof ranked<Item>>
  readonly at: number
  readonly go: (item: Item) => void
  readonly point: (at: number) => void
}

function FoundList({ id, rowId, found, at, go, point }: FoundListProps): ReactNode {
  const list = useRef<HTMLDivElement>(null)
  // biome-ignore lint/correctness/useExhaustiveDependencies: another list has another chosen row as well
  useEffect(() => {
    list.current?.querySelector('[aria-selected="true"]')?.scrollIntoView({ block: 'nearest' })
  }, [at, found])
  return (
    <div ref={list} id={id} className="foundList" role="listbox" aria-label={words.title} tabIndex={-1}>
      {found.map(({ thing, places }, i) => (
        <FoundRow
          key={i.toString()}
          id={`${rowId}-${i}`}
          item={thing}
          places={places}
          on={i === at}
          onGo={() => go(thing)}
          onPoint={() => point(i)}
        />
      ))}
    </div>
  )
}
