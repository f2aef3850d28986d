import { type BenchList, type BenchLists, type BenchReading, type BenchSlide, benchLists } from '../bench.ts'
import { newSlide } from '../newJobs.ts'
import type { Workbook } from '../workbook.ts'
import { type Command, coalesced, recorded, withOptional } from './command.ts'

const nouns: Readonly<Record<BenchList, string>> = {
  slides: 'slide',
  readings: 'readings',
  pitchChanges: 'change of pitch',
}

/** Adds a job after the others of its list. */
export function addJob<L extends BenchList>(list: L, job: BenchLists[L]): Command {
  return recorded(`Add ${nouns[list]}`, (workbook) => withJobs(workbook, list, (jobs) => [...jobs, job]))
}

/** Takes a job out. */
export function removeJob(list: BenchList, id: string): Command {
  return recorded(`Delete ${nouns[list]}`, (workbook) =>
    withJobs(workbook, list, (jobs) => jobs.filter((job) => job.id !== id)),
  )
}

/** Gives a job another name, which is its id. */
export function renameJob(list: BenchList, id: string, name: string): Command {
  return coalesced(`Name of ${nouns[list]}`, `bench name ${list}`, (workbook) =>
    withJob(workbook, list, id, (job) => ({ ...job, id: name })),
  )
}

/** Sets one value of a job; `undefined` leaves an optional one out. `name` is the step's, as undo says it. */
export function setJob<L extends BenchList, K extends keyof BenchLists[L]>(
  list: L,
  id: string,
  field: K,
  value: BenchLists[L][K] | undefined,
  name: string,
): Command {
  return coalesced(name, `bench ${list} ${id} ${String(field)}`, (workbook) =>
    withJob(workbook, list, id, (job) => withOptional(job, field, value)),
  )
}

/**
 * Sets the pitch that a change leads to.
 *
 * @param called what the change is called from now on
 */
export function setPitchTo(id: string, toA4Hz: number, called: string, name: string): Command {
  return coalesced(name, 'bench pitchChanges to', (workbook) =>
    withJob(workbook, 'pitchChanges', id, (change) => ({ ...change, id: called, toA4Hz })),
  )
}

/**
 * Hands a slide to another loop, perhaps of another design. Values that are still those a new slide would have for the
 * old loop become those of the new one; what was typed stays.
 *
 * @param name what the slide is called from now on
 */
export function setSlideLoop(id: string, design: string, loop: string, name = id): Command {
  return recorded('Loop of slide', (workbook) =>
    withJob(workbook, 'slides', id, (slide) => ({
      ...handedOn(slide, freshFor(workbook, slide.design, slide.loop), freshFor(workbook, design, loop)),
      id: name,
      design,
      loop,
    })),
  )
}

function freshFor({ designs }: Workbook, designId: string, loopId: string): BenchSlide | null {
  const design = designs.find(({ id }) => id === designId)
  const loop = design?.loops.find(({ id }) => id === loopId)
  return design === undefined || loop === undefined ? null : newSlide('', design, loop)
}

function handedOn(slide: BenchSlide, before: BenchSlide | null, after: BenchSlide | null): BenchSlide {
  if (before === null || after === null) return slide
  const untouched = Object.entries(after).filter(
    ([key]) => slide[key as keyof BenchSlide] === before[key as keyof BenchSlide],
  )
  return { ...slide, ...Object.fromEntries(untouched) }
}

/** The workbook with one job of a list changed; the same workbook when no job has that id. */
export function withJob<L extends BenchList>(
  workbook: Workbook,
  list: L,
  id: string,
  change: (job: BenchLists[L]) => BenchLists[L],
): Workbook {
  if (!jobsOf(workbook, list).some((job) => job.id === id)) return workbook
  return withJobs(workbook, list, (jobs) => jobs.map((job) => (job.id === id ? change(job) : job)))
}

/** The workbook with every reading of a design changed. */
export function withReadingsOf(
  workbook: Workbook,
  designId: string,
  change: (reading: BenchReading) => BenchReading,
): Workbook {
  if (!jobsOf(workbook, 'readings').some(({ design }) => design === designId)) return workbook
  return withJobs(workbook, 'readings', (jobs) =>
    jobs.map((job) => (job.design === designId ? { ...job, rows: job.rows.map(change) } : job)),
  )
}

/** The jobs of a list, none when the workbook has no bench. */
export function jobsOf<L extends BenchList>(
  workbook: Pick<Workbook, 'bench'>,
  list: L,
): readonly BenchLists[L][] {
  const lists: { readonly [K in BenchList]: readonly BenchLists[K][] | undefined } = {
    slides: workbook.bench?.slides,
    readings: workbook.bench?.readings,
    pitchChanges: workbook.bench?.pitchChanges,
  }
  return lists[list] ?? []
}

function withJobs<L extends BenchList>(
  workbook: Workbook,
  list: L,
  change: (jobs: readonly BenchLists[L][]) => readonly BenchLists[L][],
): Workbook {
  return { ...workbook, bench: { ...workbook.bench, [list]: change(jobsOf(workbook, list)) } }
}

/** Number of jobs on the bench of a workbook. */
export function jobCount(workbook: Pick<Workbook, 'bench'>): number {
  return benchLists.reduce((sum, list) => sum + jobsOf(workbook, list).length, 0)
}
