import { type ReactNode, useMemo } from 'react'
import { noteName } from '#shared/pitch/noteName.ts'
import { inchMm } from '#shared/quantity/units.ts'
import type { Workbook } from '#shared/workbook/workbook.ts'
import { sheetWidthMm } from '../bench/sheet/paper.ts'
import { curvesByFingering, curvesByNote } from '../curves/curveModels.ts'
import { inksAt } from '../curves/inkOfTheme.ts'
import { onLightPaper } from '../picture/lightPaper.ts'
import { SvgText } from '../picture/SvgText.tsx'
import type { DerivedDesign } from '../state/derived.ts'
import { useSettings } from '../state/settings.ts'
import { comparisonTable } from '../tables/comparisonTables.ts'
import { chartTable, combinationsTable } from '../tables/curvesTables.ts'
import { reportWords as words } from '../words/report.ts'
import { comparisonFigures } from '../words/tableHeadings.ts'
import { BenchPart } from './BenchPart.tsx'
import { BorePart } from './BorePart.tsx'
import type { BoreFindings } from './boreFindings.ts'
import { DesignPart, ReportHead } from './DesignPart.tsx'
import { FingeringSheet } from './FingeringSheet.tsx'
import { PaperTable } from './PaperTable.tsx'
import { PicturesPart } from './PicturesPart.tsx'
import { paperCharts } from './paperCharts.ts'
import type { ReportPart } from './reportStore.ts'

interface ReportProps {
  readonly workbook: Workbook
  readonly all: readonly DerivedDesign[]
  readonly parts: ReadonlySet<ReportPart>
  readonly bores: ReadonlyMap<string, BoreFindings>
  /** Ids of designs whose curves are hidden. */
  readonly hidden: ReadonlySet<string>
}

/** The report of a workbook on paper: the parts that were chosen, each on pages of its own. */
export function Report({ workbook, all, parts, bores, hidden }: ReportProps): ReactNode {
  const { unit, spelling } = useSettings()
  const comparison =
    parts.has('comparison') && all.length > 0 ? (
      <>
        <h2 className="reportPart">{words.comparisonHeading}</h2>
        <PaperTable
          table={comparisonTable(all, unit, spelling, noteName)}
          unitColumn={1}
          unsigned={[comparisonFigures.rms, comparisonFigures.noteRms]}
        />
      </>
    ) : null
  return (
    <div className="onPaper report numbered">
      <Part>
        <ReportHead workbook={workbook} />
        {parts.has('designs') ? (
          <>
            <h2 className="reportPart">{words.designHeading}</h2>
            {all.length === 0 ? <p>{words.noDesigns}</p> : null}
            {all.map((derived) => (
              <DesignPart key={derived.design.id} derived={derived} />
            ))}
          </>
        ) : null}
        {parts.has('designs') ? null : comparison}
      </Part>
      {parts.has('designs') && comparison !== null ? <Part>{comparison}</Part> : null}
      {parts.has('curves') && all.length > 0 ? <CurvesPart all={all} hidden={hidden} /> : null}
      {parts.has('pictures')
        ? all.map((derived) => (
            <Part key={derived.design.id}>
              <PicturesPart derived={derived} widthPx={chartPx} />
            </Part>
          ))
        : null}
      {parts.has('combinations') && all.length > 0 ? (
        <Part>
          {all.map((derived) => (
            <Combinations key={derived.design.id} derived={derived} />
          ))}
        </Part>
      ) : null}
      {parts.has('chart')
        ? all.map((derived) => (
            <FingeringSheet key={derived.design.id} derived={derived} workbook={workbook} />
          ))
        : null}
      {parts.has('bore') ? <BoreParts workbook={workbook} all={all} bores={bores} /> : null}
      {parts.has('bench') ? <BenchPart workbook={workbook} /> : null}
    </div>
  )
}

/** The bore of every design that has one, each on pages of its own. */
function BoreParts({ workbook, all, bores }: Omit<ReportProps, 'parts' | 'hidden'>): ReactNode {
  const seen = new Map<string, string>()
  return all.map((derived) => {
    const { id, name, bore } = derived.design
    const findings = bores.get(id)
    if (bore === undefined || findings === undefined) return null
    const shape = JSON.stringify([bore, findings.kind === 'reckoned' ? findings.open : null])
    const sameAs = seen.get(shape) ?? null
    if (sameAs === null) seen.set(shape, name)
    const props = { workbook, derived, bore, findings, sameAs }
    return (
      <Part key={id}>
        <BorePart {...props} widthPx={chartPx} />
      </Part>
    )
  })
}

/** A part that runs over as many pages as it needs. */
function Part({ children }: { readonly children: ReactNode }): ReactNode {
  return (
    <article className="benchSheet reportPage reportRun" style={{ width: `${sheetWidthMm}mm` }}>
      {children}
    </article>
  )
}

/** More fingerings of one design are not printed. */
const mostRows = 256

function Combinations({ derived }: { readonly derived: DerivedDesign }): ReactNode {
  const unit = useSettings((settings) => settings.unit)
  const table = combinationsTable(derived, unit)
  const { rows } = table
  return (
    <section className="reportDesign">
      {rows.length > mostRows ? <p>{words.firstOf(mostRows, rows.length)}</p> : null}
      <PaperTable table={{ ...table, rows: rows.slice(0, mostRows) }} />
    </section>
  )
}

/** The curves that are shown on the screen. */
function CurvesPart({ all, hidden }: Pick<ReportProps, 'all' | 'hidden'>): ReactNode {
  const { bandCents, spelling } = useSettings()
  const shown = useMemo(() => all.filter(({ design }) => !hidden.has(design.id)), [all, hidden])
  const leftOut = all.filter(({ design }) => hidden.has(design.id)).map(({ design }) => design.name)
  const first = shown[0]?.design.id ?? null
  const byFingering = useMemo(
    () => curvesByFingering(shown, first, 'usual', bandCents),
    [shown, first, bandCents],
  )
  const byNote = useMemo(
    () => curvesByNote(shown, first, spelling, bandCents),
    [shown, first, spelling, bandCents],
  )
  if (shown.length === 0) return null
  return (
    <Part>
      <h2 className="reportPart">{words.curvesHeading}</h2>
      {[byFingering, byNote].map((model) => (
        <figure key={model.title}>
          {onLightPaper(() => paperCharts(model, inksAt(document.body), chartPx)).map((svg, i) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: pieces of one chart, in their order
            <SvgText key={i} svg={svg} label={model.title} />
          ))}
          {model.leftOut === 0 ? null : <figcaption>{words.curvesLeftOut(model.leftOut)}</figcaption>}
        </figure>
      ))}
      <PaperTable table={chartTable(byFingering, byFingering.heading)} />
      {leftOut.length === 0 ? null : <p>{words.curvesHidden(leftOut)}</p>}
    </Part>
  )
}

/** As wide as the sheet at 96 px an inch. */
const chartPx = (sheetWidthMm / inchMm) * 96
