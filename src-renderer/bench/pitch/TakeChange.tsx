import { type ReactNode, useState } from 'react'
import type { PitchChangeAnswer } from '#shared/bench/pitchChange.ts'
import type { BenchPitchChange } from '#shared/workbook/bench.ts'
import { takeIntoDesign } from '#shared/workbook/commands/takeIntoDesign.ts'
import type { Design } from '#shared/workbook/workbook.ts'
import { tryRun } from '../../fields/refusal.ts'
import { presentDesign } from '../../state/workbookStore.ts'
import { pitchWords } from '../../words/benchPitch.ts'
import { useBench } from '../benchStore.ts'

interface TakeChangeProps {
  readonly design: Design
  readonly answer: PitchChangeAnswer
  readonly change: BenchPitchChange
  /** Whether the design has it already. */
  readonly isTaken: boolean
}

/** Takes the new lengths, body and loops, into the design as one step, and only once. */
export function TakeChange({ design, answer, change, isTaken }: TakeChangeProps): ReactNode {
  const [message, setMessage] = useState<string | null>(null)
  const take = (): void => {
    const { fundamentalHz, boreLengthMm } = design.instrument
    const loops = design.loops.map(({ id, lengthMm }) => [id, lengthMm * answer.ratio] as const)
    const taken = {
      loopsMm: Object.fromEntries(loops),
      fundamentalHz: fundamentalHz / answer.ratio,
      ...(boreLengthMm === undefined ? {} : { boreLengthMm: boreLengthMm + answer.body.tubeMm }),
    }
    const refused = tryRun(takeIntoDesign(pitchWords.takeStep, design.id, taken))
    setMessage(refused)
    const after = presentDesign(design.id)
    if (refused !== null || after === undefined) return
    const { fromA4Hz, toA4Hz } = change
    useBench.setState(({ taken: earlier }) => ({
      taken: [{ fromA4Hz, toA4Hz, before: design, after }, ...earlier],
    }))
  }
  return (
    <>
      <button
        type="button"
        disabled={answer.ratio === 1 || isTaken}
        title={pitchWords.takeHelp(design.name, change.toA4Hz)}
        onClick={take}
      >
        {pitchWords.take}
      </button>
      {isTaken ? <p role="status">{pitchWords.taken}</p> : null}
      {message === null ? null : (
        <p className="slip" role="alert">
          {message}
        </p>
      )}
    </>
  )
}
