/** The drawing of a loop as a U: two legs and a bow, to scale along the legs. */
export interface LoopDrawing {
  /** Width of the drawing, CSS px. */
  readonly widthPx: number
  /** Tube that a full-width loop has, mm. */
  readonly longestMm: number
}

const bowRadiusPx = 6
const leftPx = 2

/** Width of what the hand takes hold of, CSS px. */
export const gripWidthPx = 22

/**
 * The path of a loop: its tube is drawn as two legs joined by a bow, so that the length drawn is the tube's to
 * scale. A loop shorter than the bow is drawn as the bow.
 */
export function loopPath(lengthMm: number, { widthPx, longestMm }: LoopDrawing): string {
  const leg = legPx(lengthMm, { widthPx, longestMm })
  return `M${leftPx} ${11 - bowRadiusPx}H${leftPx + leg}a${bowRadiusPx} ${bowRadiusPx} 0 0 1 0 ${2 * bowRadiusPx}H${leftPx}`
}

/** Where the grip around the bow's far end begins, CSS px from the left. */
export function gripPx(lengthMm: number, drawing: LoopDrawing): number {
  return leftPx + legPx(lengthMm, drawing) + bowRadiusPx - gripWidthPx / 2
}

/** Tube, mm, that a movement of the bow by `dxPx` adds: both legs grow. */
export function tubeOfMovementMm(dxPx: number, drawing: LoopDrawing): number {
  return dxPx / pxPerMmOfTube(drawing)
}

function legPx(lengthMm: number, drawing: LoopDrawing): number {
  return Math.max(0, lengthMm * pxPerMmOfTube(drawing) - (Math.PI * bowRadiusPx) / 2)
}

/** Half a millimetre of leg for each millimetre of tube. */
function pxPerMmOfTube({ widthPx, longestMm }: LoopDrawing): number {
  const usable = widthPx - leftPx - bowRadiusPx - 4 + (Math.PI * bowRadiusPx) / 2
  return usable / Math.max(longestMm, 1)
}
