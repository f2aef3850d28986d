import type { ReactNode } from 'react'
import { plainFigure, signedCents } from '#shared/quantity/figures.ts'
import type { PlayedRoute } from '#shared/solve/slideMovement.ts'
import type { CentsBand, ToleranceBand } from '#shared/solve/toleranceBands.ts'
import { Segments } from '../fields/Choice.tsx'
import { Fold } from '../fields/Fold.tsx'
import { LengthField } from '../fields/LengthField.tsx'
import { NumberField } from '../fields/NumberField.tsx'
import { Mark } from '../help/Mark.tsx'
import type { DerivedDesign } from '../state/derived.ts'
import { setDoubt, useLengths, withEntry } from '../state/lengthsStore.ts'
import { useSettings } from '../state/settings.ts'
import { bandsTable } from '../tables/lengthsTables.ts'
import { TableOut } from '../tables/TableOut.tsx'
import { doubtWords } from '../words/lengthsDoubt.ts'
import { titles } from '../words/tableHeadings.ts'
import { fingeringWords, shownFingerings } from './shownFingerings.ts'
import { ToleranceNeed } from './ToleranceNeed.tsx'

interface DoubtProps {
  readonly derived: DerivedDesign
  readonly routes: readonly PlayedRoute[]
  readonly bands: readonly ToleranceBand[] | null
  readonly ofProposal: boolean
}

/** How exactly the parts are made, what that does to each fingering, and how exactly they must be made. */
export function Doubt(props: DoubtProps): ReactNode {
  return (
    <Fold title={doubtWords.title} hint={doubtWords.hint}>
      {() => <DoubtContent {...props} />}
    </Fold>
  )
}

function DoubtContent({ derived, routes, bands, ofProposal }: DoubtProps): ReactNode {
  const doubt = useLengths((state) => state.doubt)
  return (
    <>
      <div className="choices">
        <Segments
          label={doubtWords.onChart}
          value={doubt.shown}
          options={[
            { value: 'none', text: doubtWords.shown.none },
            { value: 'worstCase', text: doubtWords.shown.worstCase },
            { value: 'rootSumSquare', text: doubtWords.shown.rootSumSquare },
          ]}
          take={(shown) => setDoubt({ shown })}
        />
        <Mark id="tolerance" />
        <span className="soft">{ofProposal ? doubtWords.forProposed : doubtWords.forPresent}</span>
      </div>
      <Tolerances derived={derived} />
      {bands === null ? (
        <p className="slip" role="alert">
          {doubtWords.tooLong}
        </p>
      ) : (
        <>
          <ToleranceNeed derived={derived} routes={routes} />
          <TableOut name={titles.doubt(derived.design.name)} table={() => bandsTable(derived, bands)} />
          <BandTable derived={derived} bands={bands} routes={routes} />
        </>
      )}
    </>
  )
}

/** Tolerances wider than this are a slip of the hand, mm. */
const widestMm = 50
/** A reading farther off than this is of another note, cents. */
const mostReadingCents = 50

