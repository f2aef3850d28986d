import { plainFigure } from '../../quantity/figures.ts'
import { unitMm } from '../../quantity/units.ts'
import { label, levelDimension, uprightDimension, wordsHeightMm, wordsWidthMm } from '../drawing/dimension.ts'
import { type Drawing, drawing, line, type Point, point, type Shape } from '../drawing/drawing.ts'
import { bowShapes, straightIntoBow, straightTube } from '../drawing/tube.ts'
import { type Bow, quarterRadiiMm } from './bow.ts'
import type { SizedSlide } from './sizeSlide.ts'
import { innerTubeDiameterMm, movingBows, outerTubeDiameterMm, returnBows } from './slide.ts'

/** Distance between two levels of dimensions, and the margin, over the height of the words. */
const level = 2.3
const margin = 1.2

/** Where one pair of legs stands: the height of its lower leg, mm. */
interface Pair {
  readonly bow: Bow
  readonly yMm: number
}

/** The places along x that the drawing is made of, mm from the knuckle end of the outer legs. */
interface Stations {
  readonly outerEnd: number
  readonly innerStart: number
  readonly innerEnd: number
  readonly bowStart: number
  readonly tip: number
}

/**
 * Side view of a slide to scale, at pitch, with its dimensions: outer legs, the inner legs inside them, straight
 * ends and bows. A slide whose straight ends are negative is drawn with none; its problems say why. Where the
 * drawing is shown smaller than it is, words of `heightMm` keep it legible.
 *
 * @example slideDrawing(sized, 'Third slide').bounds
 */
export function slideDrawing(sized: SizedSlide, title: string, heightMm = wordsHeightMm): Drawing {
  const pairs = placePairs(sized)
  const at = stations(sized)
  const shapes = [
    ...pairs.flatMap((pair) => pairShapes(sized, pair, at)),
    ...returnShapes(sized, pairs, heightMm),
    ...lengthDimensions(sized, pairs, at, heightMm),
    ...pairs.flatMap((pair) => pairDimensions(sized, pair, at, heightMm)),
  ]
  return drawing(title, shapes, margin * heightMm)
}

function placePairs(sized: SizedSlide): readonly Pair[] {
  const returns = returnBows(sized.job)
  let yMm = 0
  return movingBows(sized.job).map((bow, index) => {
    const pair = { bow, yMm }
    yMm += bow.legSpacingMm + (returns[index]?.legSpacingMm ?? 0)
    return pair
  })
}

function stations({ job, straightEndMm }: SizedSlide): Stations {
  const innerEnd = job.outerLegMm + job.outAtPitchMm
  const bowStart = innerEnd + Math.max(0, straightEndMm)
  const reachMm = Math.max(...movingBows(job).flatMap(quarterRadiiMm))
  return {
    outerEnd: job.outerLegMm,
    innerStart: job.stopGapMm + job.outAtPitchMm,
    innerEnd,
    bowStart,
    tip: bowStart + reachMm + innerTubeDiameterMm(job) / 2,
  }
}

function pairShapes({ job }: SizedSlide, { bow, yMm }: Pair, at: Stations): readonly Shape[] {
  const [outer, inner] = [outerTubeDiameterMm(job), innerTubeDiameterMm(job)]
  const legs = [yMm, yMm + bow.legSpacingMm].flatMap((legMm) => [
    ...straightTube('outline', point(0, legMm), at.outerEnd, outer),
    ...straightTube('hidden', point(at.innerStart, legMm), at.outerEnd, inner),
    ...straightTube('outline', point(at.outerEnd, legMm), at.innerEnd, inner),
    ...straightIntoBow(point(at.innerEnd, legMm), at.bowStart, inner),
    line('centre', point(-4, legMm), point(at.bowStart, legMm)),
  ])
  const place = { at: point(at.bowStart, yMm), spacingMm: bow.legSpacingMm, diameterMm: inner }
  return [...legs, ...bowShapes({ ...place, radiiMm: quarterRadiiMm(bow), side: 'right' })]
}

function returnShapes(sized: SizedSlide, pairs: readonly Pair[], heightMm: number): readonly Shape[] {
  const { job } = sized
  const figure = figureOf(sized)
  return returnBows(job).flatMap((bow, index) => {
    const { yMm, bow: before } = pairs[index]!
    const place = { at: point(0, yMm + before.legSpacingMm), spacingMm: bow.legSpacingMm }
    const diameterMm = innerTubeDiameterMm(job)
    const topMm = place.at.yMm + bow.legSpacingMm
    return [
      ...bowShapes({ ...place, radiiMm: quarterRadiiMm(bow), side: 'left', diameterMm }),
      ...uprightDimension(
        place.at,
        point(0, topMm),
        spacingLineMm(sized, heightMm),
        figure(bow.legSpacingMm),
        heightMm,
      ),
    ]
  })
}

