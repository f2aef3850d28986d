import { type ReactNode, useMemo } from 'react'
import { lengthText, plainFigure, signedCents } from '#shared/quantity/figures.ts'
import { airLayout } from '#shared/valves/air/airLayout.ts'
import { airLine } from '#shared/valves/air/airLine.ts'
import { airPath } from '#shared/valves/air/airPath.ts'
import { type ValvePlan, valvePlan } from '#shared/valves/air/valvePlan.ts'
import { bitsOf, routing } from '#shared/valves/route.ts'
import type { System } from '#shared/valves/systems/systems.ts'
import { PictureOut } from '../../picture/PictureOut.tsx'
import type { DerivedDesign } from '../../state/derived.ts'
import { useSettings } from '../../state/settings.ts'
import { galleryWords as words } from '../../words/pictures.ts'
import { AirDrawing } from '../air/AirDrawing.tsx'
import { smallMeasures } from '../air/measures.ts'
import { Picture } from '../Picture.tsx'
import { firstPressed } from '../picturesStore.ts'

interface SystemCardProps {
  readonly system: System
  readonly derived: DerivedDesign
  readonly add: () => void
}

/** One system: its route in small, its sentence, its errors, and the way into the line-up. */
export function SystemCard({ system, derived, add }: SystemCardProps): ReactNode {
  const unit = useSettings((settings) => settings.unit)
  const plan = useMemo(() => valvePlan(derived.design.valves, derived.design.loops), [derived])
  const { byFingering, loops, loopsMm } = derived.tables.summary
  return (
    <li className="systemCard">
      <h2>{system.name}</h2>
      <SmallRoute system={system} derived={derived} plan={plan} />
      <p>{system.description}</p>
      <dl>
        <dt>{words.rms}</dt>
        <dd>{plainFigure(byFingering.rmsCents, 1)}</dd>
        <dt>{words.largest}</dt>
        <dd>
          {signedCents(byFingering.largestCents)}
          {byFingering.largestAt === null || Math.abs(byFingering.largestCents) < 0.05 ? null : (
            <i> {words.at(byFingering.largestAt)}</i>
          )}
        </dd>
        <dt>{words.passes}</dt>
        <dd>{words.times(plan.passes)}</dd>
        <dt>{words.tube}</dt>
        <dd>
          {unit === 'mm' ? `${plainFigure(loopsMm / 1000, 2)} m` : lengthText(loopsMm, 'in', 1)}
          <i> {words.inLoops(loops)}</i>
        </dd>
      </dl>
      <button type="button" className="add" aria-label={words.addNamed(system.name)} onClick={add}>
        {words.add}
      </button>
    </li>
  )
}

/** The fingering that says most about a system: through its further loops, else the first and third, else one. */
function tellingFingering({ design, tables }: DerivedDesign, plan: ValvePlan): readonly string[] {
  const { valves } = design
  const switching = valves[plan.blockEnd]
  if (switching !== undefined && switching.semitones > 0) return [valves[0]!.id, switching.id]
  const first = firstPressed(valves, tables)
  if (first.length > 0) return first
  return tables.fingerings[Math.floor(tables.fingerings.length / 2)]?.pressed ?? []
}

const cardPx = 268

function SmallRoute({
  system,
  derived,
  plan,
}: Pick<SystemCardProps, 'system' | 'derived'> & { readonly plan: ValvePlan }): ReactNode {
  const { design, tables } = derived
  const pressed = tellingFingering(derived, plan)
  const layout = airLayout(plan, smallMeasures, cardPx)
  const down = bitsOf(routing(tables.mainSlide.openMm, design.valves, []), pressed)
  const fingering = pressed.length === 0 ? words.open : pressed.join('-')
  return (
    <PictureOut name={words.title(system.name, fingering)}>
      <Picture
        name={`system ${system.id}`}
        title={words.title(system.name, fingering)}
        description={words.describe(design.loops.length)}
        width={Math.ceil(layout.width)}
        height={Math.ceil(layout.height) + 4}
      >
        <AirDrawing
          layout={layout}
          stretches={airLine(layout, airPath(plan, down))}
          strokes={{ tube: 6, air: 2.6 }}
          named={false}
          valves={design.valves.map(({ id }) => ({ id, isDown: pressed.includes(id) }))}
        />
      </Picture>
    </PictureOut>
  )
}
