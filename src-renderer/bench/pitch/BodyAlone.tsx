import { type ReactNode, useMemo, useState } from 'react'
import type { PitchChangeAnswer } from '#shared/bench/pitchChange.ts'
import { signedCents } from '#shared/quantity/figures.ts'
import { fingeringsOf } from '#shared/valves/fingerings.ts'
import { usualFingerings } from '#shared/valves/usual.ts'
import type { BenchPitchChange } from '#shared/workbook/bench.ts'
import type { Design } from '#shared/workbook/workbook.ts'
import type { ChartModel, ChartPoint } from '../../curves/chartModel.ts'
import { ErrorChartView } from '../../curves/ErrorChartView.tsx'
import { SeriesMark } from '../../look/SeriesMark.tsx'
import { BandField } from '../../pages/Curves.tsx'
import { useSettings } from '../../state/settings.ts'
import { chartTable } from '../../tables/curvesTables.ts'
import { TableOut } from '../../tables/TableOut.tsx'
import { pitchWords } from '../../words/benchPitch.ts'

interface BodyAloneProps {
  readonly design: Design
  readonly change: BenchPitchChange
  readonly answer: PitchChangeAnswer
}

/** What the combinations do when the body is taken to the new pitch and the loops are left as they are. */
export function BodyAlone({ design, change, answer }: BodyAloneProps): ReactNode {
  const bandCents = useSettings((settings) => settings.bandCents)
  const [picked, setPicked] = useState<ChartPoint | null>(null)
  const model = useMemo(
    () => bodyAloneModel(design, change, answer, bandCents),
    [design, change, answer, bandCents],
  )
  return (
    <section className="bodyAlone" aria-label={pitchWords.bodyAlone}>
      <div className="caption">
        <h2>{pitchWords.bodyAlone}</h2>
        <BandField />
      </div>
      <ErrorChartView model={model} selected={picked} onPick={setPicked} />
      <div className="tableFrame">
        <TableOut name={model.title} table={() => chartTable(model, pitchWords.fingering)} />
        <BodyAloneTable model={model} />
      </div>
    </section>
  )
}

function BodyAloneTable({ model }: { readonly model: ChartModel }): ReactNode {
  return (
    <table className="figures" style={{ maxWidth: 620 }}>
      <caption className="unseen">{pitchWords.bodyAloneCaption(model.title)}</caption>
      <thead>
        <tr>
          <th scope="col">{pitchWords.fingering}</th>
          {model.series.map(({ id, name, series }) => (
            <th scope="col" key={id}>
              <SeriesMark series={series} />
              {name}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {model.categories.map(({ key, label }, row) => (
          <tr key={key}>
            <th scope="row">{label}</th>
            {model.series.map(({ id, values }) => (
              <td key={id} className={Math.abs(values[row] ?? 0) > model.bandCents ? 'hot' : undefined}>
                {signedCents(values[row] ?? 0)}
              </td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  )
}

function bodyAloneModel(
  design: Design,
  { fromA4Hz, toA4Hz }: BenchPitchChange,
  { beforeErrorsCents, ifOnlyBodyErrorsCents }: PitchChangeAnswer,
  bandCents: number,
): ChartModel {
  const all = fingeringsOf(design.valves, design.fingerings ?? 'all')
  const names = usualFingerings(design.valves, all).map(({ name }) => name)
  const series = (id: string, name: string, place: number, errors: Readonly<Record<string, number>>) => ({
    id,
    name,
    series: place,
    values: names.map((name) => (Object.hasOwn(errors, name) ? (errors[name] ?? null) : null)),
    notes: names,
  })
  return {
    title: pitchWords.bodyAloneTitle,
    categories: names.map((name) => ({ key: name, label: name })),
    series: [
      series('before', pitchWords.before(fromA4Hz), 0, beforeErrorsCents),
      series('after', pitchWords.after(toA4Hz), 1, ifOnlyBodyErrorsCents),
    ],
    bandCents,
  }
}
