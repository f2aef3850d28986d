import type { PitchChange } from '../bench/pitchChange.ts'
import { placeReading } from '../bench/readings/placeReading.ts'
import type { Reading, ReadingsJob } from '../bench/readings/reading.ts'
import { type SlideJob, slideDefaults } from '../bench/slide/slide.ts'
import { setMainSlide } from '../tuning/mainSlide.ts'
import { fingeringsOf } from '../valves/fingerings.ts'
import type { Loop } from '../valves/loop.ts'
import { bitsOf, routeLengthMm, routing } from '../valves/route.ts'
import type { BenchPitchChange, BenchReading, BenchReadings, BenchSlide } from './bench.ts'
import { instrumentOf } from './instrumentOf.ts'
import type { Design, Workbook } from './workbook.ts'

/** A job that names a design or a loop which is not, or no longer, in the workbook. */
export interface Unplaced {
  readonly kind: 'unplaced'
  readonly field: 'design' | 'loop'
  readonly found: string
  readonly expected: string
  readonly message: string
}

/** A job made ready for the bench, with the design it belongs to. */
export interface Placed<Job> {
  readonly kind: 'placed'
  readonly design: Design
  readonly job: Job
}

/**
 * A slide of the workbook as a job for the bench: its loop's length is the target, and the route is the one in
 * which the loop's own valves are down, the main slide set as the design has it.
 *
 * @example slideJobOf(workbook, workbook.bench.slides[0]) // { kind: 'placed', job: { targetMm: 265, … } }
 */
export function slideJobOf(
  workbook: Workbook,
  slide: BenchSlide,
): (Placed<SlideJob> & { readonly loop: Loop }) | Unplaced {
  const design = designOf(workbook, slide.design)
  if ('kind' in design) return design
  const loop = design.loops.find(({ id }) => id === slide.loop)
  if (loop === undefined) return unplaced('loop', slide.loop, design.loops, `no loop of ${design.name}`)
  const { openMm } = setMainSlide(instrumentOf(workbook, design))
  const system = routing(openMm, design.valves, design.loops)
  const routeMm = routeLengthMm(system, bitsOf(system, loop.pressed))
  const job = { ...slideDefaults, ...partsOf(slide), targetMm: loop.lengthMm, routeLengthMm: routeMm }
  return { kind: 'placed', design, loop, job }
}

/**
 * Readings of the workbook as a job for the bench: in the air that the instrument is played with, against equal
 * temperament at the tuner's A4, the loops wanted as the design has them, in proportion to the open length found:
 * a loop that is long on purpose, for the company it keeps, stays so. Readings that say so want each exact instead.
 *
 * @example readingsJobOf(workbook, workbook.bench.readings[0])
 */
export function readingsJobOf(workbook: Workbook, readings: BenchReadings): Placed<ReadingsJob> | Unplaced {
  const design = designOf(workbook, readings.design)
  if ('kind' in design) return design
  const instrument = instrumentOf(workbook, design)
  const { openHeld, offsetsHeld, readingErrorCents } = readings
  const { openMm } = setMainSlide({ ...instrument, tuning: { kind: 'none' } })
  const job = {
    valves: design.valves,
    fingerings: instrument.fingerings,
    loops: design.loops.map((loop) => ({
      ...knownOf(loop),
      ...(readings.exactWanted === true ? {} : { wantedFraction: loop.lengthMm / openMm }),
    })),
    readings: readings.rows.map((row) => readingOf(workbook, design, row, readings.a4Hz)),
    openLengthMm: openMm,
    speedOfSoundMPerS: instrument.playedSpeedOfSoundMps,
    harmonicOffsetsCents: instrument.harmonicOffsetsCents,
    ...(openHeld === undefined ? {} : { openHeld }),
    ...(offsetsHeld === undefined ? {} : { offsetsHeld }),
    ...(readingErrorCents === undefined ? {} : { readingErrorCents }),
  }
  return { kind: 'placed', design, job }
}

