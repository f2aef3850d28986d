import { memo, type ReactNode, Suspense, useContext } from 'react'
import { Button, DialogTrigger, OverlayTriggerStateContext, Popover } from 'react-aria-components'
import { arriving } from '../look/arriving.ts'
import { type MarkId, markLabel } from '../words/marks.ts'

const explanation = arriving(() =>
  import('./Explanation.tsx').then(({ Explanation: component }) => ({ default: component })),
)

/** A small mark beside a word: opens what the word means and the formulas behind it. */
export const Mark = memo(function Mark({ id }: { readonly id: MarkId }): ReactNode {
  return (
    <DialogTrigger>
      <Button
        className="explainMark"
        aria-label={markLabel(id)}
        onHoverStart={explanation.load}
        onFocus={explanation.load}
      >
        ?
      </Button>
      <Popover className="explanation" placement="bottom start" offset={4} aria-label={markLabel(id)}>
        <Explained id={id} />
      </Popover>
    </DialogTrigger>
  )
})

function Explained({ id }: { readonly id: MarkId }): ReactNode {
  const popover = useContext(OverlayTriggerStateContext)
  return (
    <Suspense fallback={null}>
      <explanation.component id={id} onLeave={() => popover?.close()} />
    </Suspense>
  )
}
