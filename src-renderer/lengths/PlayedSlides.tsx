import { type ReactNode, useMemo, useState } from 'react'
import { signedCents } from '#shared/quantity/figures.ts'
import { type MovableSlide, type PlayedRoute, slideMovements } from '#shared/solve/slideMovement.ts'
import { setMainSlidePosition } from '#shared/workbook/commands/designCommands.ts'
import { setLoopTravel } from '#shared/workbook/commands/valveCommands.ts'
import { Fold } from '../fields/Fold.tsx'
import { LengthField } from '../fields/LengthField.tsx'
import { tryRun } from '../fields/refusal.ts'
import type { DerivedDesign } from '../state/derived.ts'
import { choose, mainSlideId, setMoved, useLengths } from '../state/lengthsStore.ts'
import { useSettings } from '../state/settings.ts'
import { movementsTable } from '../tables/lengthsTables.ts'
import { TableOut } from '../tables/TableOut.tsx'
import { playedWords } from '../words/lengthsSlides.ts'
import { titles } from '../words/tableHeadings.ts'
import { signedLength } from './ChangeCells.tsx'
import { fingeringWords, shownFingerings } from './shownFingerings.ts'
import { slideName } from './slideName.ts'
import { WallChart } from './WallChart.tsx'

interface PlayedSlidesProps {
  readonly derived: DerivedDesign
  readonly routes: readonly PlayedRoute[]
  readonly slides: readonly MovableSlide[]
  readonly moved: readonly MovableSlide[]
  readonly ofProposal: boolean
}

/** Slides moved while playing: which, how far each fingering needs them, and a chart of it for the wall. */
export function PlayedSlides(props: PlayedSlidesProps): ReactNode {
  return (
    <Fold title={playedWords.title} hint={playedWords.hint}>
      {() => <PlayedSlidesContent {...props} />}
    </Fold>
  )
}

function PlayedSlidesContent(props: PlayedSlidesProps): ReactNode {
  const { derived, routes, moved, ofProposal } = props
  const [hanging, setHanging] = useState(false)
  const unit = useSettings((settings) => settings.unit)
  const reachCounts = useLengths((state) => state.reachCounts)
  const movements = useMemo(() => slideMovements(routes, moved), [routes, moved])
  return (
    <>
      <SlideChoices {...props} />
      <div className="choices">
        <label className="tick">
          <input
            type="checkbox"
            checked={reachCounts}
            onChange={(event) => choose({ reachCounts: event.target.checked })}
          />
          {playedWords.countReach}
        </label>
        <button type="button" disabled={moved.length === 0} onClick={() => setHanging(true)}>
          {playedWords.wallChart}
        </button>
      </div>
      {moved.length === 0 ? (
        <p className="soft">{playedWords.none}</p>
      ) : (
        <>
          <TableOut
            name={titles.slides(derived.design.name)}
            table={() =>
              movementsTable(
                derived,
                movements,
                moved.map(({ id }) => id),
                unit,
              )
            }
          />
          <MovementTable {...props} movements={movements} />
        </>
      )}
      {hanging ? (
        <WallChart
          derived={derived}
          movements={movements}
          ofProposal={ofProposal}
          onClose={() => setHanging(false)}
        />
      ) : null}
    </>
  )
}

function SlideChoices({ derived, slides }: PlayedSlidesProps): ReactNode {
  const { design } = derived
  const moved = useLengths((state) => state.moved.get(design.id))
  const slideOf = new Map(slides.map((slide) => [slide.id, slide]))
  const rows = [
    ...design.loops.map((loop) => ({
      id: loop.id,
      take: (travelMm: number) => tryRun(setLoopTravel(design.id, loop, travelMm)),
    })),
    {
      id: mainSlideId,
      take: (travelMm: number) =>
        tryRun(setMainSlidePosition(design.id, { outMm: design.mainSlide?.outMm ?? 0, travelMm })),
    },
  ]
  return (
    <ul className="slideChoices">
      {rows.map(({ id, take }) => (
        <li key={id}>
          <label className="tick">
            <input
              type="checkbox"
              checked={moved?.has(id) ?? false}
              onChange={(event) => setMoved(design.id, id, event.target.checked)}
            />
            {slideName(derived, id)}
          </label>
          <span className="together">
            <span className="soft" aria-hidden="true">
              {playedWords.travel}
            </span>
            <LengthField
              label={playedWords.travelOf(slideName(derived, id))}
              labelHidden
              lengthMm={slideOf.get(id)?.travelMm ?? null}
              stepMm={1}
              width={6}
              take={take}
            />
          </span>
          <SlideOut slide={slideOf.get(id)} />
        </li>
      ))}
    </ul>
  )
}

function SlideOut({ slide }: { readonly slide: MovableSlide | undefined }): ReactNode {
  const unit = useSettings((settings) => settings.unit)
  if (slide === undefined) return <span className="soft">{playedWords.noTravel}</span>
  return <span className="soft">{playedWords.nowOut(`${signedLength(slide.outMm, unit)} ${unit}`)}</span>
}

function MovementTable({
  derived,
  movements,
}: PlayedSlidesProps & { readonly movements: ReturnType<typeof slideMovements> }): ReactNode {
  const unit = useSettings((settings) => settings.unit)
  const band = useSettings((settings) => settings.bandCents)
  const byName = new Map(movements.map((movement) => [movement.name, movement]))
  return (
    <table className="figures movementTable">
      <caption className="unseen">{playedWords.caption}</caption>
      <thead>
        <tr>
          <th scope="col">{playedWords.columns.fingering}</th>
          <th scope="col">
            {playedWords.columns.error} <i>{playedWords.cents}</i>
          </th>
          <th scope="col">
            {playedWords.columns.wantedOut}, <i>{unit}</i>
          </th>
          <th scope="col" className="wide">
            {playedWords.columns.moved}
          </th>
          <th scope="col">
            {playedWords.columns.left} <i>{playedWords.cents}</i>
          </th>
        </tr>
      </thead>
      <tbody>
        {shownFingerings(derived).map(({ name }) => {
          const movement = byName.get(name)
          if (movement === undefined) return null
          return (
            <tr key={name}>
              <th scope="row">{fingeringWords(name)}</th>
              <td>{signedCents(movement.errorCents)}</td>
              <td>{signedLength(movement.neededOutMm, unit)}</td>
              <td className="wide moves">
                {movement.moves
                  .filter(({ outMm }) => Math.abs(outMm) >= 0.05)
                  .map(({ slide, outMm }) => (
                    <span key={slide} className="unbroken">
                      {slideName(derived, slide)} {signedLength(outMm, unit)} <i>{unit}</i>
                    </span>
                  ))}
              </td>
              <td className={Math.abs(movement.leftCents) > band ? 'hot' : undefined}>
                {signedCents(movement.leftCents)}
              </td>
            </tr>
          )
        })}
      </tbody>
    </table>
  )
}
