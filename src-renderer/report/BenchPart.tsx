import type { ReactNode } from 'react'
import type { BenchPitchChange, BenchReadings, BenchSlide } from '#shared/workbook/bench.ts'
import { jobsOf } from '#shared/workbook/commands/benchCommands.ts'
import type { Workbook } from '#shared/workbook/workbook.ts'
import { usePitchJob } from '../bench/pitch/usePitchJob.ts'
import { useFit } from '../bench/readings/useFit.ts'
import { PitchSheet } from '../bench/sheet/PitchSheet.tsx'
import { ReadingsSheet } from '../bench/sheet/ReadingsSheet.tsx'
import { InReport } from '../bench/sheet/Sheet.tsx'
import { SlideSheet } from '../bench/sheet/SlideSheet.tsx'
import { useSlide } from '../bench/slide/useSlide.ts'
import { benchWords } from '../words/bench.ts'

/** Every job of the bench, its sheet on a page of its own; one that cannot be worked out says why. */
export function BenchPart({ workbook }: { readonly workbook: Workbook }): ReactNode {
  return (
    <InReport value={true}>
      {jobsOf(workbook, 'slides').map((slide) => (
        <SlideJob key={slide.id} workbook={workbook} slide={slide} />
      ))}
      {jobsOf(workbook, 'readings').map((readings) => (
        <ReadingsJob key={readings.id} workbook={workbook} readings={readings} />
      ))}
      {jobsOf(workbook, 'pitchChanges').map((change) => (
        <PitchJob key={change.id} workbook={workbook} change={change} />
      ))}
    </InReport>
  )
}

interface SlideJobProps {
  readonly workbook: Workbook
  readonly slide: BenchSlide
}

function SlideJob({ workbook, slide }: SlideJobProps): ReactNode {
  const { placed, sized } = useSlide(workbook, slide)
  if (placed.kind === 'unplaced')
    return <NoSheet name={slide.id} messages={[benchWords.gone[placed.field]]} />
  if (sized?.kind !== 'sized')
    return <NoSheet name={slide.id} messages={sized?.findings.map(({ message }) => message) ?? []} />
  const { design, loop } = placed
  return <SlideSheet workbook={workbook} slide={slide} design={design} loop={loop} sized={sized} />
}

interface ReadingsJobProps {
  readonly workbook: Workbook
  readonly readings: BenchReadings
}

function ReadingsJob({ workbook, readings }: ReadingsJobProps): ReactNode {
  const { placed, fit } = useFit(workbook, readings)
  if (placed.kind === 'unplaced')
    return <NoSheet name={readings.id} messages={[benchWords.gone[placed.field]]} />
  if (fit?.kind !== 'fitted')
    return <NoSheet name={readings.id} messages={fit?.findings.map(({ message }) => message) ?? []} />
  return <ReadingsSheet workbook={workbook} readings={readings} design={placed.design} fit={fit} />
}

interface PitchJobProps {
  readonly workbook: Workbook
  readonly change: BenchPitchChange
}

function PitchJob({ workbook, change }: PitchJobProps): ReactNode {
  const { placed, answer } = usePitchJob(workbook, change)
  if (placed.kind === 'unplaced')
    return <NoSheet name={change.id} messages={[benchWords.gone[placed.field]]} />
  if (answer === null) return null
  const { design, job } = placed
  return (
    <PitchSheet
      workbook={workbook}
      change={change}
      design={design}
      openMm={job.openLengthMm}
      answer={answer}
    />
  )
}

function NoSheet({
  name,
  messages,
}: {
  readonly name: string
  readonly messages: readonly string[]
}): ReactNode {
  return (
    <article className="benchSheet reportPage">
      <h1>{name}</h1>
      {messages.map((message) => (
        <p key={message}>{message}</p>
      ))}
    </article>
  )
}
