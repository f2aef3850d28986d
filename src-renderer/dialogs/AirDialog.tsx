import type { ReactNode } from 'react'
import { speedOfSound } from '#shared/air/speedOfSound.ts'
import { plainFigure, signedCents } from '#shared/quantity/figures.ts'
import { setAir } from '#shared/workbook/commands/workbookCommands.ts'
import { playedAir } from '#shared/workbook/instrumentOf.ts'
import { NumberField } from '../fields/NumberField.tsx'
import { tryRun } from '../fields/refusal.ts'
import { useWorkbook } from '../state/workbookStore.ts'
import { airDialogWords as words } from '../words/dialogs.ts'
import { Dialog } from './Dialog.tsx'
import { DoneButton } from './DoneButton.tsx'
import { closeDialog } from './dialogStore.ts'

/** The air of the workbook: what it is, what each value does to pitch, and the speed of sound it gives. */
export function AirDialog(): ReactNode {
  const air = useWorkbook((state) => state.workbook?.air)
  if (air === undefined) return null
  const speed = speedOfSound(air)
  const played = speedOfSound(playedAir(air))
  return (
    <Dialog title={words.title} onClose={closeDialog}>
      <div className="fields">
        <NumberField
          label={words.fields.temperature}
          value={air.temperatureC}
          digits={1}
          units={['°C', 'C']}
          unit="°C"
          by={0.5}
          take={(value) => tryRun(setAir('temperatureC', value))}
        />
        <p className="help soft">{words.temperatureText}</p>
        <NumberField
          label={words.fields.humidity}
          value={100 * air.relativeHumidity}
          digits={0}
          units={['%']}
          unit="%"
          by={5}
          take={(value) => tryRun(setAir('relativeHumidity', value / 100))}
        />
        <NumberField
          label={words.fields.carbonDioxide}
          value={1e6 * air.co2Fraction}
          digits={0}
          units={['ppm']}
          unit="ppm"
          by={100}
          take={(value) => tryRun(setAir('co2Fraction', value / 1e6))}
        />
        <p className="help soft">{words.breathText}</p>
        <NumberField
          label={words.fields.pressure}
          value={air.pressurePa / 100}
          digits={1}
          units={['hPa']}
          unit="hPa"
          by={1}
          take={(value) => tryRun(setAir('pressurePa', value * 100))}
        />
        <NumberField
          label={words.fields.playedAt}
          value={air.playingTemperatureC ?? null}
          digits={1}
          units={['°C', 'C']}
          unit="°C"
          by={0.5}
          help={words.playedHelp}
          take={(value) => tryRun(setAir('playingTemperatureC', value))}
          clear={() => tryRun(setAir('playingTemperatureC', undefined))}
        />
        <p className="help soft">{words.playedText}</p>
      </div>
      <p className="result">
        {words.speed} <b>{plainFigure(speed, 2)}</b> m/s
        {air.playingTemperatureC === undefined ? null : (
          <>
            {words.played} <b>{plainFigure(played, 2)}</b> m/s,{' '}
            <b>{signedCents(1200 * Math.log2(played / speed))}</b> {words.cents}
          </>
        )}
      </p>
      <DoneButton />
    </Dialog>
  )
}
