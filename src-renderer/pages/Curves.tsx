import { memo, type ReactNode, useCallback, useMemo } from 'react'
import { CurvesTable } from '../curves/CurvesTable.tsx'
import type { ChartPoint } from '../curves/chartModel.ts'
import { type CurvesModel, curvesByFingering, curvesByNote, placeOfSelection } from '../curves/curveModels.ts'
import { ErrorChartView } from '../curves/ErrorChartView.tsx'
import { Segments } from '../fields/Choice.tsx'
import { NumberField } from '../fields/NumberField.tsx'
import { Mark } from '../help/Mark.tsx'
import { type DerivedDesign, useSelectedDesign, useVisible } from '../state/derived.ts'
import { useSettings } from '../state/settings.ts'
import { useFollowing } from '../state/useFollowing.ts'
import { select, useView, type ViewState } from '../state/viewStore.ts'
import { chartTable, combinationsTable } from '../tables/curvesTables.ts'
import type { LengthUnit } from '../tables/lengthCell.ts'
import { TableOut } from '../tables/TableOut.tsx'
import { curvesWords as words } from '../words/curves.ts'
import { pageNames } from '../words/pages.ts'
import { tableWords } from '../words/table.ts'
import { titles } from '../words/tableHeadings.ts'

/** Error curves of the visible designs, by fingering or by note, and the same figures in a table. */
export function Curves(): ReactNode {
  const visible = useVisible()
  const { by, which, selection } = useView()
  const { spelling, bandCents, unit } = useSettings()
  const chosen = useSelectedDesign()
  const selectedId = chosen?.design.id ?? null
  const model = useMemo(
    () =>
      by === 'fingering'
        ? curvesByFingering(visible, selectedId, which, bandCents)
        : curvesByNote(visible, selectedId, spelling, bandCents),
    [visible, selectedId, by, which, spelling, bandCents],
  )
  const selected = useMemo(() => placeOfSelection(model, selection), [model, selection])
  const pick = usePick(model)
  return (
    <section className="sheet curves" aria-label={pageNames.curves}>
      <CurvesCaption by={by} which={which} />
      {model.leftOut === 0 ? null : (
        <p className="soft">{words.leftOut(model.categories.length, model.leftOut)}</p>
      )}
      {model.unreached.length === 0 ? null : <p className="soft">{words.unreached(model.unreached)}</p>}
      {visible.length === 0 ? (
        <p className="empty">{words.allHidden}</p>
      ) : (
        <>
          <ErrorChartView model={model} selected={selected} onPick={pick} />
          <Tables model={model} chosen={chosen} unit={unit} selected={selected} />
        </>
      )}
    </section>
  )
}

interface TablesOutProps {
  readonly model: CurvesModel
  readonly chosen: DerivedDesign | null
  readonly unit: LengthUnit
}

interface TablesProps extends TablesOutProps {
  readonly selected: ChartPoint | null
}

/** The chart's figures in a table. The curve goes with the hand that drags a loop; the table follows it. */
const Tables = memo(function Tables({ model, chosen, unit, selected }: TablesProps): ReactNode {
  const present = useMemo(() => ({ model, chosen }), [model, chosen])
  const follows = useFollowing(present, model.series.map(({ id }) => id).join(' '))
  // A pick means the figure that is in sight.
  const pick = usePick(follows.model)
  return (
    <div className="tableFrame">
      <TablesOut {...follows} unit={unit} />
      <CurvesTable model={follows.model} selected={selected} onPick={pick} />
    </div>
  )
})

/** The chart's figures and the combination table, to take along. */
const TablesOut = memo(function TablesOut({ model, chosen, unit }: TablesOutProps): ReactNode {
  return (
    <div className="tablesOut">
      <TableOut name={model.title} table={() => chartTable(model, model.heading)} />
      {chosen === null ? null : (
        <TableOut
          name={titles.combinations(chosen.design.name)}
          label={tableWords.combinations}
          table={() => combinationsTable(chosen, unit)}
        />
      )}
    </div>
  )
})

/** Selects what a point of a model stands for. */
function usePick({ cells }: CurvesModel): (point: ChartPoint) => void {
  return useCallback(
    ({ series, category }) => {
      const cell = cells[series]?.[category]
      if (cell) select(cell)
    },
    [cells],
  )
}

interface CurvesCaptionProps {
  readonly by: ViewState['by']
  readonly which: ViewState['which']
}

/** Drawn anew only when another picture is asked for. */
const CurvesCaption = memo(function CurvesCaption({ by, which }: CurvesCaptionProps): ReactNode {
  return (
    <div className="caption">
      <h1>{words.headings[by]}</h1>
      <Mark id={by === 'fingering' ? 'combination' : 'cents'} />
      <Segments
        label={words.alongAxis}
        labelHidden
        value={by}
        options={[
          { value: 'fingering', text: words.by.fingering },
          { value: 'note', text: words.by.note },
        ]}
        take={(value) => useView.setState({ by: value })}
      />
      {by === 'fingering' ? (
        <Segments
          label={words.shown}
          labelHidden
          value={which}
          options={[
            { value: 'usual', text: words.which.usual },
            { value: 'all', text: words.which.all },
          ]}
          take={(value) => useView.setState({ which: value })}
        />
      ) : null}
      <BandField />
    </div>
  )
})

/** The tolerance band that each person sets. */
export function BandField(): ReactNode {
  const bandCents = useSettings((settings) => settings.bandCents)
  return (
    <div className="band">
      <NumberField
        label={words.band}
        mark="band"
        value={bandCents}
        digits={0}
        atLeast={1}
        atMost={100}
        units={['cents']}
        by={1}
        width={4}
        unit="cents"
        take={(value) => {
          useSettings.setState({ bandCents: value })
          return null
        }}
      />
    </div>
  )
}
