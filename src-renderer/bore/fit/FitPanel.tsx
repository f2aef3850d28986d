import { type ReactNode, useState } from 'react'
import type { ModeTarget } from '#shared/bore/fitBore.ts'
import { ratioOfCents } from '#shared/pitch/cents.ts'
import type { BoreTarget } from '#shared/workbook/bore.ts'
import { takeSections } from '#shared/workbook/commands/boreCommands.ts'
import { tryRun } from '../../fields/refusal.ts'
import { targetsTable } from '../../tables/fitTables.ts'
import { TableOut } from '../../tables/TableOut.tsx'
import { boreWords } from '../../words/bore.ts'
import { boreTitles } from '../../words/tableHeadings.ts'
import { giveUpBoreWork } from '../../worker/boreDesk.ts'
import type { FitQuestion } from '../../worker/boreWorker.ts'
import { useNoticed } from '../BoreStatus.tsx'
import { sectionName } from '../sectionNames.ts'
import type { FitProps } from './FitFold.tsx'
import { FitProposal } from './FitProposal.tsx'
import { bodyLengthKey, type Freedom, freedomsOf } from './freedoms.ts'
import { Targets } from './Targets.tsx'
import { targetRows } from './targetRows.ts'
import { useFit } from './useFit.ts'

/** What may change, which modes are aimed at, and what a fit makes of it before it is taken. */
export function FitPanel({ design, bore, input, answer }: FitProps): ReactNode {
  const { sections } = bore
  const [free, setFree] = useState<ReadonlySet<string>>(() => new Set([bodyLengthKey(sections) ?? '']))
  const [asked, setAsked] = useState<FitQuestion | null>(null)
  const [message, setMessage] = useState<string | null>(null)
  const freedoms = freedomsOf(sections)
  const chosen = freedoms.filter(({ key }) => free.has(key))
  const fit = useFit(asked)
  const modes = answer?.modes.find(({ fingering }) => fingering === input.open.fingering)?.modes ?? []
  const rows = targetRows(input.targets, input.fundamentalHz, modes)
  const noticed = useNoticed(fit.waiting)
  const ask = (): void => {
    setMessage(null)
    setAsked({
      sections,
      conditions: input.conditions,
      free: chosen.map(({ section, dimension, lowest, highest }) => ({
        section,
        dimension,
        lowest,
        highest,
      })),
      targets: hertzTargets(input.targets, input.fundamentalHz),
      inserts: input.open.inserts,
    })
  }
  const isOld =
    asked !== null && (asked.sections !== sections || otherFree(asked, chosen) || stale(asked, input))
  return (
    <div className="fit">
      <fieldset className="freedoms">
        <legend>{boreWords.free}</legend>
        {freedoms.map((freedom) => (
          <label key={freedom.key} className="known">
            <input
              type="checkbox"
              checked={free.has(freedom.key)}
              onChange={(event) => setFree(withKey(free, freedom.key, event.target.checked))}
            />{' '}
            {boreWords.freeLabel(
              boreWords.freeOf[freedom.dimension] ?? '',
              sectionName(sections, freedom.section),
            )}
          </label>
        ))}
      </fieldset>
      <Targets designId={design.id} targets={input.targets} fundamentalHz={input.fundamentalHz} rows={rows} />
      <div className="tablesOut">
        <TableOut name={boreTitles.targets(design.name)} table={() => targetsTable(design.name, rows)} />
      </div>
      <p className="soft">{boreWords.heldNote}</p>
      <div className="buttons">
        <button type="button" className="main" disabled={chosen.length === 0} onClick={ask}>
          {boreWords.findFit}
        </button>
        {noticed ? (
          <span role="status">
            {boreWords.fitting} <progress aria-label={boreWords.fitting} />{' '}
            <button type="button" onClick={giveUpBoreWork}>
              {boreWords.cancel}
            </button>
          </span>
        ) : null}
      </div>
      {chosen.length === 0 ? <p className="slip">{boreWords.nothingFree}</p> : null}
      {fit.message === null ? null : (
        <p className="slip" role="alert">
          {fit.message}
        </p>
      )}
      {message === null ? null : (
        <p className="slip" role="alert">
          {message}
        </p>
      )}
      {isOld && fit.fitted !== null ? <p className="soft">{boreWords.fitOld}</p> : null}
      {asked === null || isOld || fit.fitted === null ? null : (
        <FitProposal
          designName={design.name}
          fitted={fit.fitted}
          asked={asked}
          present={freedomsOf(asked.sections)}
          sections={sections}
          take={() => {
            const refused = tryRun(takeSections(design.id, boreWords.fitStep, fit.fitted?.sections ?? []))
            setMessage(refused)
            if (refused === null) setAsked(null)
          }}
          leave={() => setAsked(null)}
        />
      )}
    </div>
  )
}

function withKey(keys: ReadonlySet<string>, key: string, isIn: boolean): ReadonlySet<string> {
  const next = new Set(keys)
  if (isIn) next.add(key)
  else next.delete(key)
  return next
}

/** Whether other dimensions are free now than were asked about. */
function otherFree({ free }: FitQuestion, chosen: readonly Freedom[]): boolean {
  const keys = (all: FitQuestion['free']): string =>
    all.map(({ section, dimension }) => `${section} ${dimension}`).join()
  return keys(free) !== keys(chosen)
}

function stale(asked: FitQuestion, input: FitProps['input']): boolean {
  const now = [input.conditions, hertzTargets(input.targets, input.fundamentalHz), input.open.inserts]
  return JSON.stringify([asked.conditions, asked.targets, asked.inserts]) !== JSON.stringify(now)
}

/** Targets in hertz: harmonics of the fundamental, with their offsets. Those without weight are left out. */
function hertzTargets(targets: readonly BoreTarget[], fundamentalHz: number): readonly ModeTarget[] {
  return targets
    .filter(({ weight }) => weight !== 0)
    .map(({ mode, cents = 0, weight = 1 }) => ({
      mode,
      hz: mode * fundamentalHz * ratioOfCents(cents),
      weight,
    }))
}
