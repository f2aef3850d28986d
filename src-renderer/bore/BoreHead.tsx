import type { ReactNode } from 'react'
import type { SliceReport } from '#shared/bore/slicing.ts'
import { plainFigure } from '#shared/quantity/figures.ts'
import type { Bore } from '#shared/workbook/bore.ts'
import { setBoreSetting } from '#shared/workbook/commands/boreCommands.ts'
import { playedAir } from '#shared/workbook/instrumentOf.ts'
import type { Design } from '#shared/workbook/workbook.ts'
import { useDialog } from '../dialogs/dialogStore.ts'
import { Segments } from '../fields/Choice.tsx'
import { NumberField } from '../fields/NumberField.tsx'
import { tryRun } from '../fields/refusal.ts'
import { run, useWorkbook } from '../state/workbookStore.ts'
import { boreWords } from '../words/bore.ts'

interface BoreHeadProps {
  readonly design: Design
  readonly bore: Bore
}

/** How the bore is reckoned: wave fronts, bell mouth, temperatures, and how finely it had to be cut. */
export function BoreHead({ design, bore }: BoreHeadProps): ReactNode {
  const air = useWorkbook((state) => state.workbook?.air)
  return (
    <div className="boreSettings">
      <h1>{boreWords.title}</h1>
      <span className="soft captionOf">{boreWords.ofDesign(design.name)}</span>
      <Segments
        label={boreWords.waveFronts}
        value={bore.waveFronts ?? 'spherical'}
        options={[
          { value: 'spherical', text: boreWords.spherical },
          { value: 'plane', text: boreWords.plane },
        ]}
        take={(value) => run(setBoreSetting(design.id, 'waveFronts', value))}
      />
      <Segments
        label={boreWords.mouth}
        mark="bellMouth"
        value={bore.mouth ?? 'unflanged'}
        options={[
          { value: 'unflanged', text: boreWords.unflanged },
          { value: 'open', text: boreWords.idealMouth },
        ]}
        take={(value) => run(setBoreSetting(design.id, 'mouth', value))}
      />
      {air === undefined ? null : (
        <button
          type="button"
          className="plainButton"
          title={boreWords.airHelp}
          onClick={() => useDialog.setState({ open: 'air' })}
        >
          {boreWords.air(plainFigure(playedAir(air).temperatureC, 1))}
        </button>
      )}
      <NumberField
        label={boreWords.bellTemperature}
        help={boreWords.bellTemperatureHelp}
        value={bore.bellTemperatureC ?? null}
        digits={1}
        units={['°C', 'C']}
        unit="°C"
        by={0.5}
        width={5}
        take={(value) => tryRun(setBoreSetting(design.id, 'bellTemperatureC', value))}
        clear={() => run(setBoreSetting(design.id, 'bellTemperatureC', undefined))}
      />
    </div>
  )
}

/** How finely the bore was cut, and what that leaves. */
export function Slices({ slicing }: { readonly slicing: SliceReport }): ReactNode {
  const error = plainFigure(slicing.errorHz, 3)
  return (
    <p className={slicing.met ? 'soft slices' : 'hot slices'}>
      {slicing.met ? boreWords.slices(slicing.slices, error) : boreWords.slicesUnmet(slicing.slices, error)}
    </p>
  )
}
