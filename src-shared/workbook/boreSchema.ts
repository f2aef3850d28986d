import * as z from 'zod'
import { diameterMm, lengthMm, longestMm, named, numberWithin, wholeWithin } from './schemaParts.ts'

/** Most sections of a bore. */
export const mostSections = 400
const mostPoints = 100_000
const mostModes = 64
const mostTerms = 40

const name = named('a section name').optional()

interface BrokenPoint {
  readonly path: number[]
  readonly message: string
}

/** A measured profile may have a hundred thousand points, and is looked at with every edit: one plain loop. */
function brokenPoint(points: readonly unknown[]): BrokenPoint | null {
  if (points.length < 2) return { path: [], message: 'two points or more' }
  if (points.length > mostPoints) return { path: [], message: `at most ${mostPoints} points` }
  for (let i = 0; i < points.length; i++) {
    const point = points[i]
    if (!Array.isArray(point) || point.length !== 2)
      return { path: [i], message: 'a distance and a diameter, mm' }
    const part = coordinates.findIndex(({ least, most }, at) => !isWithin(point[at], least, most))
    if (part >= 0) return { path: [i, part], message: coordinates[part]!.message }
  }
  return null
}

const coordinates = [
  { least: -longestMm, most: longestMm, message: `a number from ${-longestMm} to ${longestMm} mm` },
  { least: 0.1, most: 2000, message: 'a number from 0.1 to 2000 mm' },
]

function isWithin(value: unknown, least: number, most: number): boolean {
  return typeof value === 'number' && value >= least && value <= most
}

const points = z
  .custom<unknown[]>((value) => Array.isArray(value), { error: 'a list of points' })
  .superRefine((value, context) => {
    const broken = brokenPoint(value)
    if (broken !== null) context.addIssue({ code: 'custom', ...broken })
  })

const section = z.discriminatedUnion(
  'kind',
  [
    z.looseObject({ kind: z.literal('cup'), name, volumeMm3: numberWithin(0, 1e9, ' mm³') }),
    z.looseObject({ kind: z.literal('cylinder'), name, lengthMm, diameterMm }),
    z.looseObject({
      kind: z.literal('cone'),
      name,
      lengthMm,
      startDiameterMm: diameterMm,
      endDiameterMm: diameterMm,
    }),
    z.looseObject({ kind: z.literal('valves'), name, diameterMm }),
    z.looseObject({
      kind: z.literal('bell'),
      name,
      lengthMm,
      startDiameterMm: diameterMm,
      endDiameterMm: diameterMm,
      flare: numberWithin(0.05, 20, ''),
    }),
    z.looseObject({
      kind: z.literal('profile'),
      name,
      points,
    }),
  ],
  { error: 'a section: cup, cylinder, cone, valves, bell or profile' },
)

const target = z.looseObject(
  {
    mode: wholeWithin(1, mostModes),
    cents: numberWithin(-1200, 1200, ' cents').optional(),
    weight: numberWithin(0, 1e6, '').optional(),
  },
  { error: 'a target: a mode, with cents and weight' },
)

/** The bore of a design: shapes and ranges. Rules that span several values are in `boreRules.ts`. */
export const bore = z.looseObject(
  {
    waveFronts: z.enum(['plane', 'spherical'], { error: 'wave fronts: plane or spherical' }).optional(),
    mouth: z.enum(['unflanged', 'open'], { error: 'a mouth: unflanged or open' }).optional(),
    bellTemperatureC: numberWithin(-30, 60, ' °C').optional(),
    sections: z
      .array(section, { error: 'a list of sections' })
      .max(mostSections, `at most ${mostSections} sections`),
    targets: z
      .array(target, { error: 'a list of targets' })
      .max(mostModes, `at most ${mostModes} targets`)
      .optional(),
    harmonicWeights: z
      .array(numberWithin(0, 1e6, ''), { error: 'a list of weights' })
      .max(mostTerms, `at most ${mostTerms} weights`)
      .optional(),
  },
  { error: 'a bore' },
)
