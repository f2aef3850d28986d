import { type ReactNode, useState } from 'react'
import type { PitchChangeAnswer } from '#shared/bench/pitchChange.ts'
import { takeIntoDesign } from '#shared/workbook/commands/takeIntoDesign.ts'
import type { Design } from '#shared/workbook/workbook.ts'
import { tryRun } from '../../fields/refusal.ts'
import { pitchWords } from '../../words/benchPitch.ts'

interface TakeChangeProps {
  readonly design: Design
  readonly answer: PitchChangeAnswer
  readonly toA4Hz: number
}

/** Takes the new lengths, body and loops, into the design as one step. */
export function TakeChange({ design, answer, toA4Hz }: TakeChangeProps): ReactNode {
  const [message, setMessage] = useState<string | null>(null)
  const take = (): void => {
    const { fundamentalHz, boreLengthMm } = design.instrument
    const loops = design.loops.map(({ id, lengthMm }) => [id, lengthMm * answer.ratio] as const)
    const taken = {
      loopsMm: Object.fromEntries(loops),
      fundamentalHz: fundamentalHz / answer.ratio,
      ...(boreLengthMm === undefined ? {} : { boreLengthMm: boreLengthMm + answer.body.tubeMm }),
    }
    setMessage(tryRun(takeIntoDesign(pitchWords.takeStep, design.id, taken)))
  }
  return (
    <>
      <button
        type="button"
        disabled={answer.ratio === 1}
        title={pitchWords.takeHelp(design.name, toA4Hz)}
        onClick={take}
      >
        {pitchWords.take}
      </button>
      {message === null ? null : (
        <p className="slip" role="alert">
          {message}
        </p>
      )}
    </>
  )
}
