import { Fragment, type ReactNode, useEffect, useRef } from 'react'
import type { FittedBore } from '#shared/bore/fitBore.ts'
import { lengthText, plainFigure, signedCents } from '#shared/quantity/figures.ts'
import type { DesignSection } from '#shared/workbook/bore.ts'
import { useSettings } from '../../state/settings.ts'
import { fitTable } from '../../tables/fitTables.ts'
import { TableOut } from '../../tables/TableOut.tsx'
import { boreWords } from '../../words/bore.ts'
import { boreTitles } from '../../words/tableHeadings.ts'
import type { FitQuestion } from '../../worker/boreWorker.ts'
import { sectionName } from '../sectionNames.ts'
import { type Freedom, valueNow } from './freedoms.ts'

interface FitProposalProps {
  readonly designName: string
  readonly fitted: FittedBore
  readonly asked: FitQuestion
  readonly present: readonly Freedom[]
  readonly sections: readonly DesignSection[]
  readonly take: () => void
  readonly leave: () => void
}

/** What a fit would change and what it leaves, before it is taken. */
export function FitProposal(props: FitProposalProps): ReactNode {
  const { designName, fitted, asked, present, sections, take, leave } = props
  const place = useRef<HTMLElement>(null)
  // It may appear below what is in sight, where nobody would look for it.
  useEffect(() => {
    place.current?.scrollIntoView({ block: 'nearest' })
  }, [])
  const unit = useSettings((settings) => settings.unit)
  const figure = (dimension: string, value: number): string => {
    if (dimension === 'flare') return plainFigure(value, 3)
    if (dimension === 'volumeMm3') return `${plainFigure(value, 0)} ${boreWords.volumeUnit}`
    return lengthText(value, unit)
  }
  const named = ({ section, dimension }: { readonly section: number; readonly dimension: string }): string =>
    boreWords.freeLabel(boreWords.freeOf[dimension] ?? dimension, sectionName(sections, section))
  const held = asked.free.filter(({ section, dimension }) =>
    fitted.heldByBounds.includes(`sections[${section}].${dimension}`),
  )
  return (
    <section className="fitProposal" ref={place} aria-label={boreWords.proposal}>
      <table className="figures boreFigures">
        <caption>{boreWords.proposal}</caption>
        <thead>
          <tr>
            <th scope="col">
              <span className="unseen">{boreWords.free}</span>
            </th>
            <th scope="col">{boreWords.now}</th>
            <th scope="col">{boreWords.fitted}</th>
          </tr>
        </thead>
        <tbody>
          {asked.free.map((free, i) => {
            const { section, dimension } = free
            return (
              <tr key={`${section} ${dimension}`}>
                <th scope="row">{named(free)}</th>
                <td>{figure(dimension, valueNow(present, free) ?? Number.NaN)}</td>
                <td>
                  <b>{figure(dimension, fitted.values[i] ?? Number.NaN)}</b>
                </td>
              </tr>
            )
          })}
        </tbody>
      </table>
      <div className="tablesOut">
        <TableOut
          name={boreTitles.proposal(designName)}
          table={() => fitTable(designName, sections, present, asked.free, fitted, unit)}
        />
      </div>
      <p>
        {boreWords.wouldBeOff}:{' '}
        {asked.targets.map(({ mode }, i) => (
          <Fragment key={mode}>
            <span className="unbroken">
              {boreWords.modeNumber(mode)} {signedCents(fitted.errorsCents[i] ?? Number.NaN)}
              {i === asked.targets.length - 1 ? '.' : ','}
            </span>{' '}
          </Fragment>
        ))}
        {boreWords.fitRms} <b>{plainFigure(fitted.rmsCents, 1)}</b>.
      </p>
      {fitted.status === 'stopped' ? <p className="slip">{boreWords.fitStopped}</p> : null}
      {held.map((free) => (
        <p key={`${free.section} ${free.dimension}`} className="holding">
          {boreWords.held(named(free))}
        </p>
      ))}
      <div className="buttons">
        <button type="button" className="main" onClick={take}>
          {boreWords.takeFit}
        </button>
        <button type="button" onClick={leave}>
          {boreWords.leaveFit}
        </button>
      </div>
    </section>
  )
}
