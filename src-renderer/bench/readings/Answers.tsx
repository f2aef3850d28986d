import type { ReactNode } from 'react'
import { loopSentence } from '#shared/bench/readings/loopSentence.ts'
import type { ReadingsFit } from '#shared/bench/readings/readingsFit.ts'
import { plainFigure, signedCents } from '#shared/quantity/figures.ts'
import type { Design } from '#shared/workbook/workbook.ts'

interface AnswersProps {
  readonly fit: ReadingsFit
  readonly design: Design
}

/** What the readings say, a sentence for each part. */
export function Answers({ fit, design }: AnswersProps): ReactNode {
  return (
    <section className="answers" aria-label="What the readings say">
      <h2>What the readings say</h2>
      <ul>
        {answerSentences(fit, design).map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
    </section>
  )
}

/** The answers, for page and sheet. */
export function answerSentences(
  { openLengthMm, loops, harmonicOffsetsCents, referenceHarmonic }: ReadingsFit,
  design: Design,
): readonly string[] {
  const open =
    openLengthMm === null
      ? 'The readings do not settle the open length.'
      : `The open length is ${plainFigure(openLengthMm.value, 1)} ± ${plainFigure(openLengthMm.standardError, 1)} mm of tube.`
  const ofLoops = Object.entries(loops).map(([id, loop]) => loopSentence(`Loop ${nameOf(design, id)}`, loop))
  const offsets = Object.entries(harmonicOffsetsCents)
    .filter(([harmonic]) => Number(harmonic) !== referenceHarmonic)
    .map(
      ([harmonic, { value, standardError }]) =>
        `Harmonic ${harmonic} lies ${signedCents(value)} ± ${plainFigure(standardError, 1)} cents from harmonic ${referenceHarmonic}.`,
    )
  return [...ofLoops, open, ...offsets]
}

function nameOf(design: Design, loopId: string): string {
  const name = design.loops.find(({ id }) => id === loopId)?.name
  return name === undefined ? loopId : `${loopId} (${name})`
}
