import type { ReactNode } from 'react'
import type { ReadingsFit } from '#shared/bench/readings/readingsFit.ts'
import { signedCents } from '#shared/quantity/figures.ts'
import { fingeringName } from '#shared/valves/fingering.ts'
import type { BenchReadings } from '#shared/workbook/bench.ts'
import type { Design, Workbook } from '#shared/workbook/workbook.ts'
import { answerSentences } from '../readings/Answers.tsx'
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
    name: `${row + 1}. ${fingeringName(pressed)} on ${harmonic}`,
    text: `${signedCents(cents)}, left ${leaveOut === true ? 'out' : signedCents(fit.residualsCents[row] ?? 0)}`,
  }))
  return (
    <Sheet
      kind="Readings"
      name={readings.id}
      workbook={workbook.name}
      design={design.name}
      notes={readings.notes}
    >
      {grave.length === 0 ? null : (
        <section className="sheetProblems">
          <h2>Before anything is cut</h2>
          <ul>
            {grave.map((message) => (
              <li key={message}>{message}</li>
            ))}
          </ul>
        </section>
      )}
      <section>
        <h2>What the readings say</h2>
        <ul>
          {[...answerSentences(fit, design), ...mild].map((sentence) => (
            <li key={sentence}>{sentence}</li>
          ))}
        </ul>
      </section>
      <figure>
        <ReadingsPicture readings={readings} fit={fit} width={700} height={220} />
        <figcaption>Circles are readings, lines the fit, triangles readings that are far off.</figcaption>
      </figure>
      <section>
        <h2>Read with the tuner at A4 = {readings.a4Hz} Hz, and what the fit leaves, cents</h2>
        <SheetList rows={rows} rest="readings" />
      </section>
    </Sheet>
  )
}
