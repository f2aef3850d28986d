import * as z from 'zod'
import { bench } from './benchSchema.ts'
import { bore } from './boreSchema.ts'
import {
  a4Hz,
  diameterMm,
  harmonicNumber,
  lengthMm,
  mostValves,
  named,
  numberWithin,
  text,
  valveId,
  valveIds,
  wholeWithin,
} from './schemaParts.ts'

/** The most loops a design may have in the file. */
export const mostLoops = 200
/** The most designs a workbook may have in the file. */
export const mostDesigns = 100

const slidePosition = z.looseObject(
  { outMm: lengthMm, travelMm: lengthMm },
  { error: 'a slide: outMm and travelMm' },
)

const temperamentKey = z
  .string({ error: 'a key note, C to B' })
  .regex(/^[A-Ga-g](?:[#♯b♭]?)$/u, 'a key note, C to B, with ♯ or ♭ if need be')

const temperament = z.discriminatedUnion(
  'kind',
  [
    z.looseObject({ kind: z.literal('equal') }),
    z.looseObject({ kind: z.enum(['just', 'pythagorean', 'meantone']), key: temperamentKey }),
    z.looseObject({
      kind: z.literal('custom'),
      cents: z
        .array(numberWithin(-100, 100, ' cents'), { error: 'a list of 12 cents values' })
        .length(12, 'a list of 12 cents values'),
    }),
  ],
  { error: 'a temperament: equal, just, pythagorean, meantone or custom' },
)

const harmonics = z
  .tuple([harmonicNumber, harmonicNumber], { error: 'two harmonic numbers, the first and the last' })
  .refine(([first, last]) => first <= last, 'the first harmonic not above the last')

const instrument = z.looseObject(
  {
    fundamentalHz: numberWithin(10, 2000, ' Hz'),
    boreLengthMm: lengthMm.optional(),
    boreDiameterMm: diameterMm.optional(),
    transposition: wholeWithin(-60, 60).optional(),
    harmonics: harmonics.optional(),
    harmonicOffsetsCents: z
      .record(
        z.string().regex(/^[1-9]\d?$/, 'a harmonic number from 1 to 99'),
        numberWithin(-1200, 1200, ' cents'),
        {
          error: 'offsets in cents by harmonic number',
        },
      )
      .optional(),
  },
  { error: 'an instrument' },
)

/** One loop of a design. */
export const loopSchema = z.looseObject(
  {
    id: named('a loop id'),
    name: text.optional(),
    lengthMm,
    pressed: valveIds,
    released: valveIds.optional(),
    diameterMm: diameterMm.optional(),
    bendRadiusMm: lengthMm.optional(),
    slide: slidePosition.optional(),
  },
  { error: 'a loop' },
)

const valve = z.looseObject(
  { id: valveId, semitones: numberWithin(-48, 48, ' semitones') },
  { error: 'a valve' },
)

const fingering = z.looseObject(
  { pressed: valveIds, semitones: numberWithin(-120, 120, ' semitones').optional() },
  { error: 'a fingering' },
)

const tuning = z.discriminatedUnion(
  'kind',
  [
    z.looseObject({ kind: z.literal('none') }),
    z.looseObject({ kind: z.literal('open'), harmonic: harmonicNumber }),
  ],
  { error: 'a tuning: none, or open with a harmonic' },
)

/** One design of the file, around its loops: shapes and ranges. */
export const designSchema = z.looseObject(
  {
    id: named('a design id'),
    name: text,
    instrument,
    valves: z.array(valve, { error: 'a list of valves' }).max(mostValves, `at most ${mostValves} valves`),
    loops: z.array(z.unknown(), { error: 'a list of loops' }).max(mostLoops, `at most ${mostLoops} loops`),
    chosen: z
      .record(
        z.string().regex(/^(?:\d|[1-9]\d|1[01]\d|12[0-7])$/, 'a midi note number from 0 to 127'),
        z.looseObject({ pressed: valveIds, harmonic: harmonicNumber }, { error: 'a chosen fingering' }),
        { error: 'chosen fingerings by midi note' },
      )
      .optional(),
    fingerings: z
      .union([z.literal('all'), z.array(fingering).max(4096, 'at most 4096 fingerings')], {
        error: '"all" or a list of fingerings',
      })
      .optional(),
    mainSlide: slidePosition.optional(),
    tuning: tuning.optional(),
    openDetuningCents: numberWithin(-100, 100, ' cents').optional(),
    bore: bore.optional(),
  },
  { error: 'a design' },
)

/**
 * The design file, version 1, around its designs: shapes and ranges. Rules that span several values are in
 * `designRules.ts` and `boreRules.ts`.
 */
export const workbookSchema = z.looseObject(
  {
    format: z.literal('ferrule', { error: '"ferrule"' }),
    version: z.literal(1, { error: '1' }),
    name: text,
    notes: text.optional(),
    reference: z.looseObject({ a4Hz, temperament }, { error: 'a reference pitch' }),
    air: z.looseObject(
      {
        temperatureC: numberWithin(-40, 80, ' °C'),
        relativeHumidity: numberWithin(0, 1, ''),
        co2Fraction: numberWithin(0, 0.2, ''),
        pressurePa: numberWithin(20_000, 200_000, ' Pa'),
        playingTemperatureC: numberWithin(-40, 80, ' °C').optional(),
      },
      { error: 'the air' },
    ),
    designs: z
      .array(z.unknown(), { error: 'a list of designs' })
      .max(mostDesigns, `at most ${mostDesigns} designs`),
    bench: bench.optional(),
  },
  { error: 'a workbook' },
)
