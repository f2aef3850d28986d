import { type ReactNode, useState } from 'react'
import { centsBetween } from '#shared/pitch/cents.ts'
import { plainFigure, signedCents } from '#shared/quantity/figures.ts'
import type { HoldingBound, LengthsAndErrors, RowOutcome } from '#shared/solve/lengthAnswer.ts'
import { takeIntoDesign } from '#shared/workbook/commands/takeIntoDesign.ts'
import { lengthFigure } from '../fields/LengthField.tsx'
import { tryRun } from '../fields/refusal.ts'
import type { DerivedDesign } from '../state/derived.ts'
import { useLengths } from '../state/lengthsStore.ts'
import { useSettings } from '../state/settings.ts'
import { endBurst } from '../state/workbookStore.ts'
import { aimWords } from '../words/lengthsAim.ts'
import { verdictWords } from '../words/lengthsVerdict.ts'
import type { Reached } from './played.ts'
import { loopName } from './refusalWords.ts'
import { fingeringWords } from './shownFingerings.ts'
import type { Proposal } from './useProposal.ts'

interface VerdictProps {
  readonly derived: DerivedDesign
  /** What the design reaches as it stands; `null` while nobody knows. */
  readonly now: Reached | null
  readonly waiting: boolean
  readonly proposal: Proposal | null
  readonly words: readonly string[]
}

/** What the proposal is worth, what holds it, and whether it is taken. */
export function Verdict({ derived, now, waiting, proposal, words }: VerdictProps): ReactNode {
  const [refused, setRefused] = useState<string | null>(null)
  const left = useLengths((state) => state.left)
  const stands = proposal !== null && standsAt(derived, proposal)
  return (
    <div className="verdict" aria-live="polite">
      <div className="verdictTop">
        {now === null ? null : <Figures now={now} proposal={proposal} />}
        <div className="buttons">
          <button
            type="button"
            className="main"
            disabled={proposal === null || stands}
            onClick={() => setRefused(proposal === null ? null : take(derived, proposal))}
          >
            {verdictWords.take}
          </button>
          {left ? (
            <button type="button" onClick={() => useLengths.setState({ left: false })}>
              {verdictWords.showAgain}
            </button>
          ) : (
            <button
              type="button"
              disabled={proposal === null}
              onClick={() => useLengths.setState({ left: true, walkedTo: null })}
            >
              {verdictWords.leave}
            </button>
          )}
        </div>
      </div>
      {waiting ? <p className="soft">{aimWords.working}</p> : null}
      {words.map((sentence) => (
        <p key={sentence} className={proposal === null ? 'slip' : 'soft'}>
          {sentence}
        </p>
      ))}
      {proposal === null ? null : <Holding derived={derived} proposal={proposal} />}
      {stands ? <p className="soft">{verdictWords.stands}</p> : null}
      {refused === null ? null : (
        <p className="slip" role="alert">
          {verdictWords.notTaken(refused)}
        </p>
      )}
      {now === null ? null : <p className="soft">{verdictWords.over}</p>}
    </div>
  )
}

/** Lengths nearer than this to the design's own are the same, mm. */
const sameMm = 1e-4

function standsAt({ design, tables }: DerivedDesign, { lengths }: Proposal): boolean {
  const openChangeMm = tables.mainSlide.openMm - tables.mainSlide.inTuneOpenMm
  return (
    Math.abs(lengths.openChangeMm - openChangeMm) < sameMm &&
    design.loops.every(
      ({ id, lengthMm }) => Math.abs((lengths.lengthsMm[id] ?? lengthMm) - lengthMm) < sameMm,
    )
  )
}

function take({ design, tables }: DerivedDesign, { lengths }: Proposal): string | null {
  endBurst()
  const { inTuneOpenMm } = tables.mainSlide
  // An open note that the solver left alone keeps the very cents that were typed.
  const isOpenMoved = Math.abs(lengths.openChangeMm - (tables.mainSlide.openMm - inTuneOpenMm)) >= sameMm
  const openDetuningCents = centsBetween(inTuneOpenMm + lengths.openChangeMm, inTuneOpenMm)
  const taken = { loopsMm: lengths.lengthsMm, ...(isOpenMoved ? { openDetuningCents } : {}) }
  const refused = tryRun(takeIntoDesign(verdictWords.takeStep, design.id, taken))
  if (refused === null) useLengths.setState({ walkedTo: null })
  return refused
}

