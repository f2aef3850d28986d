import type { ReactNode } from 'react'

/** One of the facts at the head of a printed page: its name and what it is. */
export function Fact({ name, children }: { readonly name: string; readonly children: ReactNode }): ReactNode {
  return (
    <div>
      <dt>{name}</dt>
      <dd>{children}</dd>
    </div>
  )
}
