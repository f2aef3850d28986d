import type { Workbook } from './workbook.ts'

/** The order in which the known keys of an object are written, with the order inside them; null where there is none. */
export interface KeyOrder {
  readonly [key: string]: KeyOrder | null
}

const slide: KeyOrder = { outMm: null, travelMm: null }
const fingering: KeyOrder = { pressed: null, semitones: null }
const bench: KeyOrder = {
  slides: {
    id: null,
    design: null,
    loop: null,
    legSpacingMm: null,
    outerLegMm: null,
    knucklesMm: null,
    passagesMm: null,
    straightPassageMm: null,
    boreDiameterMm: null,
    wallMm: null,
    outAtPitchMm: null,
    travelMm: null,
    stopGapMm: null,
    leastEngagedMm: null,
    trimMm: null,
    densityGPerCm3: null,
    bendCorrection: null,
    toleranceMm: null,
    quarterRadiiMm: null,
    furtherPairs: { returnSpacingMm: null, legSpacingMm: null, quarterRadiiMm: null },
    bowAtHandRadiusMm: null,
    notes: null,
  },
  readings: {
    id: null,
    design: null,
    a4Hz: null,
    rows: { pressed: null, harmonic: null, cents: null, leaveOut: null },
    readingErrorCents: null,
    openHeld: null,
    offsetsHeld: null,
    exactWanted: null,
    notes: null,
  },
  pitchChanges: { id: null, design: null, fromA4Hz: null, toA4Hz: null, notes: null },
}
const bore: KeyOrder = {
  waveFronts: null,
  mouth: null,
  bellTemperatureC: null,
  sections: {
    kind: null,
    name: null,
    lengthMm: null,
    diameterMm: null,
    startDiameterMm: null,
    endDiameterMm: null,
    flare: null,
    volumeMm3: null,
    points: null,
  },
  targets: { mode: null, cents: null, weight: null },
  harmonicWeights: null,
}
/** The order of every key that the schema knows. Entries kept by note or harmonic number stay as they came. */
export const keyOrder: KeyOrder = {
  format: null,
  version: null,
  name: null,
  notes: null,
  reference: { a4Hz: null, temperament: { kind: null, key: null, cents: null } },
  air: {
    temperatureC: null,
    relativeHumidity: null,
    co2Fraction: null,
    pressurePa: null,
    playingTemperatureC: null,
  },
  designs: {
    id: null,
    name: null,
    instrument: {
      fundamentalHz: null,
      boreLengthMm: null,
      boreDiameterMm: null,
      transposition: null,
      harmonics: null,
      harmonicOffsetsCents: null,
    },
    valves: { id: null, semitones: null },
    loops: {
      id: null,
      name: null,
      lengthMm: null,
      pressed: null,
      released: null,
      diameterMm: null,
      bendRadiusMm: null,
      slide,
    },
    chosen: null,
    fingerings: fingering,
    mainSlide: slide,
    tuning: { kind: null, harmonic: null },
    openDetuningCents: null,
    bore,
  },
  bench,
}

/**
 * The text of a design file: UTF-8 JSON, two-space indentation, known keys in a fixed order and unknown ones
 * after them as they came, so that files can be compared line by line.
 */
export function writeWorkbook(workbook: Workbook): string {
  return `${JSON.stringify(inOrder(workbook, keyOrder), null, 2)}\n`
}

/** The same value with its keys in order; a list's items share their list's order. */
function inOrder(value: unknown, keys: KeyOrder | null): unknown {
  if (Array.isArray(value)) return value.map((item) => inOrder(item, keys))
  if (value === null || typeof value !== 'object' || keys === null) return value
  const record = value as Readonly<Record<string, unknown>>
  const known = Object.keys(keys).filter((key) => Object.hasOwn(record, key))
  const unknown = Object.keys(record).filter((key) => !Object.hasOwn(keys, key))
  // `fromEntries` defines keys, so that one named `__proto__` stays a key.
  return Object.fromEntries(
    [...known, ...unknown].map((key) => [
      key,
      inOrder(record[key], known.includes(key) ? (keys[key] ?? null) : null),
    ]),
  )
}
