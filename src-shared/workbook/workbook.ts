import type { Air } from '../air/speedOfSound.ts'
import type { Reference } from '../pitch/reference.ts'
import type { ChosenFingering, Tuning } from '../tuning/instrument.ts'
import type { Fingering } from '../valves/fingering.ts'
import type { Loop, SlidePosition } from '../valves/loop.ts'
import type { Valve } from '../valves/valve.ts'
import type { Bench } from './bench.ts'
import type { Bore } from './bore.ts'

/** The version of the design file that this program writes. */
export const currentVersion = 1

/** What one file holds: targets, air, and the designs to be compared. Unknown keys are kept and written back. */
export interface Workbook {
  readonly format: 'ferrule'
  readonly version: typeof currentVersion
  readonly name: string
  readonly notes?: string
  readonly reference: Reference
  readonly air: WorkbookAir
  readonly designs: readonly Design[]
  readonly bench?: Bench
}

/** The design's air, and the temperature it is played at when that is another. */
export interface WorkbookAir extends Air {
  readonly playingTemperatureC?: number
}

/** One instrument with one valve system. */
export interface Design {
  readonly id: string
  readonly name: string
  readonly instrument: InstrumentData
  readonly valves: readonly Valve[]
  readonly loops: readonly Loop[]
  /** Player's choices by sounding midi number. */
  readonly chosen?: Readonly<Record<string, ChosenFingering>>
  readonly fingerings?: 'all' | readonly Fingering[]
  readonly mainSlide?: SlidePosition
  readonly tuning?: Tuning
  /** The open note set off its pitch on purpose, that the others come nearer; cents, sharp positive. */
  readonly openDetuningCents?: number
  /** Its acoustic bore, for the resonances. */
  readonly bore?: Bore
}

/** The open instrument as typed. */
export interface InstrumentData {
  /** Nominal harmonic 1 of the open route, Hz. */
  readonly fundamentalHz: number
  /** Physical centre line, mm. */
  readonly boreLengthMm?: number
  /** At the valves, mm. */
  readonly boreDiameterMm?: number
  /** Sounding minus written, semitones. */
  readonly transposition?: number
  /** First and last harmonic of the compass; 2 to 12 when absent. */
  readonly harmonics?: readonly [number, number]
  readonly harmonicOffsetsCents?: Readonly<Record<string, number>>
}

/** The compass when a design names none. */
export const defaultHarmonics: readonly [number, number] = [2, 12]
