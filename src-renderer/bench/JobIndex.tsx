import type { ReactNode } from 'react'
import type { BenchList } from '#shared/workbook/bench.ts'
import { Mark } from '../help/Mark.tsx'
import { useSelectedDesign } from '../state/derived.ts'
import { benchWords } from '../words/bench.ts'
import type { MarkId } from '../words/marks.ts'
import { showJob, useBench, useJob, useJobs } from './benchStore.ts'
import { startNewJob } from './newJobActions.ts'

interface JobListEntry {
  readonly list: BenchList
  readonly mark: MarkId
}

const lists: readonly JobListEntry[] = [
  { list: 'slides', mark: 'leg' },
  { list: 'readings', mark: 'readings' },
  { list: 'pitchChanges', mark: 'pitchChange' },
]

/** Every job on the bench, under its part; and what reckons from one piece. */
export function JobIndex(): ReactNode {
  const onePiece = useBench(({ part }) => part === 'onePiece')
  return (
    <nav className="jobIndex" aria-label={benchWords.indexLabel}>
      {lists.map((each) => (
        <JobList key={each.list} {...each} />
      ))}
      <div>
        <h3 className="withMark">{benchWords.onePiece}</h3>
        <Mark id="onePiece" />
      </div>
      <button
        type="button"
        className={onePiece ? 'job on' : 'job'}
        aria-current={onePiece ? 'page' : undefined}
        onClick={() => useBench.setState({ part: 'onePiece' })}
      >
        {benchWords.wholeInstrument}
      </button>
    </nav>
  )
}

function JobList({ list, mark }: JobListEntry): ReactNode {
  const { title, add } = benchWords.lists[list]
  const jobs = useJobs(list)
  const shown = useJob(list)
  const open = useBench(({ part }) => part === list)
  const design = useSelectedDesign()?.design
  const cannot = design === undefined || (list === 'slides' && design.loops.length === 0)
  return (
    <>
      <div>
        <h3 className="withMark">{title}</h3>
        <Mark id={mark} />
      </div>
      <ul>
        {jobs.map(({ id }) => {
          const on = open && id === shown?.id
          return (
            <li key={id}>
              <button
                type="button"
                className={on ? 'job on' : 'job'}
                aria-current={on ? 'page' : undefined}
                onClick={() => showJob(list, id)}
              >
                {id}
              </button>
            </li>
          )
        })}
      </ul>
      <button type="button" className="add" disabled={cannot} onClick={() => startNewJob(list)}>
        {add}
      </button>
    </>
  )
}
