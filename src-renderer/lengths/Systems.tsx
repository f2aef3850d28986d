import type { Remote } from 'comlink'
import { type ReactNode, useMemo } from 'react'
import { plainFigure, signedCents } from '#shared/quantity/figures.ts'
import type { LengthAnswer } from '#shared/solve/lengthAnswer.ts'
import { Fold } from '../fields/Fold.tsx'
import { SeriesMark } from '../look/SeriesMark.tsx'
import { type DerivedDesign, useVisible } from '../state/derived.ts'
import { useLengths } from '../state/lengthsStore.ts'
import { systemsTable } from '../tables/lengthsTables.ts'
import { TableOut } from '../tables/TableOut.tsx'
import { systemsWords } from '../words/lengths.ts'
import { aimWords } from '../words/lengthsAim.ts'
import { titles } from '../words/tableHeadings.ts'
import type { LengthsWork } from '../worker/lengthsWorker.ts'
import { useWork } from '../worker/useWork.ts'
import type { Worked } from '../worker/workDesk.ts'
import { leftByFingering, presentRoutes, type Reached, reachedBy } from './played.ts'
import { answerWords, refusalWords } from './refusalWords.ts'
import { fingeringWords } from './shownFingerings.ts'
import { type Asked, type Question, useQuestions } from './useQuestion.ts'

/** Every visible design at its best under the same choices, side by side. */
export function Systems(): ReactNode {
  return (
    <Fold title={systemsWords.title} hint={systemsWords.hint}>
      {() => <SystemTable />}
    </Fold>
  )
}

const solveEach = async (
  worker: Remote<LengthsWork>,
  questions: readonly Question[],
): Promise<readonly LengthAnswer[]> => worker.solveEach(questions.map(({ problem }) => problem))

interface SystemRow {
  readonly derived: DerivedDesign
  readonly now: Reached | null
  readonly best: { readonly rmsCents: number; readonly largestCents: number } | null
  readonly words: readonly string[]
}

function SystemTable(): ReactNode {
  const visible = useVisible()
  const objective = useLengths((state) => state.objective)
  const aim = useLengths((state) => state.aim)
  const asked = useQuestions(visible)
  const questions = useMemo(() => asked.flatMap((each) => ('refusals' in each ? [] : [each])), [asked])
  const worked = useWork('systems', questions, solveEach)
  const rows = visible.map((derived, i) => rowOf(derived, asked[i], worked))
  const figure = (row: SystemRow): number | null =>
    row.best === null ? null : objective === 'rms' ? row.best.rmsCents : row.best.largestCents
  const bests = rows.flatMap((row) => figure(row) ?? [])
  const least = bests.length === 0 ? null : Math.min(...bests)
  return (
    <>
      <TableOut name={titles.systems} table={() => systemsTable(rows)} />
      <table className="figures systemTable">
        <caption className="unseen">{systemsWords.caption}</caption>
        <thead>
          <tr>
            <th scope="col">{systemsWords.columns.design}</th>
            <th scope="col">
              {systemsWords.columns.rmsNow} <i>{systemsWords.cents}</i>
            </th>
            <th scope="col">{systemsWords.columns.rmsBest}</th>
            <th scope="col">{systemsWords.columns.largestNow}</th>
            <th scope="col">{systemsWords.columns.largestBest}</th>
            <th scope="col">{systemsWords.columns.times[objective]}</th>
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <SystemLine key={row.derived.design.id} row={row} timesBest={times(figure(row), least)} />
          ))}
        </tbody>
      </table>
      <p className="soft">
        {systemsWords.note}
        {aim === 'resonances' ? ` ${aimWords.systemsByLengths}` : ''}
      </p>
      <Beaten rows={rows} figure={figure} objective={objective} />
    </>
  )
}

function rowOf(
  derived: DerivedDesign,
  asked: Asked | undefined,
  worked: Worked<readonly Question[], readonly LengthAnswer[]> | null,
): SystemRow {
  if (asked === undefined || 'refusals' in asked) {
    return { derived, now: null, best: null, words: refusalWords(asked?.refusals ?? [], derived) }
  }
  const now = reachedBy(asked.problem, leftByFingering(presentRoutes(derived), asked.counted))
  if (worked === null) return { derived, now, best: null, words: [] }
  if ('failure' in worked) return { derived, now, best: null, words: [worked.failure] }
  const answer =
    worked.answer[worked.question.findIndex((each) => each.derived.design.id === derived.design.id)]
  if (answer === undefined) return { derived, now, best: null, words: [] }
  const best = 'rmsCents' in answer ? answer : null
  return { derived, now, best, words: best === null ? answerWords(answer, derived) : [] }
}

/** How many times the least a figure is; `null` where that says nothing, because the least is nothing. */
function times(figure: number | null, least: number | null): number | null {
  return figure === null || least === null || least < 0.05 ? null : figure / least
}

function SystemLine({
  row,
  timesBest,
}: {
  readonly row: SystemRow
  readonly timesBest: number | null
}): ReactNode {
  const { derived, now, best, words } = row
  const { design, series } = derived
  return (
    <tr>
      <th scope="row">
        <SeriesMark series={series} /> {design.name}
        {words.map((sentence) => (
          <small key={sentence}>{sentence}</small>
        ))}
      </th>
      <td>{now === null ? '·' : plainFigure(now.rmsCents, 1)}</td>
      <td>{best === null ? '·' : <b>{plainFigure(best.rmsCents, 1)}</b>}</td>
      <td>
        {now === null ? '·' : signedCents(now.largestCents)}
        {now?.largestAt == null ? null : <i> {systemsWords.at(fingeringWords(now.largestAt))}</i>}
      </td>
      <td>{best === null ? '·' : <b>{plainFigure(best.largestCents, 1)}</b>}</td>
      <td>{timesBest === null ? '·' : plainFigure(timesBest, 1)}</td>
    </tr>
  )
}

interface BeatenProps {
  readonly rows: readonly SystemRow[]
  readonly figure: (row: SystemRow) => number | null
  readonly objective: 'rms' | 'largest'
}

/** Which system is the best, and how good it is. */
function Beaten({ rows, figure, objective }: BeatenProps): ReactNode {
  const sorted = rows
    .flatMap((row) => {
      const cents = figure(row)
      return cents === null ? [] : [{ name: row.derived.design.name, cents }]
    })
    .sort((a, b) => a.cents - b.cents)
  const [first, second] = sorted
  if (first === undefined || second === undefined) return null
  const size = first.cents < 0.05 ? systemsWords.exact : systemsWords.inCents(plainFigure(first.cents, 1))
  return (
    <p>
      {systemsWords.atItsBest} <b>{first.name}</b> {systemsWords.hasTheLeast[objective](size)}
    </p>
  )
}
