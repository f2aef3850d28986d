import { speedOfSound } from '../air/speedOfSound.ts'
import { openLengthMm } from '../tubing/openRoute.ts'
import type { Instrument } from '../tuning/instrument.ts'
import { type Design, defaultHarmonics, type Workbook, type WorkbookAir } from './workbook.ts'

/**
 * Unpacks a design for calculation: its own values with every default filled in, and the workbook's air and
 * targets. The one place where a design file meets the calculations.
 */
export function instrumentOf(workbook: Pick<Workbook, 'air' | 'reference'>, design: Design): Instrument {
  const { instrument } = design
  return {
    fundamentalHz: instrument.fundamentalHz,
    speedOfSoundMps: speedOfSound(workbook.air),
    playedSpeedOfSoundMps: speedOfSound(playedAir(workbook.air)),
    valves: design.valves,
    loops: design.loops,
    fingerings: design.fingerings ?? 'all',
    harmonics: instrument.harmonics ?? defaultHarmonics,
    harmonicOffsetsCents: instrument.harmonicOffsetsCents ?? {},
    transposition: instrument.transposition ?? 0,
    chosen: design.chosen ?? {},
    tuning: design.tuning ?? { kind: 'none' },
    openDetuningCents: design.openDetuningCents ?? 0,
    mainSlide: design.mainSlide ?? null,
    reference: workbook.reference,
  }
}

/** The air the instruments are played with: the design's air at the playing temperature, where one is given. */
export function playedAir(air: WorkbookAir): WorkbookAir {
  return air.playingTemperatureC === undefined ? air : { ...air, temperatureC: air.playingTemperatureC }
}

/** Effective open length of a design as drawn, mm, before the main slide is set. */
export function designOpenLengthMm(workbook: Pick<Workbook, 'air'>, design: Design): number {
  return openLengthMm(speedOfSound(workbook.air), design.instrument.fundamentalHz)
}
