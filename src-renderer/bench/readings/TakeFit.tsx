import { type ReactNode, useState } from 'react'
import { speedOfSound } from '#shared/air/speedOfSound.ts'
import type { ReadingsFit } from '#shared/bench/readings/readingsFit.ts'
import { fundamentalHz } from '#shared/tubing/openRoute.ts'
import { takeIntoDesign } from '#shared/workbook/commands/takeIntoDesign.ts'
import type { Design } from '#shared/workbook/workbook.ts'
import { tryRun } from '../../fields/refusal.ts'
import { useWorkbook } from '../../state/workbookStore.ts'
import { readingsWords } from '../../words/benchReadings.ts'

interface TakeFitProps {
  readonly fit: ReadingsFit
  readonly design: Design
}

/** Takes the answer into the design, as it was found or as it shall be, in one step. */
export function TakeFit({ fit, design }: TakeFitProps): ReactNode {
  const air = useWorkbook((state) => state.workbook?.air)
  const [message, setMessage] = useState<string | null>(null)
  if (air === undefined) return null
  const entries = Object.entries(fit.loops)
  const found = Object.fromEntries(entries.map(([id, { value }]) => [id, value]))
  const wanted = Object.fromEntries(
    entries.flatMap(([id, { targetMm }]) => (targetMm === null ? [] : [[id, targetMm]])),
  )
  const take = (name: string, loopsMm: Readonly<Record<string, number>>): void => {
    const open = fit.openLengthMm
    const offsets = Object.entries(fit.harmonicOffsetsCents).map(([n, { value }]) => [n, value] as const)
    const taken = {
      loopsMm,
      harmonicOffsetsCents: Object.fromEntries(offsets),
      ...(open === null ? {} : { fundamentalHz: fundamentalHz(speedOfSound(air), open.value) }),
    }
    setMessage(tryRun(takeIntoDesign(name, design.id, taken)))
  }
  return (
    <section className="takeFit" aria-label={readingsWords.take}>
      <h2>{readingsWords.takeInto(design.name)}</h2>
      <div className="jobButtons">
        <button type="button" onClick={() => take(readingsWords.foundStep, found)}>
          {readingsWords.found}
        </button>
        <button
          type="button"
          disabled={Object.keys(wanted).length === 0}
          onClick={() => take(readingsWords.wantedStep, wanted)}
        >
          {readingsWords.wanted}
        </button>
      </div>
      <p className="soft">{readingsWords.takeHint}</p>
      {fit.openLengthMm !== null && design.tuning?.kind === 'open' ? (
        <p className="soft">{readingsWords.tunedHint}</p>
      ) : null}
      {message === null ? null : (
        <p className="slip" role="alert">
          {message}
        </p>
      )}
    </section>
  )
}
