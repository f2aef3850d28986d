import { type ReactNode, useState } from 'react'

interface FoldProps {
  readonly title: string
  /** Said beside the title while it is shut. */
  readonly hint: string
  readonly children: () => ReactNode
}

/** A part of the page that is opened when it is wanted; what is in it is not worked out before. */
export function Fold({ title, hint, children }: FoldProps): ReactNode {
  const [open, setOpen] = useState(false)
  return (
    <details className="fold" open={open} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>
        <h2>{title}</h2>
        {open ? null : <span className="soft">{hint}</span>}
      </summary>
      {open ? children() : null}
    </details>
  )
}
