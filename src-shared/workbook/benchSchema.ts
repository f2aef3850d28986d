import * as z from 'zod'
import { a4Hz, harmonicNumber, lengthMm, named, numberWithin, text, valveIds } from './schemaParts.ts'

/** Most jobs in each list of the bench. */
export const mostJobs = 200
/** Most readings in one table. */
export const mostReadings = 400
const mostPairs = 5

const flag = z.boolean({ error: 'true or false' })
const centsOff = numberWithin(-1200, 1200, ' cents')
/** Which design and loop are meant is not checked here: they may have gone since the job was begun. */
const reference = named('an id')

const quarterRadiiMm = z.tuple([lengthMm, lengthMm], { error: 'two radii in mm' })

const furtherPair = z.looseObject(
  { returnSpacingMm: lengthMm, legSpacingMm: lengthMm, quarterRadiiMm: quarterRadiiMm.optional() },
  { error: 'a further pair of legs' },
)

const slide = z.looseObject(
  {
    id: named('a name of the slide'),
    design: reference,
    loop: reference,
    legSpacingMm: lengthMm,
    outerLegMm: lengthMm,
    knucklesMm: lengthMm,
    passagesMm: lengthMm,
    straightPassageMm: lengthMm,
    boreDiameterMm: lengthMm,
    wallMm: lengthMm.optional(),
    outAtPitchMm: lengthMm.optional(),
    travelMm: lengthMm.optional(),
    stopGapMm: lengthMm.optional(),
    leastEngagedMm: lengthMm.optional(),
    trimMm: lengthMm.optional(),
    densityGPerCm3: numberWithin(0.1, 30, ' g/cm³').optional(),
    bendCorrection: flag.optional(),
    toleranceMm: lengthMm.optional(),
    quarterRadiiMm: quarterRadiiMm.optional(),
    furtherPairs: z
      .array(furtherPair, { error: 'a list of further pairs of legs' })
      .max(mostPairs, `at most ${mostPairs} further pairs of legs`)
      .optional(),
    bowAtHandRadiusMm: lengthMm.optional(),
    notes: text.optional(),
  },
  { error: 'a slide' },
)

const reading = z.looseObject(
  { pressed: valveIds, harmonic: harmonicNumber, cents: centsOff, leaveOut: flag.optional() },
  { error: 'a reading' },
)

const readings = z.looseObject(
  {
    id: named('a name of the readings'),
    design: reference,
    a4Hz,
    rows: z
      .array(reading, { error: 'a list of readings' })
      .max(mostReadings, `at most ${mostReadings} readings`),
    readingErrorCents: numberWithin(0.01, 100, ' cents').optional(),
    openHeld: flag.optional(),
    offsetsHeld: flag.optional(),
    exactWanted: flag.optional(),
    notes: text.optional(),
  },
  { error: 'readings' },
)

const pitchChange = z.looseObject(
  {
    id: named('a name of the change'),
    design: reference,
    fromA4Hz: a4Hz,
    toA4Hz: a4Hz,
    notes: text.optional(),
  },
  { error: 'a change of pitch' },
)

function jobs<T extends z.ZodType>(job: T, what: string) {
  return z.array(job, { error: `a list of ${what}` }).max(mostJobs, `at most ${mostJobs} ${what}`)
}

/** The bench part of the design file: shapes and ranges. */
export const bench = z.looseObject(
  {
    slides: jobs(slide, 'slides').optional(),
    readings: jobs(readings, 'tables of readings').optional(),
    pitchChanges: jobs(pitchChange, 'changes of pitch').optional(),
  },
  { error: 'the bench part' },
)
