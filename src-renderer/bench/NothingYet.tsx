import type { ReactNode } from 'react'
import type { BenchList } from '#shared/workbook/bench.ts'
import { useSelectedDesign } from '../state/derived.ts'
import { benchWords } from '../words/bench.ts'
import { startNewJob } from './newJobActions.ts'

interface NothingYetProps {
  readonly list: BenchList
  readonly title: string
  readonly text: string
}

/** Stands where a part of the bench has no job yet. */
export function NothingYet({ list, title, text }: NothingYetProps): ReactNode {
  const design = useSelectedDesign()?.design
  const noLoops = list === 'slides' && design?.loops.length === 0
  return (
    <div className="nothingYet">
      <h1>{title}</h1>
      <p>{text}</p>
      {noLoops ? <p className="soft">{benchWords.noLoops(design.name)}</p> : null}
      <button type="button" className="main" disabled={noLoops} onClick={() => startNewJob(list)}>
        {benchWords.lists[list].add}
      </button>
    </div>
  )
}
