import { examples } from '#shared/workbook/examples/examples.ts'
import { closeDialog } from '../dialogs/dialogStore.ts'
import { whenKept } from '../state/fileActions.ts'
import { select, selectDesign, useView } from '../state/viewStore.ts'
import { useWorkbook } from '../state/workbookStore.ts'
import type { FirstStep } from '../words/start.ts'
import { useGuide } from './firstStepStore.ts'
import { openExample } from './readExample.ts'

interface Step {
  /** Of the example that shows it best. */
  readonly exampleId: string
  /** Goes to the page, with the right things selected. */
  readonly arrive: () => Promise<void> | void
}

const steps: Readonly<Record<FirstStep, Step>> = {
  slide: { exampleId: 'alto-in-e-flat', arrive: sizeSlide },
  compensating: { exampleId: 'bass-in-f', arrive: lookAtCompensating },
  compare: { exampleId: 'bass-in-f', arrive: () => useView.setState({ page: 'compare' }) },
  why: { exampleId: 'alto-in-e-flat', arrive: () => useView.setState({ page: 'pictures' }) },
}

/** Leads to a first task: opens its example at the right place and says what to look at. */
export function takeFirstStep(step: FirstStep): void {
  const { exampleId, arrive } = steps[step]
  const example = examples.find(({ id }) => id === exampleId)
  if (example === undefined) throw new Error(`no example is called ${exampleId}`)
  closeDialog()
  whenKept(async () => {
    await openExample(example)
    await arrive()
    useGuide.setState({ step })
  })
}

async function sizeSlide(): Promise<void> {
  useView.setState({ page: 'bench' })
  const { startNewJob } = await import('../bench/newJobActions.ts')
  startNewJob('slides')
}

/** The compensating design with the fingering that its further loops are there for. */
function lookAtCompensating(): void {
  const { workbook } = useWorkbook.getState()
  const design = workbook?.designs.find(({ loops }) => loops.some(({ pressed }) => pressed.length > 1))
  if (design === undefined) return
  useView.setState({ page: 'curves', by: 'fingering', which: 'usual' })
  selectDesign(design.id)
  select({ kind: 'fingering', designId: design.id, fingering: '1-3-4' })
}
