import { useLengthDrag } from '../fields/useLengthDrag.ts'
import { type LoopDrawing, tubeOfMovementMm } from './loopScale.ts'

/** Drags a loop's bow; a key press adds half a millimetre of tube. */
export function useLoopDrag(
  lengthMm: number,
  drawing: LoopDrawing,
  take: (lengthMm: number) => void,
): ReturnType<typeof useLengthDrag> {
  return useLengthDrag(lengthMm, tubeOfMovementMm(1, drawing), take)
}
