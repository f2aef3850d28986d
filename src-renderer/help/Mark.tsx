import { lazy, type ReactNode, Suspense } from 'react'
import { Button, Dialog, DialogTrigger, Popover } from 'react-aria-components'
import { type MarkId, markLabel } from '../words/marks.ts'

const Explanation = lazy(() =>
  import('./Explanation.tsx').then(({ Explanation: component }) => ({ default: component })),
)

/** A small mark beside a word: opens what the word means and the formulas behind it. */
export function Mark({ id }: { readonly id: MarkId }): ReactNode {
  return (
    <DialogTrigger>
      <Button className="explainMark" aria-label={markLabel(id)}>
        ?
      </Button>
      <Popover className="explanation" placement="bottom start" offset={4}>
        <Dialog className="explanationText" aria-label={markLabel(id)}>
          {({ close }) => (
            <Suspense fallback={null}>
              <Explanation id={id} onLeave={close} />
            </Suspense>
          )}
        </Dialog>
      </Popover>
    </DialogTrigger>
  )
}
