import type { ReactNode } from 'react'
import type { LeftDraft } from '#shared/bridge/bridge.ts'
import { keepingWords } from '../words/keeping.ts'
import { compareLeft, forgetLeft, keptWhen, restoreLeft, useRecovery } from './recovery.ts'

/** Every workbook that a crash left unsaved, with what can be done about it. `onActed` follows each choice. */
export function LeftWork({ onActed = () => undefined }: { readonly onActed?: () => void }): ReactNode {
  const left = useRecovery((state) => state.left)
  if (left.length === 0) return null
  return (
    <section aria-label={keepingWords.heading}>
      {left.map((draft) => (
        <LeftDraftCard key={draft.id} draft={draft} onActed={onActed} />
      ))}
    </section>
  )
}

interface CardProps {
  readonly draft: LeftDraft
  readonly onActed: () => void
}

function LeftDraftCard({ draft, onActed }: CardProps): ReactNode {
  const { fileName } = draft
  const when = keptWhen(draft)
  const act = (by: () => Promise<void>) => () => {
    onActed()
    void by()
  }
  return (
    <div className="leftDraft">
      <p>
        <b>{draft.name === '' ? keepingWords.aWorkbook : draft.name}</b>{' '}
        {fileName === null ? keepingWords.left(when) : keepingWords.leftWithFile(fileName, when)}
      </p>
      <button type="button" className="main" onClick={act(() => restoreLeft(draft))}>
        {keepingWords.restore}
      </button>
      {fileName === null ? null : (
        <button type="button" onClick={act(() => compareLeft(draft))}>
          {keepingWords.compare(fileName)}
        </button>
      )}
      <button type="button" onClick={() => void forgetLeft(draft)}>
        {keepingWords.forget}
      </button>
    </div>
  )
}
