import { slideDefaults } from '../bench/slide/slide.ts'
import type { Loop } from '../valves/loop.ts'
import type { BenchPitchChange, BenchReadings, BenchSlide } from './bench.ts'
import type { Design, Workbook } from './workbook.ts'

/** A bore at the valves where neither loop nor design names one, mm. */
const usualBoreMm = 11.7
/** Longest outer leg that a new slide starts with unless its travel asks for more, mm. */
const usualLegMm = 60

/**
 * A slide to start from, for a loop: bore and travel as the design has them, the rest proportioned to the bore so
 * that it can usually be built, every value to be measured and typed over.
 *
 * @example newSlide('third slide', design, loop).boreDiameterMm // 17.2
 */
export function newSlide(id: string, design: Design, loop: Loop): BenchSlide {
  const boreDiameterMm = loop.diameterMm ?? design.instrument.boreDiameterMm ?? usualBoreMm
  const valve = {
    knucklesMm: Math.round(1.2 * boreDiameterMm),
    passagesMm: Math.round(1.8 * boreDiameterMm),
    straightPassageMm: Math.round(0.9 * boreDiameterMm),
  }
  const { wallMm, stopGapMm, leastEngagedMm, trimMm, densityGPerCm3, bendCorrection, toleranceMm } =
    slideDefaults
  const legSpacingMm = Math.round(2.2 * boreDiameterMm)
  const valveMm = valve.knucklesMm + valve.passagesMm - valve.straightPassageMm
  const outAtPitchMm = loop.slide?.outMm ?? slideDefaults.outAtPitchMm
  const forLegsMm = loop.lengthMm - valveMm - (Math.PI / 2) * legSpacingMm - 2 * outAtPitchMm
  const forTravelMm = (loop.slide?.travelMm ?? 0) + stopGapMm + leastEngagedMm
  const outerLegMm = Math.max(1, Math.min(Math.max(usualLegMm, forTravelMm), Math.floor(forLegsMm / 2)))
  const mostTravelMm = Math.max(0, outerLegMm - stopGapMm - leastEngagedMm)
  const travelMm = loop.slide?.travelMm ?? Math.min(slideDefaults.travelMm, mostTravelMm)
  return {
    id,
    design: design.id,
    loop: loop.id,
    legSpacingMm,
    outerLegMm,
    ...valve,
    boreDiameterMm,
    wallMm,
    outAtPitchMm: Math.min(outAtPitchMm, travelMm),
    travelMm,
    stopGapMm,
    leastEngagedMm,
    trimMm,
    densityGPerCm3,
    bendCorrection,
    toleranceMm,
  }
}

/** An empty table of readings of a design, the tuner at the workbook's A4. */
export function newReadings(id: string, workbook: Workbook, design: Design): BenchReadings {
  return { id, design: design.id, a4Hz: workbook.reference.a4Hz, rows: [] }
}

/** A change of a design's pitch, to start from: high pitch down to the workbook's A4. */
export function newPitchChange(id: string, workbook: Workbook, design: Design): BenchPitchChange {
  const toA4Hz = workbook.reference.a4Hz
  return { id, design: design.id, fromA4Hz: toA4Hz < 452.5 ? 452.5 : 440, toA4Hz }
}

/**
 * A name that no job of a list has yet: a number behind it when it is taken.
 *
 * @example freshJobName('third slide', ['third slide']) // 'third slide 2'
 */
export function freshJobName(name: string, taken: readonly string[]): string {
  const stem = name.slice(0, 50)
  if (!taken.includes(stem)) return stem
  let number = 2
  while (taken.includes(`${stem} ${number}`)) number++
  return `${stem} ${number}`
}

/**
 * What a job is called once it is of something else: a name that only said what it was of, perhaps with a number,
 * goes along; one of its own stays.
 *
 * @example nameGoingAlong('to 440', 'to 440', 'to 442', ['to 440', 'to 442']) // 'to 442 2'
 */
export function nameGoingAlong(name: string, said: string, says: string, jobs: readonly string[]): string {
  const others = jobs.filter((other) => other !== name)
  return name === said || numbered(name, said) ? freshJobName(says, others) : name
}

function numbered(name: string, stem: string): boolean {
  return name.startsWith(`${stem} `) && /^\d+$/.test(name.slice(stem.length + 1))
}
