import type { ReactNode } from 'react'
import type { ReadingsFit } from '#shared/bench/readings/readingsFit.ts'
import { signedCents } from '#shared/quantity/figures.ts'
import { fingeringName } from '#shared/valves/fingering.ts'
import type { BenchReadings } from '#shared/workbook/bench.ts'
import type { Design, Workbook } from '#shared/workbook/workbook.ts'
import { benchWords } from '../../words/bench.ts'
import { readingsWords } from '../../words/benchReadings.ts'
import { Answers } from '../readings/Answers.tsx'
import { ReadingsPicture } from '../readings/ReadingsPicture.tsx'
import { sortedRemarks } from '../readings/remarkOrder.ts'
import { Sheet } from './Sheet.tsx'
import { SheetList } from './SheetList.tsx'

interface ReadingsSheetProps {
  readonly workbook: Workbook
  readonly readings: BenchReadings
  readonly design: Design
  readonly fit: ReadingsFit
}

/** The sheet of a tuner's readings: what was read, what to think of first, and what follows. */
export function ReadingsSheet({ workbook, readings, design, fit }: ReadingsSheetProps): ReactNode {
  const { grave, mild } = sortedRemarks(fit)
  const rows = readings.rows.map(({ pressed, harmonic, cents, leaveOut }, row) => ({
    name: readingsWords.sheetReading(row + 1, fingeringName(pressed), harmonic),
    text: readingsWords.sheetLeft(
      signedCents(cents),
      leaveOut === true ? null : signedCents(fit.residualsCents[row] ?? 0),
    ),
  }))
  return (
    <Sheet
      kind={benchWords.lists.readings.title}
      name={readings.id}
      workbook={workbook.name}
      design={design.name}
      notes={readings.notes}
    >
      {grave.length === 0 ? null : (
        <section className="sheetProblems">
          <h2>{readingsWords.beforeCutting}</h2>
          <ul>
            {grave.map((message) => (
              <li key={message}>{message}</li>
            ))}
          </ul>
        </section>
      )}
      <Answers fit={fit} design={design} more={mild} />
      <figure>
        <ReadingsPicture readings={readings} fit={fit} width={700} height={220} />
        <figcaption>{readingsWords.sheetCaption}</figcaption>
      </figure>
      <section>
        <h2>{readingsWords.sheetTable(readings.a4Hz)}</h2>
        <SheetList rows={rows} rest={readingsWords.sheetReadings} />
      </section>
    </Sheet>
  )
}
