import { memo, type ReactNode, useEffect } from 'react'
import { lengthText } from '#shared/quantity/figures.ts'
import { loopForDropMm } from '#shared/tubing/requiredLength.ts'
import { gateWords } from '#shared/valves/gate.ts'
import type { Loop } from '#shared/valves/loop.ts'
import type { Valve } from '#shared/valves/valve.ts'
import {
  moveLoopSlide,
  removeLoop,
  renameLoop,
  setGate,
  setLoopBendRadius,
  setLoopDiameter,
  setLoopLength,
  setLoopTravel,
} from '#shared/workbook/commands/valveCommands.ts'
import { LengthField, lengthFigure } from '../fields/LengthField.tsx'
import { tryRun } from '../fields/refusal.ts'
import { TextField } from '../fields/TextField.tsx'
import { useSettings } from '../state/settings.ts'
import { useView } from '../state/viewStore.ts'
import { run } from '../state/workbookStore.ts'
import { loopWords as words } from '../words/tubing.ts'
import { GateEditor } from './GateEditor.tsx'
import { gripPx, gripWidthPx, type LoopDrawing, loopPath } from './loopScale.ts'
import { useLoopDrag } from './useLoopDrag.ts'

interface LoopRowProps {
  readonly designId: string
  readonly loop: Loop
  readonly valves: readonly Valve[]
  readonly drawing: LoopDrawing
  readonly openMm: number
  /** Whether it lies in the route of the fingering that the account explains. */
  readonly inRoute: boolean
  readonly open: boolean
  /** Told when the hand takes hold of the bow, and when it lets go. */
  readonly onHeld: (held: boolean) => void
}

/** One loop: its name and gate in words, itself to scale with a bow to drag, its length; opened, all of it. */
export const LoopRow = memo(function LoopRow(props: LoopRowProps): ReactNode {
  const { designId, loop, valves, drawing, inRoute, open, onHeld } = props
  const unit = useSettings((settings) => settings.unit)
  const name = loop.name ?? loop.id
  const take = (lengthMm: number): string | null => tryRun(setLoopLength(designId, loop, lengthMm))
  const { drag, heldMm } = useLoopDrag(loop.lengthMm, drawing, take)
  const isHeld = heldMm !== null
  useEffect(() => {
    if (!isHeld) return
    onHeld(true)
    return () => onHeld(false)
  }, [isHeld, onHeld])
  return (
    <li className={`loop${open ? ' open' : ''}${inRoute ? ' inRoute' : ''}`}>
      <div className="loopLine">
        <button
          type="button"
          className="loopName"
          aria-expanded={open}
          onClick={() => useView.setState({ loopId: open ? null : loop.id })}
        >
          <b>{name}</b>
          <span className="gate">{gateWords(loop)}</span>
        </button>
        <svg className="tube" width={drawing.widthPx} height="22" aria-hidden="true">
          {heldMm === null ? null : (
            <rect
              className="held"
              x={gripPx(loop.lengthMm, drawing)}
              y="-4"
              width={gripWidthPx}
              height="30"
            />
          )}
          <path className="bore" d={loopPath(loop.lengthMm, drawing)} />
          {loop.pressed.length > 1 ? <path className="company" d={loopPath(loop.lengthMm, drawing)} /> : null}
        </svg>
        <span
          className="bow"
          role="slider"
          tabIndex={0}
          aria-label={words.lengthOf(name)}
          aria-valuenow={Math.round(loop.lengthMm * 10) / 10}
          aria-valuemin={0}
          aria-valuemax={Math.max(Math.ceil(drawing.longestMm), Math.ceil(loop.lengthMm))}
          aria-valuetext={lengthText(loop.lengthMm, unit)}
          title={words.bowHelp}
          // An element that moves has all layers of the page sorted anew, which a drag has no time for.
          style={{ transform: `translateX(${gripPx(heldMm ?? loop.lengthMm, drawing)}px)` }}
          {...drag}
        />
        <LengthField
          label={words.lengthOf(name)}
          labelHidden
          lengthMm={loop.lengthMm}
          stepMm={0.1}
          width={7}
          take={take}
        />
      </div>
      {open ? <LoopDetails {...props} valves={valves} /> : null}
    </li>
  )
})

function LoopDetails({ designId, loop, valves, openMm }: LoopRowProps): ReactNode {
  const unit = useSettings((settings) => settings.unit)
  const only = loop.pressed.length === 1 ? valves.find(({ id }) => id === loop.pressed[0]) : undefined
  const exactMm = only === undefined || only.semitones <= 0 ? null : loopForDropMm(openMm, only.semitones)
  return (
    <div className="loopDetails">
      <TextField
        label={words.name}
        value={loop.name ?? ''}
        placeholder={loop.id}
        take={(name) => tryRun(renameLoop(designId, loop, name))}
      />
      <GateEditor loop={loop} valves={valves} take={(gate) => run(setGate(designId, loop, gate))} />
      <LengthField
        label={words.slideOut}
        help={words.slideOutHelp}
        lengthMm={loop.slide?.outMm ?? null}
        stepMm={0.5}
        take={(outMm) => tryRun(moveLoopSlide(designId, loop, outMm))}
      />
      <LengthField
        label={words.slideTravel}
        help={words.slideTravelHelp}
        lengthMm={loop.slide?.travelMm ?? null}
        stepMm={0.5}
        take={(travelMm) => tryRun(setLoopTravel(designId, loop, travelMm))}
      />
      <LengthField
        label={words.diameter}
        lengthMm={loop.diameterMm ?? null}
        digits={2}
        clear={() => tryRun(setLoopDiameter(designId, loop, undefined))}
        take={(diameterMm) => tryRun(setLoopDiameter(designId, loop, diameterMm))}
      />
      <LengthField
        label={words.bendRadius}
        help={words.bendRadiusHelp}
        lengthMm={loop.bendRadiusMm ?? null}
        stepMm={0.5}
        clear={() => tryRun(setLoopBendRadius(designId, loop, undefined))}
        take={(radiusMm) => tryRun(setLoopBendRadius(designId, loop, radiusMm))}
      />
      <p className="loopButtons">
        {exactMm === null ? null : (
          <button type="button" className="quiet" onClick={() => run(setLoopLength(designId, loop, exactMm))}>
            {words.makeExact(lengthFigure(exactMm, unit), unit)}
          </button>
        )}
        <button type="button" className="quiet" onClick={() => run(removeLoop(designId, loop))}>
          {words.remove}
        </button>
      </p>
    </div>
  )
}
