import type { ReactNode } from 'react'
import { briefFigure, signedCents } from '#shared/quantity/figures.ts'
import type { Combination } from '#shared/tuning/combinations.ts'
import { lengthFigure } from '../../fields/LengthField.tsx'
import { useSettings } from '../../state/settings.ts'
import { companyWords, airWords as words } from '../../words/pictures.ts'

interface RouteFactsProps {
  readonly row: Combination
  /** Ids of the loops in the order of the air. */
  readonly through: readonly string[]
  readonly times: number
  readonly inUse: boolean
}

/** What the route does: its tube, the tube it needs, and its error, in words and large figures. */
export function RouteFacts({ row, through, times, inUse }: RouteFactsProps): ReactNode {
  const unit = useSettings((settings) => settings.unit)
  const band = useSettings((settings) => settings.bandCents)
  const missingMm = row.requiredLengthMm - row.lengthMm
  const isNothing = Math.abs(missingMm) < 0.05
  const difference = isNothing ? words.difference : missingMm > 0 ? words.short : words.long
  const size = Math.abs(row.semitones)
  const semitones = words.drop(companyWords.semitones(briefFigure(size, 2)), row.semitones < 0)
  const tune = isNothing ? words.inTune : row.errorCents > 0 ? words.sharp : words.flat
  return (
    <section className="routeFacts" aria-label={words.facts} aria-live="polite">
      <dl>
        <Fact name={words.has} figure={lengthFigure(row.lengthMm, unit)} unit={unit} />
        <Fact name={words.needs(semitones)} figure={lengthFigure(row.requiredLengthMm, unit)} unit={unit} />
        <Fact name={difference} figure={lengthFigure(Math.abs(missingMm), unit)} unit={unit} />
        <Fact
          name={words.error}
          figure={signedCents(row.errorCents)}
          unit={`${words.cents}, ${tune}`}
          hot={Math.abs(row.errorCents) > band}
        />
      </dl>
      <p>
        {through.length === 0 ? words.straightOn : words.goesThrough(companyWords.and(through))}{' '}
        {times > 1 ? <b>{words.again(times)}</b> : null}{' '}
        {inUse ? null : <span className="soft">{words.notInUse}</span>}
      </p>
    </section>
  )
}

interface FactProps {
  readonly name: string
  readonly figure: string
  readonly unit: string
  readonly hot?: boolean
}

function Fact({ name, figure, unit, hot }: FactProps): ReactNode {
  return (
    <div>
      <dt>{name}</dt>
      <dd>
        <b className={hot ? 'hot' : undefined}>{figure}</b> <i>{unit}</i>
      </dd>
    </div>
  )
}