/** What lies along the slide: legs below the lowest leg, the rest above the highest. */
function lengthDimensions(
  sized: SizedSlide,
  pairs: readonly Pair[],
  at: Stations,
  heightMm: number,
): readonly Shape[] {
  const levelMm = level * heightMm
  const { job, unit } = sized
  const figure = figureOf(sized)
  const half = outerTubeDiameterMm(job) / 2
  const highest = pairs.at(-1)!
  const [lowMm, highMm] = [-half, highest.yMm + highest.bow.legSpacingMm + half]
  const below = (from: number, to: number, levels: number, text: string) =>
    levelDimension(point(from, lowMm), point(to, lowMm), lowMm - levels * levelMm, text, heightMm)
  const above = (from: number, to: number, levels: number, text: string) =>
    levelDimension(point(from, highMm), point(to, highMm), highMm + levels * levelMm, text, heightMm)
  return [
    ...below(0, at.outerEnd, 1, `outer leg ${figure(job.outerLegMm)}`),
    ...below(at.innerStart, at.innerEnd, 2, `inner leg ${figure(sized.innerLegMm)}`),
    ...(job.outAtPitchMm > 0 ? above(at.outerEnd, at.innerEnd, 1, `out ${figure(job.outAtPitchMm)}`) : []),
    ...(at.bowStart > at.innerEnd
      ? above(at.innerEnd, at.bowStart, 2, `straight end ${figure(sized.straightEndMm)}`)
      : []),
    ...above(0, at.tip, 3, `overall ${figure(at.tip)}`),
    label(
      point(at.tip / 2, lowMm - 3 * levelMm),
      `bore ${figure(job.boreDiameterMm)}, wall ${figure(job.wallMm)}, ${unitNames[unit]}`,
      false,
      heightMm,
    ),
  ]
}

/** What belongs to one pair: its leg spacing at the left, and the radius inside its bow or, short of room, beside it. */
function pairDimensions(
  sized: SizedSlide,
  { bow, yMm }: Pair,
  at: Stations,
  heightMm: number,
): readonly Shape[] {
  const figure = figureOf(sized)
  const [lower, upper] = quarterRadiiMm(bow)
  const radius = lower === upper ? figure(lower) : `${figure(lower)} / ${figure(upper)}`
  const [low, high] = [point(0, yMm), point(0, yMm + bow.legSpacingMm)]
  return [
    ...uprightDimension(low, high, spacingLineMm(sized, heightMm), figure(bow.legSpacingMm), heightMm),
    ...radiusLabel(sized, bow, point(at.bowStart, yMm + bow.legSpacingMm / 2), `R ${radius}`, heightMm),
  ]
}

/** `start` is where the bow begins, midway between its legs. */
function radiusLabel(
  { job }: SizedSlide,
  bow: Bow,
  start: Point,
  words: string,
  heightMm: number,
): readonly Shape[] {
  const widthMm = wordsWidthMm(words, heightMm)
  const place = (xMm: number) => label(point(xMm, start.yMm - heightMm / 3), words, false, heightMm)
  if (bow.legSpacingMm - innerTubeDiameterMm(job) >= 1.4 * heightMm)
    return [place(start.xMm - (widthMm + heightMm) / 2)]
  const tipMm = start.xMm + Math.max(...quarterRadiiMm(bow)) + innerTubeDiameterMm(job) / 2
  const leader = line('dimension', point(tipMm, start.yMm), point(tipMm + 1.2 * heightMm, start.yMm))
  return [leader, place(tipMm + 1.6 * heightMm + widthMm / 2)]
}

const unitNames = { mm: 'millimetres', in: 'inches' } as const

/** Writes a length, mm, as a bare figure for a dimension line: tenths of millimetres or thousandths of inches. */
function figureOf({ unit }: SizedSlide): (lengthMm: number) => string {
  return (mm) => plainFigure(mm / unitMm(unit), unit === 'mm' ? 1 : 3)
}

/** Where the leg spacings stand: left of the legs, and of the return bows when there are any. */
function spacingLineMm({ job }: SizedSlide, heightMm: number): number {
  const backs = returnBows(job).map((bow) => bow.legSpacingMm / 2 + outerTubeDiameterMm(job) / 2)
  return -level * heightMm - Math.max(0, ...backs)
}
