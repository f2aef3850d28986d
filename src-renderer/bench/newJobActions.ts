import type { BenchList } from '#shared/workbook/bench.ts'
import { jobsOf } from '#shared/workbook/commands/benchCommands.ts'
import { freshJobName, newPitchChange, newReadings, newSlide } from '#shared/workbook/newJobs.ts'
import type { Design } from '#shared/workbook/workbook.ts'
import { useView } from '../state/viewStore.ts'
import { useWorkbook } from '../state/workbookStore.ts'
import { newJobNames } from '../words/benchJobs.ts'
import { startJob } from './benchStore.ts'

/** Starts a job of a list for the selected design. */
export function startNewJob(list: BenchList): void {
  const { workbook } = useWorkbook.getState()
  const { designId, loopId } = useView.getState()
  const design = workbook?.designs.find(({ id }) => id === designId) ?? workbook?.designs[0]
  if (!workbook || design === undefined) return
  const fresh = (name: string): string =>
    freshJobName(
      name,
      jobsOf(workbook, list).map(({ id }) => id),
    )
  if (list === 'readings') startJob(list, newReadings(fresh(newJobNames.readings), workbook, design))
  else if (list === 'pitchChanges') {
    const { toA4Hz } = newPitchChange('', workbook, design)
    startJob(list, newPitchChange(fresh(newJobNames.pitchChange(toA4Hz)), workbook, design))
  } else startSlide(design, loopId, fresh)
}

/** A slide for the loop that is open in the tubing, else for the design's last, which is most often the third. */
function startSlide(design: Design, loopId: string | null, fresh: (name: string) => string): void {
  const loop = design.loops.find(({ id }) => id === loopId) ?? lastPlain(design)
  if (loop !== undefined)
    startJob('slides', newSlide(fresh(newJobNames.slide(loop.name ?? loop.id)), design, loop))
}

function lastPlain({ loops }: Design): Design['loops'][number] | undefined {
  return loops.findLast(({ pressed }) => pressed.length === 1) ?? loops.at(-1)
}
