import type { ReactNode } from 'react'
import { loopSentence } from '#shared/bench/readings/loopSentence.ts'
import type { ReadingsFit } from '#shared/bench/readings/readingsFit.ts'
import { plainFigure, signedCents } from '#shared/quantity/figures.ts'
import type { Design } from '#shared/workbook/workbook.ts'
import { readingsWords } from '../../words/benchReadings.ts'

interface AnswersProps {
  readonly fit: ReadingsFit
  readonly design: Design
}

/** What the readings say, a sentence for each part. */
export function Answers({ fit, design }: AnswersProps): ReactNode {
  return (
    <section className="answers" aria-label={readingsWords.answers}>
      <h2>{readingsWords.answers}</h2>
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
      ? readingsWords.openUnsettled
      : readingsWords.open(plainFigure(openLengthMm.value, 1), plainFigure(openLengthMm.standardError, 1))
  const ofLoops = Object.entries(loops).map(([id, loop]) =>
    loopSentence(
      readingsWords.loop(nameOf(design, id)),
      loop,
      design.loops.find((each) => each.id === id)?.slide,
    ),
  )
  const offsets = Object.entries(harmonicOffsetsCents)
    .filter(([harmonic]) => Number(harmonic) !== referenceHarmonic)
    .map(([harmonic, { value, standardError }]) =>
      readingsWords.offset(harmonic, signedCents(value), plainFigure(standardError, 1), referenceHarmonic),
    )
  return [...ofLoops, open, ...offsets]
}

function nameOf(design: Design, loopId: string): string {
  const name = design.loops.find(({ id }) => id === loopId)?.name
  return name === undefined ? loopId : readingsWords.loopCalled(loopId, name)
}
