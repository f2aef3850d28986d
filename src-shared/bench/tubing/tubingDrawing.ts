import { gateWords } from '../../valves/gate.ts'
import type { Loop } from '../../valves/loop.ts'
import { label, levelDimension, wordsWidthMm } from '../drawing/dimension.ts'
import { type Drawing, drawing, line, point, type Shape } from '../drawing/drawing.ts'
import { bowShapes, straightIntoBow } from '../drawing/tube.ts'
import { benchFigure } from '../figures.ts'

/** Bore of a loop that names none, where the design names none either, mm. */
const usualBoreMm = 12
/** Legs stand this many bores apart, unless the loop is too short to come round so wide a bow. */
const legsApart = 2.5
/** Height of the words, mm. */
const wordsMm = 5

/**
 * The loops of a design to scale, one under the other: each as two legs and a bow, its centre line as long as its
 * tube, with name, gate and length. How a loop is bent on the instrument is not known; its tube is. Loops of no
 * length are named and not drawn. `boreMm` is the bore of loops that have none of their own.
 *
 * @example tubingDrawing('Bass in F', design.loops, 17.2).bounds
 */
export function tubingDrawing(name: string, loops: readonly Loop[], boreMm = usualBoreMm): Drawing {
  const shapes: Shape[] = []
  let topMm = 0
  for (const loop of loops) {
    const bent = bentLoop(loop, boreMm)
    shapes.push(...loopShapes(loop, bent, topMm))
    topMm -= bent.spacingMm + bent.diameterMm + 6 * wordsMm
  }
  return drawing(`Loops of ${name}, to scale`, shapes, 2 * wordsMm)
}

/** A loop bent into two legs and a bow, mm. */
interface Bent {
  readonly diameterMm: number
  readonly spacingMm: number
  readonly legMm: number
}

function bentLoop({ lengthMm, diameterMm }: Loop, boreMm: number): Bent {
  const bore = diameterMm ?? boreMm
  const spacingMm = Math.min(legsApart * bore, (2 * lengthMm) / Math.PI)
  return { diameterMm: bore, spacingMm, legMm: (lengthMm - (Math.PI * spacingMm) / 2) / 2 }
}

function loopShapes(loop: Loop, bent: Bent, topMm: number): readonly Shape[] {
  const { diameterMm, spacingMm, legMm } = bent
  const heading = `${loop.name ?? loop.id}: ${gateWords(loop)}, ${benchFigure(loop.lengthMm)} mm of tube`
  const words = label(point(wordsWidthMm(heading, wordsMm) / 2, topMm), heading, false, wordsMm)
  if (loop.lengthMm <= 0) return [words]
  const upperMm = topMm - 1.5 * wordsMm - diameterMm / 2
  const lowerMm = upperMm - spacingMm
  const legs = legMm < 1e-9 ? [] : [lowerMm, upperMm].flatMap((yMm) => legShapes(yMm, legMm, diameterMm))
  const radiusMm = spacingMm / 2
  const bow = { at: point(legMm, lowerMm), spacingMm, radiiMm: [radiusMm, radiusMm] as const, diameterMm }
  const belowMm = lowerMm - diameterMm / 2
  const leg = levelDimension(
    point(0, belowMm),
    point(legMm, belowMm),
    belowMm - 1.5 * wordsMm,
    benchFigure(legMm),
    0.7 * wordsMm,
  )
  return [words, ...legs, ...bowShapes({ ...bow, side: 'right' }), ...(legMm < 1 ? [] : leg)]
}

function legShapes(yMm: number, legMm: number, diameterMm: number): readonly Shape[] {
  const half = diameterMm / 2
  return [
    ...straightIntoBow(point(0, yMm), legMm, diameterMm),
    line('outline', point(0, yMm - half), point(0, yMm + half)),
    line('centre', point(0, yMm), point(legMm, yMm)),
  ]
}
