import { useMemo } from 'react'
import { create } from 'zustand'
import type { BenchList, BenchLists } from '#shared/workbook/bench.ts'
import { addJob, jobsOf, removeJob } from '#shared/workbook/commands/benchCommands.ts'
import type { Design } from '#shared/workbook/workbook.ts'
import { forgetWithWorkbook } from '../state/perWorkbook.ts'
import { runOrSay } from '../state/runOrSay.ts'
import { run, useWorkbook } from '../state/workbookStore.ts'

export type BenchPart = BenchList | 'onePiece'

/** How the bench is looked at: outside the workbook, and not undone. */
export interface BenchView {
  readonly part: BenchPart
  /** Names of the selected jobs; the first of the list when there is none of that name. */
  readonly names: Readonly<Record<BenchList, string | null>>
  readonly paper: 'A4' | 'Letter'
  /** Changes of pitch that were taken, the newest first. */
  readonly taken: readonly TakenChange[]
  /** How notes are typed in a table of readings. */
  readonly notes: 'sounding' | 'written'
}

/** A change of pitch that was taken into its design, with the design before it and after it. */
export interface TakenChange {
  readonly fromA4Hz: number
  readonly toA4Hz: number
  readonly before: Design
  readonly after: Design
}

const noNames = { slides: null, readings: null, pitchChanges: null }

export const useBench = create<BenchView>()(() => ({
  part: 'slides',
  names: noNames,
  paper: 'A4',
  taken: [],
  notes: 'sounding',
}))

/** Numbers of the jobs that were shown, by list and present name. */
const shownJobs = new Map<string, number>()
let shownCount = 0

forgetWithWorkbook(() => {
  useBench.setState({ names: noNames, taken: [] })
  shownJobs.clear()
})

/** Stands for a job on the page, whatever it is called meanwhile: a page is not built anew under a hand that types. */
export function keyOfJob(list: BenchList, name: string): number {
  const number = shownJobs.get(`${list} ${name}`) ?? ++shownCount
  shownJobs.set(`${list} ${name}`, number)
  return number
}

/** Goes on showing a job under its new name. */
export function showRenamed(list: BenchList, name: string, next: string): void {
  const number = keyOfJob(list, name)
  shownJobs.delete(`${list} ${name}`)
  shownJobs.set(`${list} ${next}`, number)
  showJob(list, next)
}

/** Shows a part of the bench, and a job of it. */
export function showJob(list: BenchList, name: string): void {
  useBench.setState(({ names }) => ({ part: list, names: { ...names, [list]: name } }))
}

/** The jobs of a list, in the workbook's order. */
export function useJobs<L extends BenchList>(list: L): readonly BenchLists[L][] {
  const workbook = useWorkbook((state) => state.workbook)
  return useMemo(() => (workbook === null ? [] : jobsOf(workbook, list)), [workbook, list])
}

/** The selected job of a list; `null` when the list is empty. */
export function useJob<L extends BenchList>(list: L): BenchLists[L] | null {
  const jobs = useJobs(list)
  const name = useBench(({ names }) => names[list])
  return jobs.find(({ id }) => id === name) ?? jobs[0] ?? null
}

/** Adds a job and shows it. */
export function startJob<L extends BenchList>(list: L, job: BenchLists[L]): void {
  if (runOrSay(addJob(list, job))) showJob(list, job.id)
}

/** Deletes a job; the first of its list is shown then. */
export function deleteJob(list: BenchList, name: string): void {
  shownJobs.delete(`${list} ${name}`)
  run(removeJob(list, name))
}
