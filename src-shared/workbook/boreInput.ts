import { boreAirC } from '../bore/checkBore.ts'
import type { BoreFingering } from '../bore/fingeringModes.ts'
import { insertsOfLoops } from '../bore/fingeringModes.ts'
import { equalWeights } from '../bore/harmonicSum.ts'
import type { BoreRefusal } from '../bore/refusal.ts'
import type { BoreConditions, BoreSection, Insert } from '../bore/section.ts'
import { fingeringsOf, type NamedFingering, namedFingering } from '../valves/fingerings.ts'
import type { Loop } from '../valves/loop.ts'
import { loopsInRoute, type Routing, routeLengthMm, routing } from '../valves/route.ts'
import type { Valve } from '../valves/valve.ts'
import { type Bore, type BoreTarget, defaultTargets } from './bore.ts'
import { designOpenLengthMm, playedAir } from './instrumentOf.ts'
import type { Design, Workbook, WorkbookAir } from './workbook.ts'

/** All that the bore's calculations ask of a design: plain values that may be sent to a worker. */
export interface BoreInput {
  readonly sections: readonly BoreSection[]
  readonly conditions: BoreConditions
  /** The open route, whether it is among the design's fingerings or not. */
  readonly open: BoreFingering
  /** The design's fingerings, in its order. */
  readonly fingerings: readonly BoreFingering[]
  /** Every loop as it would go in, in the order of the valves. */
  readonly loops: readonly BoreLoop[]
  readonly fundamentalHz: number
  readonly targets: readonly BoreTarget[]
  readonly harmonicWeights: readonly number[]
}

/** A loop as the bore sees it, and its id in the design. */
export interface BoreLoop {
  readonly id: string
  readonly insert: Insert
}

/**
 * Unpacks a design's bore for calculation: the air as played, each fingering with its loops in the order of the
 * valves, every default filled in. The one place where a design's bore meets the calculations.
 *
 * The main slide is where the bore has it: a `tuning` of the design moves the length model's slide only, and intervals
 * from the open route hardly notice.
 *
 * @returns `null` for a design without a bore
 * @example boreInput(workbook, design)?.fingerings[1]?.inserts // [{ lengthMm: 486.5, diameterMm: 17.2 }]
 */
export function boreInput(workbook: Pick<Workbook, 'air'>, design: Design): BoreInput | null {
  const { bore } = design
  if (bore === undefined) return null
  const loops = inValveOrder(design)
  const system = routing(designOpenLengthMm(workbook, design), design.valves, loops)
  const diameterMm = valvesDiameterMm(bore)
  const inserts = insertsOfLoops(loops, diameterMm)
  const ready = (fingering: NamedFingering) => boreFingering(system, fingering, diameterMm)
  return {
    sections: bore.sections,
    conditions: boreConditions(workbook.air, bore),
    open: ready(namedFingering(design.valves, 0)),
    fingerings: fingeringsOf(design.valves, design.fingerings ?? 'all').map(ready),
    loops: loops.map(({ id }, i) => ({ id, insert: inserts[i]! })),
    fundamentalHz: design.instrument.fundamentalHz,
    targets: bore.targets ?? defaultTargets,
    harmonicWeights: bore.harmonicWeights ?? equalWeights,
  }
}

/**
 * How a design's bore is reckoned in the workbook's air. Its temperature, the playing one where there is one, is the mean
 * of the air column; the air at the lips is as much above it as the air at the bell is said to be below.
 *
 * @example boreConditions({ ...air, temperatureC: 24 }, { sections, bellTemperatureC: 20 }).temperatureC // 28
 */
export function boreConditions(air: WorkbookAir, bore: Bore): BoreConditions {
  const { temperatureC: meanC } = playedAir(air)
  const { waveFronts = 'spherical', mouth = 'unflanged', bellTemperatureC } = bore
  const shape = { waveFronts, mouth }
  if (bellTemperatureC === undefined) return { ...shape, temperatureC: meanC }
  return { ...shape, temperatureC: 2 * meanC - bellTemperatureC, bellTemperatureC }
}

/**
 * Bore at the valves, mm. A bore without a place for them, which the file's rules refuse, is a programmer's mistake.
 *
 * @example valvesDiameterMm({ sections: [{ kind: 'valves', diameterMm: 17.2 }] }) // 17.2
 */
export function valvesDiameterMm({ sections }: Pick<Bore, 'sections'>): number {
  const valves = sections.find(({ kind }) => kind === 'valves')
  if (valves?.kind !== 'valves') throw new Error('a bore without a place for the valves')
  return valves.diameterMm
}

/** Loops always in come first; a loop of several valves stands at the first of them. */
function inValveOrder({ valves, loops }: Design): readonly Loop[] {
  return loops.toSorted((a, b) => placeOf(valves, a) - placeOf(valves, b))
}

function placeOf(valves: readonly Valve[], { pressed, released = [] }: Loop): number {
  const switching = pressed.length > 0 ? pressed : released
  return valves.findIndex(({ id }) => switching.includes(id))
}

function boreFingering(system: Routing, { name, semitones, down }: NamedFingering, diameterMm: number) {
  return {
    fingering: name,
    semitones,
    inserts: insertsOfLoops(loopsInRoute(system, down), diameterMm),
    routeLengthMm: routeLengthMm(system, down),
  }
}

/**
 * A refusal of the bore's calculations with the path of the value in the file: the engine knows sections, inserts and
 * temperatures, a person knows the design's.
 *
 * @param at the design's path
 * @example refusalInFile({ path: 'sections[3].lengthMm', found: '-1', expected: '…' }, air, bore, 'designs[0]').path
 */
export function refusalInFile(refusal: BoreRefusal, air: WorkbookAir, bore: Bore, at: string): BoreRefusal {
  const { path } = refusal
  if (path === 'temperatureC') return refusalAtLips(refusal, air, bore, at)
  if (path.startsWith('inserts')) return { ...refusal, path: `${at}.loops` }
  return { ...refusal, path: `${at}.bore.${path}` }
}

/** The air at the lips follows from the mean and the bell: the bell is named where the mean by itself would do. */
function refusalAtLips(refusal: BoreRefusal, air: WorkbookAir, bore: Bore, at: string): BoreRefusal {
  const { temperatureC: meanC } = playedAir(air)
  const { coldest, warmest } = boreAirC
  const { bellTemperatureC } = bore
  if (bellTemperatureC === undefined || meanC < coldest || meanC > warmest) {
    const path = air.playingTemperatureC === undefined ? 'air.temperatureC' : 'air.playingTemperatureC'
    return { ...refusal, path, found: String(meanC) }
  }
  const lowC = Math.ceil(100 * Math.max(coldest, 2 * meanC - warmest)) / 100
  const highC = Math.floor(100 * Math.min(warmest, 2 * meanC - coldest)) / 100
  const because = `the air at the lips is as far from the mean of ${meanC} °C`
  return {
    path: `${at}.bore.bellTemperatureC`,
    found: String(bellTemperatureC),
    expected: `a temperature from ${lowC} to ${highC} °C: ${because}`,
  }
}
