import { memo, type ReactNode } from 'react'
import { a4Slip } from '#shared/bench/slips/pitchSlips.ts'
import { noteName } from '#shared/pitch/noteName.ts'
import { centsFrom440 } from '#shared/pitch/reference.ts'
import type { Temperament } from '#shared/pitch/temperament.ts'
import { briefFigure, plainFigure, signedCents } from '#shared/quantity/figures.ts'
import type { Tuning } from '#shared/tuning/instrument.ts'
import { setA4, setTemperament, setTuning } from '#shared/workbook/commands/workbookCommands.ts'
import type { WorkbookAir } from '#shared/workbook/workbook.ts'
import { useDialog } from '../dialogs/dialogStore.ts'
import { Actions } from '../fields/Actions.tsx'
import { Choice } from '../fields/Choice.tsx'
import { NumberField } from '../fields/NumberField.tsx'
import { tryRun } from '../fields/refusal.ts'
import { Mark } from '../help/Mark.tsx'
import { useSelectedDesign } from '../state/derived.ts'
import { useSettings } from '../state/settings.ts'
import { run, useWorkbook } from '../state/workbookStore.ts'
import { targetWords as words } from '../words/strip.ts'

const pitchStandards = [440, 442, 443, 452.5, 435, 430, 415]

/** What everything is measured against: reference pitch, temperament, air, tuning note. */
export function Targets(): ReactNode {
  const reference = useWorkbook((state) => state.workbook?.reference)
  const air = useWorkbook((state) => state.workbook?.air)
  if (reference === undefined || air === undefined) return null
  return (
    <section className="targets" aria-label={words.targets}>
      <PitchChoice a4Hz={reference.a4Hz} />
      <TemperamentChoice temperament={reference.temperament} />
      <span className="together">
        <button type="button" className="plainButton" onClick={() => useDialog.setState({ open: 'air' })}>
          <span className="soft">{words.air}</span> {airText(air)}
        </button>
        <Mark id="air" />
      </span>
      <TuningChoice />
    </section>
  )
}

function PitchChoice({ a4Hz }: { readonly a4Hz: number }): ReactNode {
  return (
    <span className="together">
      <NumberField
        label={words.a4}
        mark="a4"
        value={a4Hz}
        digits={1}
        units={['Hz']}
        unit="Hz"
        by={0.5}
        width={6}
        help={words.a4Help}
        take={(hz) => a4Slip(words.a4, hz)?.message ?? tryRun(setA4(hz))}
      />
      <Actions
        label={words.standards}
        text="▾"
        items={pitchStandards.map((hz) => ({
          text: words.standard(plainFigure(hz, hz % 1 === 0 ? 0 : 1)),
          keys: hz === 440 ? '' : signedCents(centsFrom440(hz)),
          act: () => run(setA4(hz)),
        }))}
      />
    </span>
  )
}

function airText(air: WorkbookAir): string {
  const { playingTemperatureC } = air
  const degrees = (value: number): string => briefFigure(value, 1)
  const played = playingTemperatureC === undefined ? null : degrees(playingTemperatureC)
  return words.airOf(degrees(air.temperatureC), plainFigure(100 * air.relativeHumidity, 0), played)
}

const kinds = (['equal', 'just', 'pythagorean', 'meantone', 'custom'] as const).map((value) => ({
  value,
  text: words.temperaments[value],
}))

const TemperamentChoice = memo(function TemperamentChoice({
  temperament,
}: {
  readonly temperament: Temperament
}): ReactNode {
  const spelling = useSettings((settings) => settings.spelling)
  const key = 'key' in temperament ? temperament.key : 'C'
  return (
    <span className="together">
      <Choice
        label={words.temperament}
        mark="temperament"
        value={temperament.kind}
        options={kinds}
        take={(kind) => {
          if (kind === 'equal') run(setTemperament({ kind }))
          else if (kind === 'custom') {
            run(setTemperament({ kind, cents: Array<number>(12).fill(0) }))
            useDialog.setState({ open: 'temperament' })
          } else run(setTemperament({ kind, key }))
        }}
      />
      {temperament.kind === 'custom' ? (
        <button
          type="button"
          className="plainButton"
          onClick={() => useDialog.setState({ open: 'temperament' })}
        >
          {words.edit}
        </button>
      ) : null}
      {'key' in temperament ? (
        <Choice
          label={words.on}
          value={key}
          options={keyOptions(spelling, key)}
          take={(next) => run(setTemperament({ ...temperament, key: next }))}
        />
      ) : null}
    </span>
  )
})

function keyOptions(
  spelling: 'sharps' | 'flats',
  present: string,
): readonly { value: string; text: string }[] {
  const names = Array.from({ length: 12 }, (_, i) => noteName(60 + i, spelling).replace(/\d+$/, ''))
  const all = names.includes(present) ? names : [present, ...names]
  return all.map((name) => ({ value: name, text: name }))
}

function TuningChoice(): ReactNode {
  const selected = useSelectedDesign()
  if (selected === null) return null
  const { movementMm, midi } = selected.tables.mainSlide
  return (
    <MainSlideChoice
      tuning={selected.design.tuning}
      last={selected.instrument.harmonics[1]}
      movementMm={movementMm}
      midi={midi}
    />
  )
}

interface MainSlideChoiceProps {
  readonly tuning: Tuning | undefined
  /** The last harmonic of the compass. */
  readonly last: number
  readonly movementMm: number
  readonly midi: number | null
}

const MainSlideChoice = memo(function MainSlideChoice(props: MainSlideChoiceProps): ReactNode {
  const { tuning = { kind: 'none' }, last, movementMm, midi } = props
  const spelling = useSettings((settings) => settings.spelling)
  const numbers = Array.from({ length: Math.max(8, last) }, (_, i) => i + 1)
  return (
    <span className="together">
      <Choice
        label={words.mainSlide}
        mark="mainSlide"
        value={tuning.kind === 'none' ? 'none' : String(tuning.harmonic)}
        options={[
          { value: 'none', text: words.asDrawn },
          ...numbers.map((harmonic) => ({ value: String(harmonic), text: words.tunedOn(harmonic) })),
        ]}
        take={(value) => run(setTuning(tuningOf(value)))}
      />
      {midi === null ? null : (
        <span className="soft" title={words.movementHelp}>
          {noteName(midi, spelling)}
          {movementText(movementMm)}
        </span>
      )}
    </span>
  )
})

function movementText(movementMm: number): string {
  if (Math.abs(movementMm) < 0.05) return ''
  return (movementMm < 0 ? words.slideIn : words.slideOut)(plainFigure(Math.abs(movementMm), 1))
}

function tuningOf(value: string): Tuning {
  return value === 'none' ? { kind: 'none' } : { kind: 'open', harmonic: Number(value) }
}
