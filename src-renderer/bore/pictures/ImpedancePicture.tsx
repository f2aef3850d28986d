import { memo, type ReactNode, useMemo, useState } from 'react'
import { plainFigure } from '#shared/quantity/figures.ts'
import { Segments } from '../../fields/Choice.tsx'
import { peaksTable } from '../../tables/boreTables.ts'
import { TableOut } from '../../tables/TableOut.tsx'
import { boreWords } from '../../words/bore.ts'
import { boreTitles } from '../../words/tableHeadings.ts'
import type { BoreAnswer } from '../../worker/boreAnswer.ts'
import { useBoreView } from '../boreStore.ts'
import type { ShownFingering } from '../useBore.ts'
import { FingeringColumns } from './FingeringColumns.tsx'
import { LinePlotView } from './LinePlotView.tsx'
import { type PlotModel, valueAt } from './plotModel.ts'
import { useHeldRange } from './useHeldRange.ts'

interface ImpedancePictureProps {
  readonly designName: string
  readonly answer: BoreAnswer
  readonly shown: readonly ShownFingering[]
}

/** Magnitude and phase of the input impedance, fingerings laid over each other, peaks marked by their mode. */
export const ImpedancePicture = memo(function ImpedancePicture({
  designName,
  answer,
  shown,
}: ImpedancePictureProps): ReactNode {
  const [pointedHz, setPointedHz] = useState<number | null>(null)
  const drawn = useMemo(
    () => shown.filter(({ fingering }) => answer.curves.some((curve) => curve.fingering === fingering)),
    [answer, shown],
  )
  const key = drawn.map(({ fingering }) => fingering).join()
  const most = answer.curves.reduce(
    (top, { magnitude }) => magnitude.reduce((a, b) => Math.max(a, b), top),
    0,
  )
  const range = useHeldRange(key, [0, 1.12 * most])
  const magnitude = useMemo(() => magnitudeModel(answer, drawn, range), [answer, drawn, range])
  const phase = useMemo(() => phaseModel(answer, drawn), [answer, drawn])
  if (drawn.length === 0) return <div className="boreChart impedance" />
  return (
    <>
      <LinePlotView
        model={magnitude}
        title={boreTitles.magnitude(designName)}
        height={250}
        label={boreWords.magnitudeLabel}
        pointedHz={pointedHz}
        point={setPointedHz}
      />
      <LinePlotView
        model={phase}
        title={boreTitles.phase(designName)}
        height={150}
        label={boreWords.phaseLabel}
        pointedHz={pointedHz}
        point={setPointedHz}
      />
      <p className="readout" aria-live="polite">
        {pointedHz === null ? boreWords.pointAtPeaks : readout(magnitude, phase, pointedHz)}
      </p>
    </>
  )
})

function magnitudeModel(
  { hz, curves, modes }: BoreAnswer,
  drawn: readonly ShownFingering[],
  range: readonly [number, number],
): PlotModel {
  const marks = drawn.flatMap(({ fingering, series }) =>
    (modes.find((each) => each.fingering === fingering)?.modes ?? []).map((mode) => ({
      line: fingering,
      series,
      mode: mode.mode,
      hz: mode.hz,
      value: mode.heightPaSPerM3 / 1e6,
    })),
  )
  const lines = linesOf(drawn, (name) => curves.find(({ fingering }) => fingering === name)?.magnitude)
  return { hz, lines, marks, range, axisName: boreWords.magnitudeAxis }
}

function phaseModel({ hz, curves }: BoreAnswer, drawn: readonly ShownFingering[]): PlotModel {
  const lines = linesOf(drawn, (name) => curves.find(({ fingering }) => fingering === name)?.phaseDegrees)
  return {
    hz,
    lines,
    marks: [],
    range: [-100, 100],
    ticks: [-90, -45, 0, 45, 90],
    axisName: boreWords.phaseAxis,
  }
}

function linesOf(drawn: readonly ShownFingering[], valuesOf: (name: string) => Float64Array | undefined) {
  return drawn.flatMap(({ fingering, series }) => {
    const values = valuesOf(fingering)
    return values === undefined ? [] : [{ key: fingering, series, values }]
  })
}

function readout(magnitude: PlotModel, phase: PlotModel, hz: number): string {
  const each = magnitude.lines.map(({ key }) => {
    const peak = magnitude.marks.find((mark) => mark.line === key && Math.abs(mark.hz - hz) < 1e-6)
    const size = peak?.value ?? valueAt(magnitude, key, hz) ?? 0
    const degrees = valueAt(phase, key, hz) ?? 0
    return boreWords.readoutOf(key, plainFigure(size, 2), plainFigure(degrees, 0), peak?.mode ?? null)
  })
  return `${plainFigure(hz, 2)} Hz. ${each.join('; ')}`
}

/** The peaks of the fingerings laid over each other. */
export const PeaksTable = memo(function PeaksTable({
  designName,
  answer,
  shown,
}: ImpedancePictureProps): ReactNode {
  const figure = useBoreView((state) => state.peakFigure)
  return (
    <>
      <Segments
        label={boreWords.peakFigure}
        value={figure}
        options={[
          { value: 'hz', text: boreWords.peakFigures.hz },
          { value: 'height', text: boreWords.peakFigures.height },
          { value: 'width', text: boreWords.peakFigures.width },
        ]}
        take={(peakFigure) => useBoreView.setState({ peakFigure })}
      />
      <TableOut
        name={boreTitles.peaks(designName)}
        table={() => peaksTable(designName, answer.modes, shown)}
      />
      <FingeringColumns
        caption={boreWords.peaksCaption(boreWords.peakFigures[figure])}
        modes={answer.modes}
        shown={shown}
        figureOf={(mode) => {
          if (figure === 'hz') return plainFigure(mode.hz, 2)
          if (figure === 'height') return plainFigure(mode.heightPaSPerM3 / 1e6, 3)
          return mode.widthHz === null ? null : plainFigure(mode.widthHz, 2)
        }}
      />
    </>
  )
})
