import type { ReactNode } from 'react'
import type { BenchList } from '#shared/workbook/bench.ts'
import { renameJob, setJob } from '#shared/workbook/commands/benchCommands.ts'
import { freshJobName } from '#shared/workbook/newJobs.ts'
import { tryRun } from '../fields/refusal.ts'
import { TextField } from '../fields/TextField.tsx'
import { benchWords } from '../words/bench.ts'
import { deleteJob, showRenamed, startJob, useJobs } from './benchStore.ts'

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
    if (refused === null) showRenamed(list, name, next)
    return refused
  }
  const duplicate = (): void => {
    const job = jobs.find(({ id }) => id === name)
    const taken = jobs.map(({ id }) => id)
    if (job !== undefined) startJob(list, { ...job, id: freshJobName(name, taken) })
  }
  return (
    <header className="jobHead">
      <h1 className="unseen">{benchWords.headOf(benchWords.lists[list].title, name)}</h1>
      <TextField label={benchWords.name} labelHidden className="jobName" value={name} take={rename} />
      {children}
      <TextField
        label={benchWords.onSheet}
        className="jobNotes"
        value={notes ?? ''}
        placeholder={benchWords.onSheetPlaceholder}
        take={(text) =>
          tryRun(setJob(list, name, 'notes', text === '' ? undefined : text, benchWords.noteStep))
        }
      />
      <span className="jobTools">
        <button type="button" className="quiet" onClick={duplicate}>
          {benchWords.duplicate}
        </button>
        <button type="button" className="quiet" onClick={() => deleteJob(list, name)}>
          {benchWords.delete}
        </button>
      </span>
    </header>
  )
}
