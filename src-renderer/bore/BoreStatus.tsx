import { type ReactNode, useEffect, useState } from 'react'
import { boreWords } from '../words/bore.ts'
import { giveUpBoreWork, useBoreProgress } from '../worker/boreDesk.ts'
import type { BoreOnShow } from './useBore.ts'

/** Work that takes longer than this is shown and can be given up, ms. */
const noticedMs = 200

/** Whether something has gone on for longer than a person waits without wondering. */
export function useNoticed(waiting: boolean): boolean {
  const [noticed, setNoticed] = useState(false)
  useEffect(() => {
    if (!waiting) return
    const timer = setTimeout(() => setNoticed(true), noticedMs)
    return () => {
      clearTimeout(timer)
      setNoticed(false)
    }
  }, [waiting])
  return noticed && waiting
}

interface BoreStatusProps {
  readonly bore: BoreOnShow
  readonly again: () => void
}

/** What there is to say about the reckoning itself: that it goes on, was given up, or cannot be done. */
export function BoreStatus({ bore, again }: BoreStatusProps): ReactNode {
  const { refusal, failure, waiting } = bore
  const noticed = useNoticed(waiting)
  if (noticed) return <Working />
  if (waiting) return null
  if (refusal !== null) {
    return (
      <section className="findings" aria-label={boreWords.refusedTitle}>
        <h2>{boreWords.refusedTitle}</h2>
        <p>{boreWords.refused(refusal.path, refusal.found, refusal.expected)}</p>
      </section>
    )
  }
  if (failure === null) return null
  return (
    <p className="boreStatus" role="status">
      {failure === 'givenUp' ? boreWords.cancelled : boreWords.failed(failure)}{' '}
      <button type="button" onClick={again}>
        {boreWords.again}
      </button>
    </p>
  )
}

/** Says that work goes on and how far it has come, and lets a person give it up. */
export function Working(): ReactNode {
  const progress = useBoreProgress((state) => state.progress)
  const known = progress !== null && progress.done < progress.of ? progress : null
  return (
    <p className="boreStatus" role="status">
      {known === null ? boreWords.working : boreWords.workingOn(known.done, known.of)}
      <progress
        aria-label={boreWords.working}
        {...(known === null ? {} : { value: known.done, max: known.of })}
      />
      <button type="button" onClick={giveUpBoreWork}>
        {boreWords.cancel}
      </button>
    </p>
  )
}
