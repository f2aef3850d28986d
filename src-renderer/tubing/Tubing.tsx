import { memo, type ReactNode, useMemo, useRef, useState } from 'react'
import { lengthText } from '#shared/quantity/figures.ts'
import { unitMm } from '#shared/quantity/units.ts'
import { liesInRoute } from '#shared/valves/gate.ts'
import { bitsOf, routing } from '#shared/valves/route.ts'
import { useDialog } from '../dialogs/dialogStore.ts'
import { Mark } from '../help/Mark.tsx'
import { ListenFold } from '../listen/ListenFold.tsx'
import { roundDown } from '../look/roundScale.ts'
import { ScaleBar } from '../look/ScaleBar.tsx'
import { type DerivedDesign, useSelectedDesign, useWarnings } from '../state/derived.ts'
import { useSettings } from '../state/settings.ts'
import { useFollowing } from '../state/useFollowing.ts'
import { type Selection, useView } from '../state/viewStore.ts'
import { tubingWords as words } from '../words/tubing.ts'
import { AccountPanel } from './AccountPanel.tsx'
import { InstrumentFields } from './InstrumentFields.tsx'
import { LoopRow } from './LoopRow.tsx'
import { LoopsOut } from './LoopsOut.tsx'
import { Valves } from './Valves.tsx'

/** Width of a loop's drawing, CSS px. */
const drawingWidthPx = 132

/** The right-hand place: the selected design's instrument, loops, valves, and the account of what is selected. */
export function Tubing(): ReactNode {
  const derived = useSelectedDesign()
  // The loop under the hand goes first; what is said of it follows.
  const settled = useFollowing(derived, derived?.design.id ?? '')
  const selection = useView((state) => state.selection)
  if (derived === null || settled === null) return null
  const { design, instrument, tables } = derived
  const openMm = tables.mainSlide.nominalOpenMm
  return (
    <aside className="right" aria-label={words.panel}>
      <div className="tubing">
        <h2 title={design.name}>
          {words.title} <span className="of">{words.ofDesign(design.name)}</span>
        </h2>
        <InstrumentFields
          designId={design.id}
          data={design.instrument}
          mainSlide={design.mainSlide}
          openMm={openMm}
          speedOfSoundMps={instrument.speedOfSoundMps}
        />
        <LoopList derived={derived} selection={selection} />
        <Valves key={design.id} design={design} openMm={openMm} />
        <p className="rowButtons">
          <button type="button" className="add" onClick={() => useDialog.setState({ open: 'changeSystem' })}>
            {words.anotherSystem}
          </button>
          <LoopsOut designId={design.id} designName={design.name} none={design.loops.length === 0} />
        </p>
        <Warnings derived={settled} />
      </div>
      <AccountPanel derived={settled} selection={selection} />
      <ListenFold derived={settled} selection={selection} />
    </aside>
  )
}

interface LoopListProps {
  readonly derived: DerivedDesign
  readonly selection: Selection | null
}

const LoopList = memo(function LoopList({ derived, selection }: LoopListProps): ReactNode {
  const { design, tables } = derived
  const loopId = useView((state) => state.loopId)
  const unit = useSettings((settings) => settings.unit)
  const [isHeld, setHeld] = useState(false)
  const longestMm = useScale(
    design.id,
    design.loops.reduce((most, { lengthMm }) => Math.max(most, lengthMm), 0),
    isHeld,
  )
  const drawing = useMemo(() => ({ widthPx: drawingWidthPx, longestMm }), [longestMm])
  const openMm = tables.mainSlide.nominalOpenMm
  const down = downOf(derived, selection)
  const system = routing(openMm, design.valves, design.loops)
  return (
    <>
      <h3 className="loopsHead withMark">
        {words.loops}
        {down === null ? null : <span className="of">{words.inRoute}</span>}
      </h3>
      <Mark id="loop" />
      {design.loops.length === 0 ? <p className="soft">{words.noLoops}</p> : null}
      <ul className="loops">
        {design.loops.map((loop, i) => (
          <LoopRow
            key={loop.id}
            designId={design.id}
            loop={loop}
            valves={design.valves}
            drawing={drawing}
            openMm={openMm}
            inRoute={down === null || liesInRoute(system.gates[i]!, down)}
            open={loop.id === loopId}
            onHeld={setHeld}
          />
        ))}
      </ul>
      {design.loops.length === 0 ? null : <TubingScale longestMm={longestMm} unit={unit} />}
    </>
  )
})

/**
 * The longest tube the drawings hold, mm. It grows with a loop but shrinks only when the loops have become much
 * shorter; while a bow is held it stays as it is, so that no drawing moves under the hand.
 */
function useScale(designId: string, longestMm: number, isHeld: boolean): number {
  const kept = useRef({ designId, longestMm: longestMm * 1.1 })
  const { current } = kept
  const fits = longestMm <= current.longestMm && longestMm >= 0.6 * current.longestMm
  if (current.designId !== designId || (!fits && !isHeld)) {
    kept.current = { designId, longestMm: longestMm * 1.1 }
  }
  return Math.max(kept.current.longestMm, 1)
}

function downOf({ design, tables }: DerivedDesign, selection: Selection | null): number | null {
  if (selection === null || selection.designId !== design.id) return null
  const system = routing(tables.mainSlide.openMm, design.valves, [])
  if (selection.kind === 'note') return bitsOf(system, selection.pressed)
  return tables.fingerings.find(({ name }) => name === selection.fingering)?.down ?? null
}

/** A bar of a round length at the drawings' scale, as on a drawing. */
function TubingScale({
  longestMm,
  unit,
}: {
  readonly longestMm: number
  readonly unit: 'mm' | 'in'
}): ReactNode {
  const step = unitMm(unit)
  const lengthMm = step * roundDown(Math.max(longestMm / 2 / step, 1))
  return (
    <ScaleBar lengthPx={(lengthMm / longestMm) * drawingWidthPx}>
      {words.ofTube(lengthText(lengthMm, unit, 0))}
    </ScaleBar>
  )
}

const Warnings = memo(function Warnings({ derived }: { readonly derived: DerivedDesign }): ReactNode {
  const own = useWarnings(derived)
  if (own.length === 0) return null
  return (
    <section className="warnings" aria-label={words.worthALook}>
      <h3>{words.worthALook}</h3>
      <ul>
        {own.map(({ message }, place) => (
          // A sentence follows the loop that is dragged in place.
          // biome-ignore lint/suspicious/noArrayIndexKey: the sentences have no state of their own
          <li key={place}>{message}</li>
        ))}
      </ul>
    </section>
  )
})
