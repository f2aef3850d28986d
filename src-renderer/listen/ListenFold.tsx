import { lazy, memo, type ReactNode, Suspense, useEffect, useRef } from 'react'
import type { DerivedDesign } from '../state/derived.ts'
import type { Selection } from '../state/viewStore.ts'
import { listenWords } from '../words/listen.ts'
import { useListen } from './listenStore.ts'

const ListenPanel = lazy(() =>
  import('./ListenPanel.tsx').then(({ ListenPanel: component }) => ({ default: component })),
)

interface ListenFoldProps {
  readonly derived: DerivedDesign
  readonly selection: Selection | null
}

/** Under the account: opens what lets it be heard. Nothing of sound is loaded before. */
export const ListenFold = memo(function ListenFold(props: ListenFoldProps): ReactNode {
  const open = useListen((state) => state.open)
  const button = useRef<HTMLButtonElement>(null)
  const wasOpen = useRef(open)
  useEffect(() => {
    if (wasOpen.current && !open) button.current?.focus()
    wasOpen.current = open
  }, [open])
  if (open) {
    return (
      <Suspense fallback={null}>
        <ListenPanel {...props} />
      </Suspense>
    )
  }
  return (
    <p className="listenFold">
      <button
        ref={button}
        type="button"
        className="quiet"
        aria-expanded={false}
        onClick={() => useListen.setState({ open: true })}
      >
        {listenWords.title}…
      </button>
    </p>
  )
})
