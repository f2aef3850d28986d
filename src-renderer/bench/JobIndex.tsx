import type { ReactNode } from 'react'
import type { BenchList } from '#shared/workbook/bench.ts'
import { useSelectedDesign } from '../state/derived.ts'
import { showJob, useBench, useJob, useJobs } from './benchStore.ts'
import { startNewJob } from './newJobActions.ts'

const lists: readonly { readonly list: BenchList; readonly title: string; readonly add: string }[] = [
  { list: 'slides', title: 'Slide', add: 'Size a slide' },
  { list: 'readings', title: 'Readings', add: 'Read a tuner' },
  { list: 'pitchChanges', title: 'Change of pitch', add: 'Change the pitch' },
]

/** Every job on the bench, under its part; and what reckons from one piece. */
export function JobIndex(): ReactNode {
  const onePiece = useBench(({ part }) => part === 'onePiece')
  return (
    <nav className="jobIndex" aria-label="On the bench">
      {lists.map((each) => (
        <JobList key={each.list} {...each} />
      ))}
      <h3>From one piece</h3>
      <button
        type="button"
        className={onePiece ? 'job on' : 'job'}
        aria-current={onePiece ? 'page' : undefined}
        onClick={() => useBench.setState({ part: 'onePiece' })}
      >
        the whole instrument
      </button>
    </nav>
  )
}

function JobList({ list, title, add }: (typeof lists)[number]): ReactNode {
  const jobs = useJobs(list)
  const shown = useJob(list)
  const open = useBench(({ part }) => part === list)
  const design = useSelectedDesign()?.design
  const cannot = design === undefined || (list === 'slides' && design.loops.length === 0)
  return (
    <>
      <h3>{title}</h3>
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
