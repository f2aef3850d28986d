import { type Remote, wrap } from 'comlink'
import { useEffect, useState } from 'react'
import type { LengthsWork } from './lengthsWorker.ts'
import { newestFirst } from './newestFirst.ts'

/** Kinds of work, the most urgent first. */
export const workKinds = { proposal: 0, trade: 1, systems: 2 } as const

const desk = newestFirst()
let worker: Remote<LengthsWork> | undefined

function startedWorker(): Remote<LengthsWork> {
  worker ??= wrap<LengthsWork>(
    new Worker(new URL('./lengthsWorker.ts', import.meta.url), { type: 'module', name: 'lengths' }),
  )
  return worker
}

/** The latest answer, with the question it answers: while a newer one is worked on, the older one stays. */
export type Worked<Question, Answer> =
  | { readonly question: Question; readonly answer: Answer }
  | { readonly question: Question; readonly failure: string }

/**
 * Has the worker answer a question, anew whenever it is another object; `null` asks nothing and leaves the latest
 * answer. `work` must be the same function each time.
 */
export function useWork<Question extends object, Answer>(
  kind: keyof typeof workKinds,
  question: Question | null,
  work: (worker: Remote<LengthsWork>, question: Question) => Promise<Answer>,
): Worked<Question, Answer> | null {
  const [worked, setWorked] = useState<Worked<Question, Answer> | null>(null)
  useEffect(() => {
    if (question === null) return
    let wanted = true
    desk
      .ask(workKinds[kind], () => work(startedWorker(), question))
      .then((answer) => {
        if (wanted && answer !== null) setWorked({ question, answer })
      })
      .catch((error: unknown) => {
        const failure = error instanceof Error ? error.message : String(error)
        if (wanted) setWorked({ question, failure })
      })
    return () => {
      wanted = false
    }
  }, [kind, question, work])
  return worked
}
