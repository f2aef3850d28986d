import type { ReactNode } from 'react'
import { type Cut, tubeToOrderMm } from '#shared/bench/slide/cuts.ts'
import type { SizedSlide } from '#shared/bench/slide/sizeSlide.ts'
import { lengthText, plainFigure, signedCents } from '#shared/quantity/figures.ts'
import { useSettings } from '../../state/settings.ts'

/** What a slide's parts come to, and its cut list. */
export function SlideResults({ sized }: { readonly sized: SizedSlide }): ReactNode {
  return (
    <div className="results">
      <Figures rows={useSlideFigures(sized)} />
      <CutList cuts={sized.cuts} />
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
  const [low, high] = range.worstCents
  const corrected = job.bendCorrection
  const other = corrected ? bend.plainStraightEndMm : bend.correctedStraightEndMm
  return [
    { name: 'bow, curve alone', text: `${length(sized.bowMm)} of tube` },
    { name: 'straight ends, each', text: length(sized.straightEndMm) },
    { name: 'bow with straight ends', text: `${length(sized.bowWithEndsMm)} of tube` },
    { name: 'inner legs, each', text: length(sized.innerLegMm) },
    { name: 'engaged at full travel', text: length(sized.engagedAtTravelMm) },
    {
      name: 'each mm of movement out',
      text: `${signedCents(sized.centsPerMmOut, 2)} cents`,
      help: 'Of slide movement, for the fingering of this loop alone; a millimetre out is two of tube a pair of legs.',
    },
    {
      name: 'range of the tolerance',
      text: `${signedCents(low, 2)} to ${signedCents(high, 2)} cents`,
      help: 'The note with the slide at pitch, the loop off by its whole tolerance.',
    },
    { name: 'mass of what moves', text: `${plainFigure(sized.massG, 1)} g` },
    {
      name: corrected ? 'straight ends, bends plain' : 'straight ends, bends corrected',
      text: length(other),
      help: `A bend counts for less than its centre line; here the bows are ${length(bend.shorterMm)} short of it.`,
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
          <dd>{text}</dd>
        </div>
      ))}
    </dl>
  )
}

/** The pieces to cut, finished and at the first cut. */
export function CutList({ cuts }: { readonly cuts: readonly Cut[] }): ReactNode {
  const unit = useSettings((settings) => settings.unit)
  const length = (mm: number): string => lengthText(mm, unit)
  return (
    <table className="figures cutList">
      <caption>Cut list, along the centre line</caption>
      <thead>
        <tr>
          <th scope="col">piece</th>
          <th scope="col">number</th>
          <th scope="col">finished</th>
          <th scope="col">first cut</th>
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
            tube to order, saw cuts not counted
          </th>
          <td>{length(tubeToOrderMm(cuts))}</td>
        </tr>
      </tfoot>
    </table>
  )
}
