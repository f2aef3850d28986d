import { type KeyboardEvent, type PointerEvent, useRef, useState } from 'react'
import { dropStepsAfter, endBurst, stepsDone } from '../state/workbookStore.ts'

/** What the element that is dragged listens to. */
export interface LengthDrag {
  readonly onPointerDown: (event: PointerEvent) => void
  readonly onPointerMove: (event: PointerEvent) => void
  readonly onPointerUp: (event: PointerEvent) => void
  readonly onPointerCancel: (event: PointerEvent) => void
  readonly onLostPointerCapture: () => void
  readonly onKeyDown: (event: KeyboardEvent) => void
  readonly onBlur: () => void
}

interface Held {
  readonly fromMm: number
  /** The place that was told last, and the length there, off the grid: Shift counts from here on. */
  readonly x: number
  readonly atMm: number
  /** Steps done before it, for Escape to go back to. */
  readonly steps: number
  /** The scale when the drag began: the drawing must not shrink under the hand. */
  readonly mmPerPx: number
}

/** Lengths are dragged to so many steps in a millimetre: what a bench can hold. */
const stepsInMm = 10

/**
 * Drags a length along a drawing, by pointer or keys. Each animation frame takes the newest place of the pointer, so
 * that curves follow without a queue; letting go ends the undo step.
 *
 * @returns what the element listens to, and the length, mm, that the pointer took hold of, while it holds it
 */
export function useLengthDrag(
  lengthMm: number,
  mmPerPx: number,
  take: (lengthMm: number) => void,
): { readonly drag: LengthDrag; readonly heldMm: number | null } {
  const [heldMm, setHeldMm] = useState<number | null>(null)
  const held = useRef<Held>(null)
  const wanted = useRef<number>(null)
  const frame = useRef(0)

  const flush = (): void => {
    frame.current = 0
    if (wanted.current !== null) take(wanted.current)
    wanted.current = null
  }
  /** Goes back to where the drag began, as if it had never been. */
  const giveUp = (): void => {
    if (held.current === null) return
    const { fromMm, steps } = held.current
    cancelAnimationFrame(frame.current)
    frame.current = 0
    wanted.current = null
    held.current = null
    setHeldMm(null)
    if (!dropStepsAfter(steps)) take(fromMm)
    endBurst()
  }
  const release = (): void => {
    if (held.current === null) return
    cancelAnimationFrame(frame.current)
    flush()
    held.current = null
    setHeldMm(null)
    endBurst()
  }
  const drag: LengthDrag = {
    onPointerDown: (event) => {
      if (event.button !== 0) return
      event.currentTarget.setPointerCapture(event.pointerId)
      endBurst()
      setHeldMm(lengthMm)
      held.current = { fromMm: lengthMm, x: event.clientX, atMm: lengthMm, steps: stepsDone(), mmPerPx }
      const onEscape = ({ key }: globalThis.KeyboardEvent): void => {
        if (key === 'Escape') giveUp()
      }
      window.addEventListener('keydown', onEscape)
      window.addEventListener('pointerup', () => window.removeEventListener('keydown', onEscape), {
        once: true,
      })
    },
    onPointerMove: (event) => {
      if (held.current === null) return
      const { x, atMm, mmPerPx: scale } = held.current
      const fine = event.shiftKey ? 0.1 : 1
      const nextMm = atMm + fine * (event.clientX - x) * scale
      held.current = { ...held.current, x: event.clientX, atMm: nextMm }
      wanted.current = onGrid(nextMm)
      if (frame.current === 0) frame.current = requestAnimationFrame(flush)
    },
    onPointerUp: release,
    onPointerCancel: release,
    onLostPointerCapture: release,
    onKeyDown: (event) => {
      const by = keySteps[event.key]
      if (by === undefined) return
      event.preventDefault()
      take(onGrid(lengthMm + by * (event.shiftKey ? 10 : 1)))
    },
    onBlur: endBurst,
  }
  return { drag, heldMm }
}

/** Millimetres that a key press adds. */
const keySteps: Readonly<Record<string, number>> = {
  ArrowRight: 0.5,
  ArrowUp: 0.5,
  ArrowLeft: -0.5,
  ArrowDown: -0.5,
  PageUp: 10,
  PageDown: -10,
}

function onGrid(lengthMm: number): number {
  return Math.max(0, Math.round(lengthMm * stepsInMm) / stepsInMm)
}
