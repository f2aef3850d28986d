import { memo, type ReactNode } from 'react'
import type { FingeredMode } from '#shared/bore/fingeringModes.ts'
import { plainFigure, signedCents } from '#shared/quantity/figures.ts'
import { unitMm } from '#shared/quantity/units.ts'
import { lengthFigure } from '../../fields/LengthField.tsx'
import { useSettings } from '../../state/settings.ts'
import { fundamentalTable, groupLengthTable } from '../../tables/boreTables.ts'
import { TableOut } from '../../tables/TableOut.tsx'
import { boreWords } from '../../words/bore.ts'
import { boreTitles } from '../../words/tableHeadings.ts'
import type { BoreAnswer } from '../../worker/boreAnswer.ts'
import { useBoreView } from '../boreStore.ts'
import type { ShownFingering } from '../useBore.ts'
import { FingeringColumns } from './FingeringColumns.tsx'
import { ModeChart, type ModeLine } from './ModeChart.tsx'

interface ModePictureProps {
  readonly designName: string
  readonly answer: BoreAnswer
  readonly shown: readonly ShownFingering[]
}

/** Equivalent fundamental of each mode, cents against the one that suits all of them best. */
export const FundamentalPicture = memo(function FundamentalPicture({
  designName,
  answer,
  shown,
}: ModePictureProps): ReactNode {
  const { firstMode, lastMode } = useBoreView()
  const lines = useLines(answer, shown, (mode) => mode.equivalentFundamentalCents)
  return (
    <ModeChart
      label={boreWords.fundamentalLabel}
      title={boreTitles.fundamental(designName)}
      axisName={boreWords.fundamentalAxis}
      lines={lines}
      firstMode={firstMode}
      lastMode={lastMode}
      zero
      least={20}
    />
  )
})

/** The equivalent fundamentals as figures. */
export const FundamentalTable = memo(function FundamentalTable({
  designName,
  answer,
  shown,
}: ModePictureProps): ReactNode {
  return (
    <>
      <TableOut
        name={boreTitles.fundamental(designName)}
        table={() => fundamentalTable(designName, answer.modes, shown)}
      />
      <FingeringColumns
        caption={boreWords.fundamentalAxis}
        modes={answer.modes}
        shown={shown}
        figureOf={({ equivalentFundamentalCents: cents }) => (cents === null ? null : signedCents(cents))}
      />
      <p className="soft">
        {boreWords.nominalFundamentals(
          shown.flatMap(({ fingering }) => {
            const hz = answer.modes.find((each) => each.fingering === fingering)?.nominalFundamentalHz
            return hz === null || hz === undefined ? [] : [`${fingering}: ${plainFigure(hz, 2)} Hz`]
          }),
        )}
      </p>
    </>
  )
})

/** Group length of each mode: the tube that it answers a millimetre with. */
export const GroupLengthPicture = memo(function GroupLengthPicture({
  designName,
  answer,
  shown,
}: ModePictureProps): ReactNode {
  const { firstMode, lastMode } = useBoreView()
  const unit = useSettings((settings) => settings.unit)
  const perUnit = unitMm(unit)
  const lines = useLines(answer, shown, ({ groupLength }) => groupLength.groupLengthMm / perUnit)
  return (
    <ModeChart
      label={boreWords.groupLabel}
      title={boreTitles.groupLength(designName)}
      axisName={boreWords.groupAxis(unit)}
      lines={lines}
      firstMode={firstMode}
      lastMode={lastMode}
      zero={false}
      least={100 / perUnit}
    />
  )
})

/** Group lengths as figures, and what one more millimetre does. */
export const GroupLengthTable = memo(function GroupLengthTable({
  designName,
  answer,
  shown,
}: ModePictureProps): ReactNode {
  const unit = useSettings((settings) => settings.unit)
  return (
    <>
      <TableOut
        name={boreTitles.groupLength(designName)}
        table={() => groupLengthTable(designName, answer.modes, shown, unit)}
      />
      <FingeringColumns
        caption={boreWords.groupCaption(unit)}
        modes={answer.modes}
        shown={shown}
        figureOf={({ groupLength }) => lengthFigure(groupLength.groupLengthMm, unit, 0)}
      />
      <FingeringColumns
        caption={boreWords.perMillimetre}
        modes={answer.modes}
        shown={shown}
        figureOf={({ groupLength }) => signedCents(groupLength.centsPerMm, 2)}
      />
    </>
  )
})

function useLines(
  { modes }: BoreAnswer,
  shown: readonly ShownFingering[],
  figureOf: (mode: FingeredMode) => number | null,
): readonly ModeLine[] {
  const { firstMode, lastMode } = useBoreView()
  return shown.map(({ fingering, series }) => ({
    key: fingering,
    series,
    points: (modes.find((each) => each.fingering === fingering)?.modes ?? []).flatMap((mode) => {
      const value = figureOf(mode)
      const inside = mode.mode >= firstMode && mode.mode <= lastMode
      return value === null || !inside ? [] : [{ mode: mode.mode, value, shallow: mode.widthHz === null }]
    }),
  }))
}
