import type { Remote } from 'comlink'
import type { FittedBore } from '#shared/bore/fitBore.ts'
import { boreWords } from '../../words/bore.ts'
import { givenUp, useBoreWork } from '../../worker/boreDesk.ts'
import type { BoreWork, FitQuestion } from '../../worker/boreWorker.ts'

/** What has become of a fit that was asked for. */
export interface Fit {
  readonly fitted: FittedBore | null
  /** Why there is none. */
  readonly message: string | null
  readonly waiting: boolean
}

const fitOf = async (worker: Remote<BoreWork>, question: FitQuestion) => worker.fit(question)

/** Has a bore fitted in the worker; `null` asks for nothing. */
export function useFit(asked: FitQuestion | null): Fit {
  const worked = useBoreWork('fit', asked, fitOf)
  if (asked === null) return { fitted: null, message: null, waiting: false }
  if (worked?.question !== asked) return { fitted: null, message: null, waiting: true }
  if ('failure' in worked) {
    const message = worked.failure === givenUp ? null : boreWords.failed(worked.failure)
    return { fitted: null, message, waiting: false }
  }
  if (worked.answer.ok) return { fitted: worked.answer.value, message: null, waiting: false }
  const { path, found, expected } = worked.answer.refusal
  return { fitted: null, message: boreWords.refused(path, found, expected), waiting: false }
}