/**
 * A change of pitch of the workbook as a job for the bench, for every fingering that the design uses. The open
 * length is the design's own, taken as that of the old pitch.
 *
 * @example pitchChangeOf(workbook, workbook.bench.pitchChanges[0])
 */
export function pitchChangeOf(workbook: Workbook, change: BenchPitchChange): Placed<PitchChange> | Unplaced {
  const design = designOf(workbook, change.design)
  if ('kind' in design) return design
  const instrument = instrumentOf(workbook, design)
  const job = {
    fromHz: change.fromA4Hz,
    toHz: change.toA4Hz,
    openLengthMm: setMainSlide({ ...instrument, tuning: { kind: 'none' } }).nominalOpenMm,
    valves: design.valves,
    loops: design.loops,
    fingerings: fingeringsOf(design.valves, instrument.fingerings),
  }
  return { kind: 'placed', design, job }
}

/** What a slide of the file says of its parts. Keys that the file is not known to have are none of the bench's. */
function partsOf(slide: BenchSlide): Omit<BenchSlide, 'id' | 'design' | 'loop' | 'notes'> {
  const { legSpacingMm, outerLegMm, knucklesMm, passagesMm, straightPassageMm, boreDiameterMm } = slide
  return {
    legSpacingMm,
    outerLegMm,
    knucklesMm,
    passagesMm,
    straightPassageMm,
    boreDiameterMm,
    ...pick(slide, [
      'wallMm',
      'outAtPitchMm',
      'travelMm',
      'stopGapMm',
      'leastEngagedMm',
      'trimMm',
      'densityGPerCm3',
      'bendCorrection',
      'toleranceMm',
      'quarterRadiiMm',
      'furtherPairs',
      'bowAtHandRadiusMm',
    ]),
  }
}

/** A loop of the file without keys that the file is not known to have. */
function knownOf(loop: Loop): Loop {
  const { id, lengthMm, pressed } = loop
  return { id, lengthMm, pressed, ...pick(loop, ['name', 'released', 'diameterMm', 'bendRadiusMm', 'slide']) }
}

/** Those of some keys that are there. */
function pick<Whole extends object, Key extends keyof Whole>(
  whole: Whole,
  keys: readonly Key[],
): Partial<Pick<Whole, Key>> {
  return Object.fromEntries(
    keys.flatMap((key) => (whole[key] === undefined ? [] : [[key, whole[key]]])),
  ) as Partial<Pick<Whole, Key>>
}

/** A reading with its target; valves in the design's order, unknown ones behind them for the fit to refuse. */
function readingOf(workbook: Workbook, design: Design, row: BenchReading, tunerA4Hz: number): Reading {
  const known = design.valves.map(({ id }) => id)
  const pressed = [
    ...known.filter((id) => row.pressed.includes(id)),
    ...row.pressed.filter((id) => !known.includes(id)),
  ]
  const { fundamentalHz } = design.instrument
  const { valves, fingerings = 'all' } = design
  const open = { fundamentalHz, a4Hz: workbook.reference.a4Hz }
  const context = { valves, fingerings, open, tunerA4Hz, transposition: 0 }
  const at = { kind: 'harmonic', harmonic: row.harmonic } as const
  const placed = placeReading({ pressed, at, cents: row.cents }, context, 'reading')
  if ('field' in placed) throw new Error('a harmonic is always placed')
  return row.leaveOut === true ? { ...placed, leaveOut: true } : placed
}

function designOf(workbook: Workbook, id: string): Design | Unplaced {
  const design = workbook.designs.find((each) => each.id === id)
  return design ?? unplaced('design', id, workbook.designs, 'no design of this workbook')
}

function unplaced(
  field: Unplaced['field'],
  found: string,
  known: readonly { readonly id: string }[],
  what: string,
): Unplaced {
  const expected =
    known.length === 0 ? `a ${field}, but there is none` : `one of ${known.map(({ id }) => id).join(', ')}`
  return { kind: 'unplaced', field, found, expected, message: `“${found}” is ${what}; expected ${expected}.` }
}
