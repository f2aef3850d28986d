import { memo, type ReactNode } from 'react'
import { endCorrectionMm, fundamentalHz } from '#shared/tubing/openRoute.ts'
import {
  moveMainSlide,
  setHarmonicOffset,
  setInstrument,
  setMainSlidePosition,
} from '#shared/workbook/commands/designCommands.ts'
import { type Design, defaultHarmonics } from '#shared/workbook/workbook.ts'
import { LengthField } from '../fields/LengthField.tsx'
import { NumberField } from '../fields/NumberField.tsx'
import { tryRun } from '../fields/refusal.ts'
import { fieldWords } from '../words/fields.ts'
import { instrumentWords as words } from '../words/tubing.ts'

interface InstrumentFieldsProps {
  readonly designId: string
  readonly data: Design['instrument']
  readonly mainSlide: Design['mainSlide']
  readonly openMm: number
  readonly speedOfSoundMps: number
}

/**
 * The open instrument: what was typed, and what follows from it in a lighter hand. Drawn anew only when one of
 * these changes, not with every loop that is dragged.
 */
export const InstrumentFields = memo(function InstrumentFields(props: InstrumentFieldsProps): ReactNode {
  const { designId: id, data, mainSlide, openMm, speedOfSoundMps } = props
  return (
    <div className="fields">
      <NumberField
        label={words.fundamental}
        mark="fundamental"
        value={data.fundamentalHz}
        digits={2}
        units={['Hz']}
        unit="Hz"
        help={words.fundamentalHelp}
        take={(hz) => tryRun(setInstrument(id, 'fundamentalHz', hz))}
      />
      <LengthField
        label={words.length}
        mark="effectiveLength"
        derived
        lengthMm={openMm}
        help={words.lengthHelp}
        take={(mm) => {
          if (mm <= 0) return fieldWords.positiveLength
          return tryRun(setInstrument(id, 'fundamentalHz', fundamentalHz(speedOfSoundMps, mm)))
        }}
      />
      <LengthField
        label={words.boreLength}
        mark="bore"
        lengthMm={data.boreLengthMm ?? null}
        help={words.boreLengthHelp}
        clear={() => tryRun(setInstrument(id, 'boreLengthMm', undefined))}
        take={(mm) => tryRun(setInstrument(id, 'boreLengthMm', mm))}
      />
      {data.boreLengthMm === undefined ? null : (
        <LengthField
          label={words.ends}
          derived
          lengthMm={endCorrectionMm(openMm, data.boreLengthMm)}
          atLeast={-1e6}
          help={words.endsHelp}
          take={(mm) => tryRun(setInstrument(id, 'boreLengthMm', openMm - mm))}
        />
      )}
      <LengthField
        label={words.diameter}
        lengthMm={data.boreDiameterMm ?? null}
        digits={2}
        clear={() => tryRun(setInstrument(id, 'boreDiameterMm', undefined))}
        take={(mm) => tryRun(setInstrument(id, 'boreDiameterMm', mm))}
      />
      <details className="more">
        <summary>{words.more}</summary>
        <MoreFields designId={id} data={data} mainSlide={mainSlide} />
      </details>
    </div>
  )
})

function MoreFields({
  designId: id,
  data,
  mainSlide,
}: Pick<InstrumentFieldsProps, 'designId' | 'data' | 'mainSlide'>): ReactNode {
  const [first, last] = data.harmonics ?? defaultHarmonics
  const slide = mainSlide ?? { outMm: 0, travelMm: 0 }
  return (
    <>
      <NumberField
        label={words.transposition}
        value={data.transposition ?? 0}
        digits={0}
        unit={words.semitones}
        by={1}
        help={words.transpositionHelp}
        take={(value) => tryRun(setInstrument(id, 'transposition', value))}
      />
      <NumberField
        label={words.firstHarmonic}
        value={first}
        digits={0}
        by={1}
        take={(value) => tryRun(setInstrument(id, 'harmonics', [value, last]))}
      />
      <NumberField
        label={words.lastHarmonic}
        value={last}
        digits={0}
        by={1}
        take={(value) => tryRun(setInstrument(id, 'harmonics', [first, value]))}
      />
      <LengthField
        label={words.slideOut}
        lengthMm={mainSlide?.outMm ?? null}
        help={words.slideOutHelp}
        clear={() => tryRun(setMainSlidePosition(id, undefined))}
        take={(outMm) => tryRun(moveMainSlide(id, outMm))}
      />
      <LengthField
        label={words.slideTravel}
        lengthMm={mainSlide?.travelMm ?? null}
        clear={() => tryRun(setMainSlidePosition(id, undefined))}
        take={(travelMm) => tryRun(setMainSlidePosition(id, { ...slide, travelMm }))}
      />
      <h3>{words.offsets}</h3>
      <div className="offsets">
        {Array.from({ length: last - first + 1 }, (_, i) => first + i).map((harmonic) => (
          <NumberField
            key={harmonic}
            label={String(harmonic)}
            value={data.harmonicOffsetsCents?.[harmonic] ?? 0}
            digits={1}
            units={['cents']}
            by={1}
            width={5}
            take={(cents) => tryRun(setHarmonicOffset(id, harmonic, cents))}
          />
        ))}
      </div>
    </>
  )
}
