import { type Remote, wrap } from 'comlink'
import { useEffect, useState } from 'react'
import { workWords } from '../words/work.ts'
import { newestFirst } from './newestFirst.ts'

/** The latest answer, with the question it answers: while a newer one is worked on, the older one stays. */
export type Worked<Question, Answer> =
  | { readonly question: Question; readonly answer: Answer }
  | { readonly question: Question; readonly failure: string }

/** A worker of one's own, asked from components. */
export interface WorkDesk<Api, Kind extends string> {
  /**
   * Has the worker answer a question, anew whenever it is another object; `null` asks nothing and leaves the latest
   * answer. `work` must be the same function each time.
   */
  readonly useWork: <Question extends object, Answer>(
    kind: Kind,
    question: Question | null,
    work: (worker: Remote<Api>, question: Question) => Promise<Answer>,
  ) => Worked<Question, Answer> | null
  /** Has the worker answer a question once; `null` when a newer one of its kind came before it. */
  readonly ask: <Question extends object, Answer>(
    kind: Kind,
    question: Question,
    work: (worker: Remote<Api>, question: Question) => Promise<Answer>,
  ) => Promise<Worked<Question, Answer> | null>
  /** Gives up what is being worked on: it fails with this message. What waits is begun in a new worker. */
  readonly giveUp: (message: string) => void
}

/** A desk for one worker, started with its first question; of its kinds of work, the lowest number goes first. */
export function workDesk<Api, Kind extends string>(
  kinds: Readonly<Record<Kind, number>>,
  start: () => Worker,
): WorkDesk<Api, Kind> {
  const desk = newestFirst()
  let started: { readonly worker: Worker; readonly remote: Remote<Api> } | null = null
  let stop: ((reason: Error) => void) | null = null

  const giveUp = (message: string): void => {
    started?.worker.terminate()
    started = null
    stop?.(new Error(message))
    stop = null
  }
  const begin = <Answer>(work: (remote: Remote<Api>) => Promise<Answer>): Promise<Answer> =>
    new Promise((resolve, reject) => {
      if (started === null) {
        const worker = start()
        // A worker that cannot be read, or stumbles outside its answers, would be waited for without end.
        worker.addEventListener('error', ({ message }) => giveUp(message || workWords.noWorker))
        worker.addEventListener('messageerror', () => giveUp(workWords.noWorker))
        started = { worker, remote: wrap<Api>(worker) }
      }
      stop = reject
      work(started.remote).then(resolve, reject)
    })

  const ask: WorkDesk<Api, Kind>['ask'] = (kind, question, work) =>
    asWorked(
      question,
      desk.ask(kinds[kind], () => begin((remote) => work(remote, question))),
    )

  return {
    ask,
    useWork: <Question extends object, Answer>(
      kind: Kind,
      question: Question | null,
      work: (worker: Remote<Api>, question: Question) => Promise<Answer>,
    ) => {
      const [worked, setWorked] = useState<Worked<Question, Answer> | null>(null)
      useEffect(() => {
        if (question === null) return
        let wanted = true
        void ask(kind, question, work).then((next) => {
          if (wanted && next !== null) setWorked(next)
        })
        return () => {
          wanted = false
        }
      }, [kind, question, work])
      return worked
    },
    giveUp,
  }
}

async function asWorked<Question, Answer>(
  question: Question,
  asked: Promise<Answer | null>,
): Promise<Worked<Question, Answer> | null> {
  try {
    const answer = await asked
    return answer === null ? null : { question, answer }
  } catch (error) {
    return { question, failure: error instanceof Error ? error.message : String(error) }
  }
}
