import type { ReactNode } from 'react'
import { type Cut, tubeToOrderMm } from '#shared/bench/slide/cuts.ts'
import { centsOut, isBuildable, type SizedSlide } from '#shared/bench/slide/sizeSlide.ts'
import { movingBows } from '#shared/bench/slide/slide.ts'
import { lengthText, plainFigure, signedCents } from '#shared/quantity/figures.ts'
import { inchMm } from '#shared/quantity/units.ts'
import { useSettings } from '../../state/settings.ts'
import { cutsTable } from '../../tables/benchTables.ts'
import { TableOut } from '../../tables/TableOut.tsx'
import { slideResultWords } from '../../words/benchSlideResults.ts'
import { tableWords } from '../../words/table.ts'
import { titles } from '../../words/tableHeadings.ts'

/** What a slide's parts come to, and its cut list. */
export function SlideResults({
  sized,
  name,
}: {
  readonly sized: SizedSlide
  readonly name: string
}): ReactNode {
  const unit = useSettings((settings) => settings.unit)
  return (
    <div className="results">
      <Figures rows={useSlideFigures(sized)} />
      {isBuildable(sized) ? (
        <div>
          <TableOut
            name={titles.cuts(name)}
            label={tableWords.cuts}
            table={() => cutsTable(name, sized.cuts, unit)}
          />
          <CutList cuts={sized.cuts} />
        </div>
      ) : null}
    </div>
  )
}

/** A figure of a result: what it is, its text, and what kind it is. */
export interface ResultFigure {
  readonly name: string
  readonly text: string
  readonly help?: string
}

/** The figures of a slide in words, as page and sheet show them. */
export function useSlideFigures(sized: SizedSlide): readonly ResultFigure[] {
  const unit = useSettings((settings) => settings.unit)
  const { bend, job, range } = sized
  const length = (mm: number): string => lengthText(mm, unit)
  // Of a slide that cannot be built there is nothing to tell of what would have to be.
  const isBuilt = isBuildable(sized)
  const ifBuilt = (text: string): string => (isBuilt ? text : slideResultWords.none)
  const isSeveral = movingBows(job).length > 1
  const [low, high] = range.worstCents
  const corrected = job.bendCorrection
  const other = corrected ? bend.plainStraightEndMm : bend.correctedStraightEndMm
  return [
    {
      name: isSeveral ? slideResultWords.bows : slideResultWords.bow,
      text: slideResultWords.ofTube(length(sized.bowMm)),
    },
    { name: slideResultWords.straightEnds, text: ifBuilt(length(sized.straightEndMm)) },
    {
      name: isSeveral ? slideResultWords.firstBowWithEnds : slideResultWords.bowWithEnds,
      text: ifBuilt(slideResultWords.ofTube(length(sized.bowWithEndsMm))),
    },
    { name: slideResultWords.innerLegs, text: length(sized.innerLegMm) },
    { name: slideResultWords.engaged, text: length(sized.engagedAtTravelMm) },
    {
      name: unit === 'mm' ? slideResultWords.perMm : slideResultWords.perTenthInch,
      text: slideResultWords.perMmCents(
        signedCents(unit === 'mm' ? sized.centsPerMmOut : centsOut(job, inchMm / 10), 2),
      ),
      help: slideResultWords.perMmHelp,
    },
    {
      name: slideResultWords.range,
      text: slideResultWords.rangeCents(signedCents(low, 2), signedCents(high, 2)),
      help: slideResultWords.rangeHelp,
    },
    { name: slideResultWords.mass, text: ifBuilt(slideResultWords.massOf(plainFigure(sized.massG, 1))) },
    {
      name: corrected ? slideResultWords.endsPlain : slideResultWords.endsCorrected,
      text: isBuildable({ straightEndMm: other }) ? length(other) : slideResultWords.none,
      help: slideResultWords.endsHelp(length(bend.shorterMm)),
    },
  ]
}

/** Figures under each other, name and value. */
export function Figures({ rows }: { readonly rows: readonly ResultFigure[] }): ReactNode {
  return (
    <dl className="resultFigures">
      {rows.map(({ name, text, help }) => (
        <div key={name} title={help}>
          <dt>{name}</dt>
          <dd>
            <Aligned text={text} />
          </dd>
        </div>
      ))}
    </dl>
  )
}

/** A text with what follows its last figure in a place of its own, so that figures end above each other. */
function Aligned({ text }: { readonly text: string }): ReactNode {
  const [, figure = text, rest = ''] = /^(.*\d)(\D*)$/.exec(text) ?? []
  return (
    <>
      {figure}
      <span className="afterFigure">{rest}</span>
    </>
  )
}

/** The pieces to cut, finished and at the first cut. */
export function CutList({ cuts }: { readonly cuts: readonly Cut[] }): ReactNode {
  const unit = useSettings((settings) => settings.unit)
  const length = (mm: number): string => lengthText(mm, unit)
  return (
    <table className="figures cutList">
      <caption>{slideResultWords.cutList}</caption>
      <thead>
        <tr>
          <th scope="col">{slideResultWords.columns.piece}</th>
          <th scope="col">{slideResultWords.columns.number}</th>
          <th scope="col">{slideResultWords.columns.finished}</th>
          <th scope="col">{slideResultWords.columns.firstCut}</th>
        </tr>
      </thead>
      <tbody>
        {cuts.map(({ part, count, finishedMm, cutMm }) => (
          <tr key={`${part} ${finishedMm}`}>
            <th scope="row">{part}</th>
            <td>{count}</td>
            <td>{length(finishedMm)}</td>
            <td>
              <b>{length(cutMm)}</b>
            </td>
          </tr>
        ))}
      </tbody>
      <tfoot>
        <tr>
          <th scope="row" colSpan={3}>
            {slideResultWords.toOrder}
          </th>
          <td>{length(tubeToOrderMm(cuts))}</td>
        </tr>
      </tfoot>
    </table>
  )
}
