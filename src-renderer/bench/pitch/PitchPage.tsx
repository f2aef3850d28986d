import type { ReactNode } from 'react'
import type { PitchChangeAnswer } from '#shared/bench/pitchChange.ts'
import { alreadyThere } from '#shared/bench/pitchStanding.ts'
import { noteName } from '#shared/pitch/noteName.ts'
import type { BenchPitchChange } from '#shared/workbook/bench.ts'
import { jobsOf, setJob, setPitchTo } from '#shared/workbook/commands/benchCommands.ts'
import { nameGoingAlong } from '#shared/workbook/newJobs.ts'
import type { Design, Workbook } from '#shared/workbook/workbook.ts'
import { tryRun } from '../../fields/refusal.ts'
import { useSettings } from '../../state/settings.ts'
import { run, useWorkbook } from '../../state/workbookStore.ts'
import { benchWords } from '../../words/bench.ts'
import { newJobNames } from '../../words/benchJobs.ts'
import { pitchWords } from '../../words/benchPitch.ts'
import { A4Field } from '../A4Field.tsx'
import { keyOfJob, showRenamed, useJob } from '../benchStore.ts'
import { DesignChoice } from '../DesignChoice.tsx'
import { Findings } from '../Findings.tsx'
import { JobHead } from '../JobHead.tsx'
import { NothingYet } from '../NothingYet.tsx'
import { PitchSheet } from '../sheet/PitchSheet.tsx'
import { PrintButtons } from '../sheet/PrintButtons.tsx'
import { BodyAlone } from './BodyAlone.tsx'
import { ChangeTable } from './ChangeTable.tsx'
import { changeSentence } from './changeSentence.ts'
import { MainSlideReach } from './MainSlideReach.tsx'
import { TakeChange } from './TakeChange.tsx'
import { usePitchJob } from './usePitchJob.ts'

/** From one pitch to another: body and every loop, what the body alone would do, what the main slide can do. */
export function PitchPage(): ReactNode {
  const workbook = useWorkbook((state) => state.workbook)
  const change = useJob('pitchChanges')
  if (workbook === null || change === null) return <NothingYet list="pitchChanges" />
  return <PitchJobPage key={keyOfJob('pitchChanges', change.id)} workbook={workbook} change={change} />
}

interface PitchJobPageProps {
  readonly workbook: Workbook
  readonly change: BenchPitchChange
}

/** Has a change lead to another pitch; a name that only said the pitch goes along. */
function leadTo(workbook: Workbook, change: BenchPitchChange, toA4Hz: number): string | null {
  const { id } = change
  const called = nameGoingAlong(
    id,
    newJobNames.pitchChange(change.toA4Hz),
    newJobNames.pitchChange(toA4Hz),
    jobsOf(workbook, 'pitchChanges').map((job) => job.id),
  )
  const refused = tryRun(setPitchTo(id, toA4Hz, called, pitchWords.toStep))
  if (refused === null && called !== id) showRenamed('pitchChanges', id, called)
  return refused
}

function PitchJobPage({ workbook, change }: PitchJobPageProps): ReactNode {
  const { placed, answer, isTaken } = usePitchJob(workbook, change)
  return (
    <>
      <JobHead list="pitchChanges" name={change.id} notes={change.notes} />
      <div className="jobRow fields">
        <DesignChoice
          designId={change.design}
          take={(design) => run(setJob('pitchChanges', change.id, 'design', design, pitchWords.designStep))}
        />
        <A4Field
          label={pitchWords.from}
          a4Hz={change.fromA4Hz}
          help={pitchWords.fromHelp}
          take={(hz) => tryRun(setJob('pitchChanges', change.id, 'fromA4Hz', hz, pitchWords.fromStep))}
        />
        <A4Field label={pitchWords.to} a4Hz={change.toA4Hz} take={(hz) => leadTo(workbook, change, hz)} />
      </div>
      {placed.kind === 'unplaced' ? (
        <Findings title={pitchWords.cannot} messages={[benchWords.gone[placed.field]]} />
      ) : answer === null ? null : (
        <Reckoned
          workbook={workbook}
          change={change}
          design={placed.design}
          openMm={placed.job.openLengthMm}
          answer={answer}
          isTaken={isTaken}
        />
      )}
    </>
  )
}

interface ReckonedProps {
  readonly workbook: Workbook
  readonly change: BenchPitchChange
  readonly design: Design
  readonly openMm: number
  readonly answer: PitchChangeAnswer
  readonly isTaken: boolean
}

function Reckoned(props: ReckonedProps): ReactNode {
  const { workbook, change, design, openMm, answer, isTaken } = props
  return (
    <>
      <Standing change={change} design={design} />
      <p className="answer">{changeSentence(change, answer)}</p>
      <div className="jobColumns even">
        <div>
          <ChangeTable name={change.id} design={design} openMm={openMm} answer={answer} />
          <div className="jobButtons">
            <PrintButtons name={change.id} />
            <TakeChange design={design} answer={answer} change={change} isTaken={isTaken} />
          </div>
        </div>
        <MainSlideReach design={design} openMm={openMm} change={change} />
      </div>
      <BodyAlone design={design} change={change} answer={answer} />
      <PitchSheet workbook={workbook} change={change} design={design} openMm={openMm} answer={answer} />
    </>
  )
}

/** Says when the design seems to stand at the new pitch already. */
function Standing({ change, design }: Pick<ReckonedProps, 'change' | 'design'>): ReactNode {
  const spelling = useSettings((settings) => settings.spelling)
  const { fromA4Hz, toA4Hz } = change
  const there = alreadyThere(design.instrument.fundamentalHz, fromA4Hz, toA4Hz)
  if (there === null) return null
  const message = pitchWords.stands(noteName(there.midi, spelling), toA4Hz, fromA4Hz)
  return <Findings title={pitchWords.standsTitle} messages={[message]} mild />
}
