import type { ReactNode } from 'react'
import { usualReadingErrorCents } from '#shared/bench/readings/reading.ts'
import type { BenchReadings } from '#shared/workbook/bench.ts'
import { setJob } from '#shared/workbook/commands/benchCommands.ts'
import { NumberField } from '../../fields/NumberField.tsx'
import { tryRun } from '../../fields/refusal.ts'
import { run } from '../../state/workbookStore.ts'
import { readingsWords } from '../../words/benchReadings.ts'
import { A4Field } from '../A4Field.tsx'
import { DesignChoice } from '../DesignChoice.tsx'

/** What holds for all readings of a table. */
export function ReadingsFields({ readings }: { readonly readings: BenchReadings }): ReactNode {
  const { id } = readings
  return (
    <div className="fields">
      <DesignChoice
        designId={readings.design}
        take={(design) => run(setJob('readings', id, 'design', design, readingsWords.designStep))}
      />
      <A4Field
        label={readingsWords.tunerA4}
        a4Hz={readings.a4Hz}
        help={readingsWords.tunerA4Help}
        take={(a4Hz) => tryRun(setJob('readings', id, 'a4Hz', a4Hz, readingsWords.tunerA4Step))}
      />
      <NumberField
        label={readingsWords.error}
        value={readings.readingErrorCents ?? usualReadingErrorCents}
        digits={1}
        atLeast={0.1}
        atMost={100}
        units={['cents']}
        unit="cents"
        by={0.5}
        width={5}
        help={readingsWords.errorHelp}
        take={(value) => tryRun(setJob('readings', id, 'readingErrorCents', value, readingsWords.errorStep))}
      />
      <Known
        text={readingsWords.openHeld}
        on={readings.openHeld === true}
        take={(on) => run(setJob('readings', id, 'openHeld', on || undefined, readingsWords.openHeldStep))}
      />
      <Known
        text={readingsWords.offsetsHeld}
        on={readings.offsetsHeld === true}
        take={(on) =>
          run(setJob('readings', id, 'offsetsHeld', on || undefined, readingsWords.offsetsHeldStep))
        }
      />
      <Known
        text={readingsWords.exactWanted}
        help={readingsWords.exactWantedHelp}
        on={readings.exactWanted === true}
        take={(on) =>
          run(setJob('readings', id, 'exactWanted', on || undefined, readingsWords.exactWantedStep))
        }
      />
    </div>
  )
}

interface KnownProps {
  readonly text: string
  readonly help?: string
  readonly on: boolean
  readonly take: (on: boolean) => void
}

function Known({ text, help, on, take }: KnownProps): ReactNode {
  return (
    <label className="known" title={help}>
      <input type="checkbox" checked={on} onChange={(event) => take(event.target.checked)} /> {text}
    </label>
  )
}
