import { type ReactNode, useMemo } from 'react'
import { type Combination, combinationTable } from '#shared/tuning/combinations.ts'
import { soundedNotes } from '#shared/tuning/harmonicSeries.ts'
import { type AirPassage, airPath, passagesOpen } from '#shared/valves/air/airPath.ts'
import { type ValvePlan, valvePlan } from '#shared/valves/air/valvePlan.ts'
import { namedFingering } from '#shared/valves/fingerings.ts'
import { loopNamed } from '#shared/valves/loop.ts'
import { bitsOf, routing } from '#shared/valves/route.ts'
import type { DerivedDesign } from '../../state/derived.ts'
import { partWords, pictureWords, airWords as words } from '../../words/pictures.ts'
import { PictureFrame } from '../PictureFrame.tsx'
import { PictureHead } from '../PictureHead.tsx'
import { usePressed } from '../picturesStore.ts'
import { AirPicture } from './AirPicture.tsx'
import { RouteFacts } from './RouteFacts.tsx'
import { SoundedNotes } from './SoundedNotes.tsx'
import { useValveKeys } from './useValveKeys.ts'
import { ValveKeys } from './ValveKeys.tsx'

/** The air through the loops for the valves that are pressed, with what it does to the pitch. */
export function AirPage({ derived }: { readonly derived: DerivedDesign }): ReactNode {
  const { design, instrument } = derived
  const pressed = usePressed(derived)
  useValveKeys(design.valves, pressed)
  const plan = useMemo(() => valvePlan(design.valves, design.loops), [design])
  const { row, path, times, inUse } = useMemo(() => routeOf(derived, plan, pressed), [derived, plan, pressed])
  const notes = useMemo(() => soundedNotes(instrument, row.lengthMm), [instrument, row])
  return (
    <>
      <PictureHead part="air" />
      {design.valves.length === 0 ? (
        <p className="soft">{words.noValves}</p>
      ) : (
        <ValveKeys valves={design.valves} pressed={pressed} />
      )}
      <PictureFrame
        name={pictureWords.fileOf(`${partWords.air.name} ${row.fingering}`, design.name)}
        draw={(width) => (
          <AirPicture design={design.name} plan={plan} path={path} pressed={pressed} width={width} />
        )}
      />
      <RouteFacts
        row={row}
        through={path.flatMap(({ loops }) => loops.map((id) => loopNamed(design.loops, id)))}
        times={times}
        inUse={inUse}
      />
      <SoundedNotes
        fingering={row.fingering === '0' ? words.open : row.fingering}
        notes={notes}
        transposition={instrument.transposition}
      />
    </>
  )
}

interface RouteShown {
  readonly row: Combination
  readonly path: readonly AirPassage[]
  /** How often the air goes through the valves. */
  readonly times: number
  readonly inUse: boolean
}

/** The route of whatever is pressed, whether or not the design has it among its fingerings. */
function routeOf({ design, tables }: DerivedDesign, plan: ValvePlan, pressed: readonly string[]): RouteShown {
  const { openMm, inTuneOpenMm } = tables.mainSlide
  const system = routing(openMm, design.valves, design.loops)
  const down = bitsOf(system, pressed)
  const known = tables.combinations.find((each) => each.pressed.join('-') === pressed.join('-'))
  const row = known ?? combinationTable(inTuneOpenMm, system, [namedFingering(design.valves, down)])[0]!
  return {
    row,
    path: airPath(plan, down),
    times: passagesOpen(plan, down).length,
    inUse: known !== undefined,
  }
}