function Figures({
  now,
  proposal,
}: {
  readonly now: Reached
  readonly proposal: Proposal | null
}): ReactNode {
  return (
    <table className="figures beforeAfter">
      <caption className="unseen">{verdictWords.caption}</caption>
      <thead>
        <tr>
          <th scope="col">
            <i>{verdictWords.cents}</i>
          </th>
          <th scope="col">{verdictWords.asItStands}</th>
          <th scope="col">{verdictWords.proposed}</th>
        </tr>
      </thead>
      <tbody>
        <tr>
          <th scope="row">{verdictWords.rms}</th>
          <td>{plainFigure(now.rmsCents, 1)}</td>
          <td>{proposal === null ? '—' : <b>{plainFigure(proposal.lengths.rmsCents, 1)}</b>}</td>
        </tr>
        <tr>
          <th scope="row">{verdictWords.largest}</th>
          <td>
            {signedCents(now.largestCents)}
            {now.largestAt === null || Math.abs(now.largestCents) < 0.05 ? null : (
              <i> {verdictWords.at(noteWords(now.largestAt, now.largestNote ?? null))}</i>
            )}
          </td>
          <td>{proposal === null ? '—' : <b>{largestWords(proposal.lengths)}</b>}</td>
        </tr>
      </tbody>
    </table>
  )
}

/** The largest error with its sign; one that stands on both sides has both. */
function largestWords({ largestCents, rows }: LengthsAndErrors): string {
  // Of a row with several notes it is one of them that holds the largest, not their mean.
  const held = rows.flatMap((row) => row.notes ?? [row]).filter(({ holdsLargest }) => holdsLargest)
  const isSharp = held.some(({ leftCents }) => leftCents > 0)
  const isFlat = held.some(({ leftCents }) => leftCents < 0)
  if (isSharp && isFlat) return `±${plainFigure(largestCents, 1)}`
  return isSharp || isFlat ? signedCents(isFlat ? -largestCents : largestCents) : plainFigure(largestCents, 1)
}

function Holding({
  derived,
  proposal,
}: {
  readonly derived: DerivedDesign
  readonly proposal: Proposal
}): ReactNode {
  const unit = useSettings((settings) => settings.unit)
  const rows = proposal.lengths.rows.filter(({ holdsLargest }) => holdsLargest)
  const bounds = proposal.solution?.heldByBounds ?? []
  const named = rows.flatMap(holderWords)
  return (
    <>
      {named.length === 0 || proposal.lengths.largestCents < 0.05 ? null : (
        <p className="holding">
          {named.length === 1 ? verdictWords.largestIsAt : verdictWords.largestIsHeldBy}
          {named.slice(0, 8).map((each, i) => (
            <span key={each}>
              {i === 0 ? '' : verdictWords.comma}
              <span className="unbroken">{each}</span>
            </span>
          ))}
          {named.length > 8 ? verdictWords.andMore(named.length - 8) : ''}
          {verdictWords.stop}
        </p>
      )}
      {bounds.map((bound) => (
        <p key={`${bound.loop} ${bound.bound}`} className="holding">
          {boundWords(derived, bound, unit)}
        </p>
      ))}
    </>
  )
}

/** What holds the largest in a row: the row itself, or some of its notes. */
function holderWords({ name, leftCents, notes }: RowOutcome): readonly string[] {
  if (notes === undefined) return [verdictWords.holder(fingeringWords(name), signedCents(leftCents))]
  return notes
    .filter(({ holdsLargest }) => holdsLargest)
    .map((note) => verdictWords.holder(noteWords(name, note.name), signedCents(note.leftCents)))
}

function noteWords(fingering: string, note: string | null): string {
  return note === null ? fingeringWords(fingering) : aimWords.heard(fingeringWords(fingering), note)
}

/** A bound that holds, and what a millimetre of it is worth. */
function boundWords(derived: DerivedDesign, bound: HoldingBound, unit: 'mm' | 'in'): string {
  const name = bound.loop === null ? verdictWords.openNote : loopName(derived, bound.loop)
  const called = `${name.charAt(0).toUpperCase()}${name.slice(1)}`
  const end = `${lengthFigure(bound.atMm, unit)} ${unit}`
  const gain =
    bound.gainCentsPerMm < 0.0005
      ? verdictWords.noGain
      : verdictWords.gain(plainFigure(bound.gainCentsPerMm, 3), bound.bound === 'lowest')
  return verdictWords.bound(called, bound.bound, end, gain)
}
