import type { Remote } from 'comlink'
import { type ReactNode, useMemo, useRef, useState } from 'react'
import { plainFigure, signedCents } from '#shared/quantity/figures.ts'
import { setBoreSetting } from '#shared/workbook/commands/boreCommands.ts'
import { NumberField } from '../../fields/NumberField.tsx'
import { tryRun } from '../../fields/refusal.ts'
import { run } from '../../state/workbookStore.ts'
import { settledPitchesTable } from '../../tables/boreTables.ts'
import { TableOut } from '../../tables/TableOut.tsx'
import { boreWords } from '../../words/bore.ts'
import { boreTitles } from '../../words/tableHeadings.ts'
import type { BoreBody } from '../../worker/boreAnswer.ts'
import { askWithBody, givenUp, useBoreWork } from '../../worker/boreDesk.ts'
import type { BoreWork } from '../../worker/boreWorker.ts'
import type { SumAnswer, SumQuestion } from '../../worker/sumAnswer.ts'
import { useNoticed, Working } from '../BoreStatus.tsx'
import { useBoreView } from '../boreStore.ts'
import type { BoreOnShow, ShownFingering } from '../useBore.ts'
import { LinePlotView } from './LinePlotView.tsx'
import { type PlotModel, valueAt } from './plotModel.ts'
import { Scrolling } from './Scrolling.tsx'
import { settledPitches } from './settledPitches.ts'
import { useHeldRange } from './useHeldRange.ts'

interface SumPictureProps {
  readonly bore: BoreOnShow
  readonly shown: readonly ShownFingering[]
  readonly designId: string
  readonly designName: string
}

const points = 1400
const mostModes = 64

interface AskedSums {
  readonly body: BoreBody
  readonly question: SumQuestion
}

const sums = (worker: Remote<BoreWork>, { body, question }: AskedSums) =>
  askWithBody(worker, body, async () => worker.sums(question))

/** The weighted sum of Re Z over frequency, with the pitches at which a note would settle by it. */
export function SumPicture({ bore, shown, designId, designName }: SumPictureProps): ReactNode {
  const { answer, waiting, givenUp: stopped, again } = useSums(bore, shown)
  const noticed = useNoticed(waiting)
  const [pointedHz, setPointedHz] = useState<number | null>(null)
  const firstMode = useBoreView((state) => state.firstMode)
  const showTable = useBoreView((state) => state.showTable)
  const { series, model } = useSumModel(answer, shown, firstMode)
  return (
    <>
      <Weights designId={designId} weights={bore.input.harmonicWeights} />
      {noticed ? <Working /> : null}
      {stopped ? (
        <p className="boreStatus" role="status">
          {boreWords.cancelled}{' '}
          <button type="button" onClick={again}>
            {boreWords.again}
          </button>
        </p>
      ) : null}
      {answer === null ? (
        <div className="boreChart" style={{ height: 270 }} />
      ) : (
        <LinePlotView
          model={model}
          title={boreTitles.sum(designName)}
          height={270}
          label={boreWords.sumLabel}
          pointedHz={pointedHz}
          point={setPointedHz}
        />
      )}
      <p className="readout" aria-live="polite">
        {pointedHz === null ? boreWords.sumHint : readout(model, pointedHz)}
      </p>
      {showTable && answer !== null ? (
        <PitchTable designName={designName} answer={answer} shown={series} />
      ) : null}
    </>
  )
}

interface Sums {
  /** The latest answer; `null` before the first. */
  readonly answer: SumAnswer | null
  readonly waiting: boolean
  readonly givenUp: boolean
  readonly again: () => void
}

function useSums(bore: BoreOnShow, shown: readonly ShownFingering[]): Sums {
  const firstMode = useBoreView((state) => state.firstMode)
  const lastMode = useBoreView((state) => state.lastMode)
  const [times, setTimes] = useState(0)
  const { input, bodyKey } = bore
  // biome-ignore lint/correctness/useExhaustiveDependencies: `times` only makes another object of the same question
  const asked = useMemo((): AskedSums => {
    const { sections, conditions, open, harmonicWeights: weights } = input
    const fingerings = shown.map(({ series: _, ...fingering }) => fingering)
    const highestMode = Math.min(mostModes, (lastMode + 1) * Math.max(1, weights.length))
    return {
      body: { bodyKey, sections, conditions },
      question: { bodyKey, highestMode, open, fingerings, weights, firstMode, lastMode, points },
    }
  }, [input, bodyKey, shown, firstMode, lastMode, times])
  const worked = useBoreWork('sum', asked, sums)
  const latest = useRef<SumAnswer | null>(null)
  if (worked !== null && 'answer' in worked && worked.answer.ok) latest.current = worked.answer.value
  const waiting = worked?.question !== asked
  return {
    answer: latest.current,
    waiting,
    givenUp: !waiting && worked !== null && 'failure' in worked && worked.failure === givenUp,
    again: () => setTimes((before) => before + 1),
  }
}

