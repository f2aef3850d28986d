import type { ReactNode } from 'react'

interface ScaleBarProps {
  /** How long the bar is on the screen, CSS px. */
  readonly lengthPx: number
  /** A class of its own beside that of every bar. */
  readonly place?: string
  /** What it says it is. */
  readonly children: ReactNode
}

/** A bar of a round length at a drawing's scale, with its length beside it. */
export function ScaleBar({ lengthPx, place, children }: ScaleBarProps): ReactNode {
  return (
    <p className={place === undefined ? 'scaleBar' : `scaleBar ${place}`}>
      <svg width={lengthPx + 2} height="8" aria-hidden="true">
        <path d={`M1 1V7M1 4H${lengthPx + 1}M${lengthPx + 1} 1V7`} />
      </svg>
      {children}
    </p>
  )
}
