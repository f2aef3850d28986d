import { memo, type ReactNode, Suspense, useEffect, useRef } from 'react'
import { arriving } from '../look/arriving.ts'
import type { DerivedDesign } from '../state/derived.ts'
import type { Selection } from '../state/viewStore.ts'
import { listenWords } from '../words/listen.ts'
import { useListen } from './listenStore.ts'

const panel = arriving(() =>
  import('./ListenPanel.tsx').then(({ ListenPanel: component }) => ({ default: component })),
)

interface ListenFoldProps {
  readonly derived: DerivedDesign
  readonly selection: Selection | null
}

/** Under the account: opens what lets it be heard. Nothing of sound is loaded before it is pointed at. */
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
        <panel.component {...props} />
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
        onPointerEnter={panel.load}
        onFocus={panel.load}
        onClick={() => useListen.setState({ open: true })}
      >
        {listenWords.title}…
      </button>
    </p>
  )
})