function Tolerances({ derived: { design } }: { readonly derived: DerivedDesign }): ReactNode {
  const { bodyMm, loopMm, ownMm, coldestC, warmestC, readingErrorCents } = useLengths((state) => state.doubt)
  const own = ownMm.get(design.id)
  const within = (mm: number, take: (mm: number) => void): string | null => {
    if (mm > widestMm) return doubtWords.refusedTolerance(plainFigure(mm, 1), widestMm)
    take(mm)
    return null
  }
  const setOwn = (loopId: string, mm: number | undefined): void =>
    setDoubt({ ownMm: withEntry(ownMm, design.id, withEntry(own ?? new Map(), loopId, mm)) })
  return (
    <div className="tolerances">
      <LengthField
        label={doubtWords.body}
        lengthMm={bodyMm}
        digits={2}
        stepMm={0.1}
        width={6}
        take={(mm) => within(mm, (value) => setDoubt({ bodyMm: value }))}
      />
      <LengthField
        label={doubtWords.everyLoop}
        lengthMm={loopMm}
        digits={2}
        stepMm={0.1}
        width={6}
        take={(mm) => within(mm, (value) => setDoubt({ loopMm: value }))}
      />
      <TemperatureField
        label={doubtWords.coldest}
        value={coldestC}
        take={(value) => setDoubt({ coldestC: value })}
      />
      <TemperatureField
        label={doubtWords.warmest}
        value={warmestC}
        take={(value) => setDoubt({ warmestC: value })}
      />
      <NumberField
        label={doubtWords.reading}
        value={readingErrorCents}
        digits={1}
        atLeast={0}
        atMost={mostReadingCents}
        by={0.5}
        width={6}
        units={['cents']}
        unit="cents"
        help={doubtWords.readingHelp}
        take={(cents) => {
          if (cents < 0 || cents > mostReadingCents) {
            return doubtWords.refusedReading(plainFigure(cents, 1), mostReadingCents)
          }
          setDoubt({ readingErrorCents: cents })
          return null
        }}
      />
      {design.loops.map(({ id, name }) => (
        <LengthField
          key={id}
          label={doubtWords.loop(name ?? id)}
          lengthMm={own?.get(id) ?? loopMm}
          derived={own?.get(id) === undefined}
          digits={2}
          stepMm={0.1}
          width={6}
          clear={() => setOwn(id, undefined)}
          take={(mm) => within(mm, (value) => setOwn(id, value))}
        />
      ))}
    </div>
  )
}

interface TemperatureFieldProps {
  readonly label: string
  readonly value: number | null
  readonly take: (value: number | null) => void
}

function TemperatureField({ label, value, take }: TemperatureFieldProps): ReactNode {
  return (
    <NumberField
      label={label}
      value={value}
      digits={1}
      atLeast={-40}
      atMost={80}
      by={1}
      width={6}
      units={['°C', 'C']}
      unit="°C"
      help={doubtWords.temperatureHelp}
      clear={() => take(null)}
      take={(temperatureC) => {
        take(Math.min(Math.max(temperatureC, -40), 80))
        return null
      }}
    />
  )
}

function BandTable({
  derived,
  bands,
  routes,
}: {
  readonly derived: DerivedDesign
  readonly bands: readonly ToleranceBand[]
  readonly routes: readonly PlayedRoute[]
}): ReactNode {
  const within = useSettings((settings) => settings.bandCents)
  const bandOf = new Map(bands.map((band) => [band.name, band]))
  const known = new Set(routes.map(({ name }) => name))
  return (
    <table className="figures bandTable">
      <caption className="unseen">{doubtWords.caption}</caption>
      <thead>
        <tr>
          <th scope="col">{doubtWords.columns.fingering}</th>
          <th scope="col">
            {doubtWords.columns.worstCase} <i>{doubtWords.cents}</i>
          </th>
          <th scope="col">
            {doubtWords.columns.rootSumSquare} <i>{doubtWords.cents}</i>
          </th>
        </tr>
      </thead>
      <tbody>
        {shownFingerings(derived)
          .filter(({ name }) => known.has(name))
          .map(({ name }) => (
            <tr key={name}>
              <th scope="row">{fingeringWords(name)}</th>
              <BandCell band={bandOf.get(name)?.worstCase} within={within} />
              <BandCell band={bandOf.get(name)?.rootSumSquare} within={within} />
            </tr>
          ))}
      </tbody>
    </table>
  )
}

function BandCell({
  band,
  within,
}: {
  readonly band: CentsBand | undefined
  readonly within: number
}): ReactNode {
  if (band === undefined) return <td className="none">·</td>
  const outside = band.lowestCents < -within || band.highestCents > within
  return (
    <td className={outside ? 'hot' : undefined}>
      {signedCents(band.lowestCents)} <i>{doubtWords.to}</i> {signedCents(band.highestCents)}
    </td>
  )
}
