import { memo, type ReactNode } from 'react'
import { noteName } from '#shared/pitch/noteName.ts'
import { briefFigure, signedCents } from '#shared/quantity/figures.ts'
import { slideMovementMm } from '#shared/tubing/slideMovement.ts'
import { accountOf } from '#shared/tuning/account.ts'
import type { Combination } from '#shared/tuning/combinations.ts'
import { lengthFigure } from '../fields/LengthField.tsx'
import { Mark } from '../help/Mark.tsx'
import type { DerivedDesign } from '../state/derived.ts'
import { useSettings } from '../state/settings.ts'
import type { Selection } from '../state/viewStore.ts'
import { accountWords as words } from '../words/tubing.ts'

interface AccountPanelProps {
  readonly derived: DerivedDesign
  readonly selection: Selection | null
}

/** Why the selected cell is as far out as it is. */
export const AccountPanel = memo(function AccountPanel({ derived, selection }: AccountPanelProps): ReactNode {
  if (selection === null || selection.designId !== derived.design.id) {
    return (
      <div className="account">
        <p className="soft">
          <b>{words.title}.</b> {words.nothingPicked}
        </p>
      </div>
    )
  }
  if (selection.kind === 'note') return <NoteAccount derived={derived} selection={selection} />
  const row = derived.tables.combinations.find(({ fingering }) => fingering === selection.fingering)
  return row === undefined ? null : <CombinationAccount derived={derived} row={row} />
})

function CombinationAccount({
  derived,
  row,
}: {
  readonly derived: DerivedDesign
  readonly row: Combination
}): ReactNode {
  const unit = useSettings((settings) => settings.unit)
  const figure = (mm: number): string => lengthFigure(mm, unit)
  const shortMm = row.requiredLengthMm - row.lengthMm
  const names = derived.design.loops
    .filter(({ id }) => row.loops.includes(id))
    .map(({ name, id }) => name ?? id)
  const exact = Math.abs(row.errorCents) < 0.05
  return (
    <div className="account" aria-live="polite">
      <h3 className="withMark">
        {headline(row.fingering === '0' ? words.open : row.fingering, row.errorCents)}
      </h3>
      <Mark id="combination" />
      <p>
        <span>{words.has}</span>
        <b>
          {figure(row.lengthMm)} <i>{unit}</i>
        </b>
      </p>
      <p>
        <span>{words.needs(briefFigure(row.semitones, 2))}</span>
        <b>
          {figure(row.requiredLengthMm)} <i>{unit}</i>
        </b>
      </p>
      <p className="sum">
        <span>{exact ? words.difference : shortMm > 0 ? words.shortBy : words.longBy}</span>
        <b>
          {figure(Math.abs(shortMm))} <i>{unit}</i>
        </b>
      </p>
      {exact ? null : <Movement lengthMm={row.lengthMm} errorCents={row.errorCents} />}
      <p className="soft">{names.length === 0 ? words.noLoop : words.through(names)}</p>
    </div>
  )
}

interface NoteAccountProps {
  readonly derived: DerivedDesign
  readonly selection: Extract<Selection, { kind: 'note' }>
}

function NoteAccount({ derived, selection }: NoteAccountProps): ReactNode {
  const spelling = useSettings((settings) => settings.spelling)
  const { midi, pressed, harmonic } = selection
  const known = new Set(derived.design.valves.map(({ id }) => id))
  if (!pressed.every((id) => known.has(id))) return null
  const row = derived.tables.combinations.find((each) => each.pressed.join('-') === pressed.join('-'))
  const account = accountOf(derived.instrument, pressed, harmonic, midi, row?.semitones)
  const played = words.played(noteName(midi, spelling), account.fingering, harmonic)
  return (
    <div className="account" aria-live="polite">
      <h3 className="withMark">{headline(played, account.totalCents)}</h3>
      <Mark id="account" />
      {account.terms
        .filter(
          ({ cause, cents }) => cause === 'harmonic' || cause === 'combination' || Math.abs(cents) >= 0.005,
        )
        .map(({ cause, cents }) => (
          <p key={cause}>
            <span>{words.causes[cause]}</span>
            <b>{signedCents(cents)}</b>
          </p>
        ))}
      <p className="sum">
        <span>{words.together}</span>
        <b>{signedCents(account.totalCents)}</b>
      </p>
      {row === undefined || Math.abs(account.totalCents) < 0.05 ? null : (
        <Movement lengthMm={row.lengthMm} errorCents={account.totalCents} />
      )}
    </div>
  )
}

/** How far one slide of a route is moved to be rid of an error. */
function Movement({
  lengthMm,
  errorCents,
}: {
  readonly lengthMm: number
  readonly errorCents: number
}): ReactNode {
  const unit = useSettings((settings) => settings.unit)
  return (
    <p>
      <span>
        {errorCents > 0 ? words.slideOutBy : words.slideInBy} <Mark id="slide" />
      </span>
      <b>
        {lengthFigure(Math.abs(slideMovementMm(lengthMm, errorCents)), unit)} <i>{unit}</i>
      </b>
    </p>
  )
}

function headline(what: string, cents: number): string {
  const figure = signedCents(cents)
  if (Number(figure.replace('−', '-')) === 0) return words.isInTune(what)
  return words.isOut(what, figure, cents > 0)
}
