import type { ReactNode } from 'react'
import type { BenchList } from '#shared/workbook/bench.ts'
import { renameJob, setJob } from '#shared/workbook/commands/benchCommands.ts'
import { freshJobName } from '#shared/workbook/newJobs.ts'
import { tryRun } from '../fields/refusal.ts'
import { TextField } from '../fields/TextField.tsx'
import { deleteJob, showJob, startJob, useJobs } from './benchStore.ts'

const kinds: Readonly<Record<BenchList, string>> = {
  slides: 'Slide',
  readings: 'Readings',
  pitchChanges: 'Change of pitch',
}

interface JobHeadProps {
  readonly list: BenchList
  readonly name: string
  readonly notes: string | undefined
  readonly children?: ReactNode
}

/** The head of a job: its name, what is noted for the sheet, and what can be done with it as a whole. */
export function JobHead({ list, name, notes, children }: JobHeadProps): ReactNode {
  const jobs = useJobs(list)
  const rename = (next: string): string | null => {
    const refused = tryRun(renameJob(list, name, next))
    if (refused === null) showJob(list, next)
    return refused
  }
  const duplicate = (): void => {
    const job = jobs.find(({ id }) => id === name)
    const taken = jobs.map(({ id }) => id)
    if (job !== undefined) startJob(list, { ...job, id: freshJobName(name, taken) })
  }
  return (
    <header className="jobHead">
      <h1 className="unseen">
        {kinds[list]}: {name}
      </h1>
      <TextField label="Name" labelHidden className="jobName" value={name} take={rename} />
      {children}
      <TextField
        label="On the sheet"
        className="jobNotes"
        value={notes ?? ''}
        placeholder="whose instrument, its number"
        take={(text) =>
          tryRun(setJob(list, name, 'notes', text === '' ? undefined : text, 'Note on the sheet'))
        }
      />
      <span className="jobTools">
        <button type="button" className="quiet" onClick={duplicate}>
          Duplicate
        </button>
        <button type="button" className="quiet" onClick={() => deleteJob(list, name)}>
          Delete
        </button>
      </span>
    </header>
  )
}
