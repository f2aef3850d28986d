import { type ReactNode, useMemo } from 'react'
import { Mark } from '../help/Mark.tsx'
import { Choices } from '../lengths/Choices.tsx'
import { CountedFingerings } from '../lengths/CountedFingerings.tsx'
import { Doubt } from '../lengths/Doubt.tsx'
import { bandsOf, useDoubt } from '../lengths/doubt.ts'
import { FingeringTable } from '../lengths/FingeringTable.tsx'
import { LoopTable } from '../lengths/LoopTable.tsx'
import { PlayedSlides } from '../lengths/PlayedSlides.tsx'
import { ProposalChart } from '../lengths/ProposalChart.tsx'
import { movedSlides, presentRoutes, proposedRoutes, slidesOf } from '../lengths/played.ts'
import { modesAimedAt } from '../lengths/present.ts'
import { Systems } from '../lengths/Systems.tsx'
import { TradeCurve } from '../lengths/TradeCurve.tsx'
import { useProposal } from '../lengths/useProposal.ts'
import { Verdict } from '../lengths/Verdict.tsx'
import { type DerivedDesign, useSelectedDesign } from '../state/derived.ts'
import { useLengths } from '../state/lengthsStore.ts'
import { aimWords } from '../words/lengthsAim.ts'
import { lengthsPageWords, pageNames } from '../words/pages.ts'

/** Lengths found for the selected design: what is asked, what is proposed, and how exactly it must be made. */
export function Lengths(): ReactNode {
  const derived = useSelectedDesign()
  return derived === null ? null : <LengthsOf key={derived.design.id} derived={derived} />
}

function LengthsOf({ derived }: { readonly derived: DerivedDesign }): ReactNode {
  const { question, present, waiting, proposal, words, trade, tradeIsCurrent } = useProposal(derived)
  const doubt = useDoubt()
  const moved = useLengths((state) => state.moved.get(derived.design.id))
  const routes = useMemo(
    () =>
      proposal === null
        ? presentRoutes(derived)
        : proposedRoutes(proposal.question.problem, proposal.lengths),
    [derived, proposal],
  )
  const bands = useMemo(() => bandsOf(derived, routes, doubt), [derived, routes, doubt])
  const slides = useMemo(() => movedSlides(derived, moved), [derived, moved])
  return (
    <section className="sheet lengths" aria-label={pageNames.lengths}>
      <div className="caption">
        <h1>{lengthsPageWords.title}</h1>
        <Mark id="fit" />
        <span className="soft captionOf">{lengthsPageWords.foundFor(derived.design.name)}</span>
      </div>
      <Choices derived={derived} />
      <CountedFingerings derived={derived} />
      {question === null || question.bore === null ? null : (
        <p className="soft">{aimWords.explained(modesAimedAt(question.bore))}</p>
      )}
      <ProposalChart
        derived={derived}
        question={question}
        present={present.cents}
        proposal={proposal}
        bands={bands}
      />
      <div className="verdictAndTrade">
        <Verdict
          derived={derived}
          now={present.reached}
          waiting={waiting}
          proposal={proposal}
          words={words}
        />
        <TradeCurve points={trade} isCurrent={tradeIsCurrent} />
      </div>
      <LoopTable derived={derived} proposal={proposal} />
      <FingeringTable derived={derived} present={present.cents} proposal={proposal} />
      <Doubt derived={derived} routes={routes} bands={bands} ofProposal={proposal !== null} />
      <PlayedSlides
        derived={derived}
        routes={routes}
        slides={slidesOf(derived)}
        moved={slides}
        ofProposal={proposal !== null}
      />
      <Systems />
    </section>
  )
}
