import type { ReactNode } from 'react'
import { firstSteps, startWords } from '../words/start.ts'
import { useGuide } from './firstStepStore.ts'

/** What to look at and what to do, above the page that a first task led to. */
export function Guide(): ReactNode {
  const step = useGuide((state) => state.step)
  const known = firstSteps.find(({ id }) => id === step)
  if (known === undefined) return null
  return (
    <aside className="guide" aria-label={known.title}>
      <p>
        <b>{known.title}.</b> {known.guide}
      </p>
      <button type="button" onClick={() => useGuide.setState({ step: null })}>
        {startWords.guideDone}
      </button>
    </aside>
  )
}