function useSumModel(answer: SumAnswer | null, shown: readonly ShownFingering[], firstMode: number) {
  const series = useMemo(
    () => shown.filter(({ fingering }) => answer?.curves.some((curve) => curve.fingering === fingering)),
    [answer, shown],
  )
  const most = (answer?.curves ?? []).reduce(
    (top, { sum }) => sum.reduce((high, value) => Math.max(high, value), top),
    0,
  )
  const range = useHeldRange(series.map(({ fingering }) => fingering).join(), [0, 1.14 * most])
  const model = useMemo((): PlotModel => {
    const drawn = series.map(({ fingering, series: place }) => ({
      key: fingering,
      series: place,
      values: answer?.curves.find((curve) => curve.fingering === fingering)?.sum ?? new Float64Array(),
    }))
    const marks = series.flatMap(({ fingering, series: place }) =>
      (answer?.curves.find((curve) => curve.fingering === fingering)?.pitches ?? []).flatMap(({ hz }, i) =>
        hz === null || i + 1 < firstMode
          ? []
          : [{ line: fingering, series: place, mode: i + 1, hz, value: null }],
      ),
    )
    return { hz: answer?.hz ?? new Float64Array(), lines: drawn, marks, range, axisName: boreWords.sumAxis }
  }, [answer, series, range, firstMode])
  return { series, model }
}

function readout(model: PlotModel, hz: number): string {
  const each = model.lines.map(
    ({ key }) => `${key}: ${plainFigure(valueAt(model, key, hz) ?? 0, 3)} ${boreWords.impedanceUnit}`,
  )
  return `${plainFigure(hz, 2)} Hz. ${each.join('; ')}`
}

const mostTerms = 40

/** Weights of the harmonics, one field a term. */
function Weights({
  designId,
  weights,
}: {
  readonly designId: string
  readonly weights: readonly number[]
}): ReactNode {
  const set = (next: readonly number[] | undefined) =>
    tryRun(setBoreSetting(designId, 'harmonicWeights', next))
  return (
    <fieldset className="weights">
      <legend>{boreWords.weights}</legend>
      {weights.map((weight, i) => (
        <NumberField
          // biome-ignore lint/suspicious/noArrayIndexKey: a term is known by its harmonic
          key={i}
          label={boreWords.weightOf(i + 1)}
          value={weight}
          digits={Number.isInteger(weight) ? 0 : 2}
          atLeast={0}
          atMost={1e6}
          by={1}
          width={4}
          take={(value) => set(weights.with(i, value))}
        />
      ))}
      <button
        type="button"
        className="add"
        disabled={weights.length >= mostTerms}
        onClick={() => set([...weights, 1])}
      >
        {boreWords.addTerm}
      </button>
      <button
        type="button"
        className="quiet"
        disabled={weights.length <= 1}
        onClick={() => set(weights.slice(0, -1))}
      >
        {boreWords.removeTerm}
      </button>
      <button
        type="button"
        className="quiet"
        onClick={() => run(setBoreSetting(designId, 'harmonicWeights', undefined))}
      >
        {boreWords.usualWeights}
      </button>
    </fieldset>
  )
}

interface PitchTableProps {
  readonly designName: string
  readonly answer: SumAnswer
  readonly shown: readonly ShownFingering[]
}

/** Where notes would settle: the pitch, how far above its peak, and against the open route's. */
function PitchTable({ designName, answer, shown }: PitchTableProps): ReactNode {
  const pitches = settledPitches(answer, shown)
  return (
    <>
      <TableOut
        name={boreTitles.pitches(designName)}
        table={() => settledPitchesTable(designName, pitches)}
      />
      <Scrolling label={boreWords.pitchesCaption} className="tableScroll">
        <table className="figures boreFigures">
          <caption>{boreWords.pitchesCaption}</caption>
          <thead>
            <tr>
              <th scope="col">{boreWords.fingering}</th>
              <th scope="col">{boreWords.mode}</th>
              <th scope="col">{boreWords.settlesAt}</th>
              <th scope="col">{boreWords.abovePeak}</th>
              <th scope="col">{boreWords.againstTarget}</th>
            </tr>
          </thead>
          <tbody>
            {pitches.map(({ fingering, mode, hz, abovePeakCents, againstOpenCents }) => (
              <tr key={`${fingering} ${mode}`}>
                <th scope="row">{fingering}</th>
                <td>{mode}</td>
                <td>{hz === null ? boreWords.settlesNowhere : plainFigure(hz, 2)}</td>
                <td>{abovePeakCents === null ? '·' : signedCents(abovePeakCents)}</td>
                <td>{againstOpenCents === null ? '·' : signedCents(againstOpenCents)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </Scrolling>
    </>
  )
}
