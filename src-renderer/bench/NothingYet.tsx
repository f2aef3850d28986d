import type { ReactNode } from 'react'
import type { BenchList } from '#shared/workbook/bench.ts'
import { useSelectedDesign } from '../state/derived.ts'
import { startNewJob } from './newJobActions.ts'

interface NothingYetProps {
  readonly list: BenchList
  readonly title: string
  readonly text: string
  readonly add: string
}

/** Stands where a part of the bench has no job yet. */
export function NothingYet({ list, title, text, add }: NothingYetProps): ReactNode {
  const design = useSelectedDesign()?.design
  const noLoops = list === 'slides' && design?.loops.length === 0
  return (
    <div className="nothingYet">
      <h1>{title}</h1>
      <p>{text}</p>
      {noLoops ? <p className="soft">{design.name} has no loops to make a slide for.</p> : null}
      <button type="button" className="main" disabled={noLoops} onClick={() => startNewJob(list)}>
        {add}
      </button>
    </div>
  )
}
