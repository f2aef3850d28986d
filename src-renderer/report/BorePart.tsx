import type { ReactNode } from 'react'
import { lengthText, plainFigure } from '#shared/quantity/figures.ts'
import type { Bore } from '#shared/workbook/bore.ts'
import { playedAir } from '#shared/workbook/instrumentOf.ts'
import type { Workbook } from '#shared/workbook/workbook.ts'
import { Fact } from '../bench/sheet/Fact.tsx'
import { BoreOutline } from '../bore/BoreOutline.tsx'
import { BoreScaleBar } from '../bore/BoreScaleBar.tsx'
import { useBoreView } from '../bore/boreStore.ts'
import { drawnBore } from '../bore/drawingScale.ts'
import type { DerivedDesign } from '../state/derived.ts'
import { useSettings } from '../state/settings.ts'
import { fingeringModesTable, modelsTable, sectionsTable } from '../tables/boreTables.ts'
import { boreWords } from '../words/bore.ts'
import { reportWords as words } from '../words/report.ts'
import type { BoreFindings } from './boreFindings.ts'
import { PaperTable } from './PaperTable.tsx'

interface BorePartProps {
  readonly workbook: Workbook
  readonly derived: DerivedDesign
  readonly bore: Bore
  readonly findings: BoreFindings
  /** An earlier design that has the same bore, which is drawn and listed there. */
  readonly sameAs: string | null
  readonly widthPx: number
}

/** A design's bore: drawn, section by section, and what it says of the open route and of the fingerings in use. */
export function BorePart(props: BorePartProps): ReactNode {
  const { derived, findings, sameAs } = props
  const { firstMode, lastMode } = useBoreView()
  const { design } = derived
  return (
    <>
      <h2 className="reportPart">{words.boreHeading(design.name)}</h2>
      {sameAs === null ? <Body {...props} /> : <p>{words.sameBore(sameAs)}</p>}
      {findings.kind === 'refused' ? (
        <p>{findings.message}</p>
      ) : (
        <div className="together">
          <PaperTable table={modelsTable(design.name, findings.usual, [firstMode, lastMode], false)} />
        </div>
      )}
    </>
  )
}

/** The bore by itself: drawn, section by section, and the resonances of the open route. */
function Body({ workbook, derived, bore, findings, widthPx }: BorePartProps): ReactNode {
  const unit = useSettings((settings) => settings.unit)
  const { name } = derived.design
  return (
    <>
      <BoreFacts workbook={workbook} bore={bore} findings={findings} />
      <PaperBore bore={bore} widthPx={widthPx} />
      <PaperTable table={sectionsTable(name, bore.sections, unit)} />
      {findings.kind === 'refused' ? null : (
        <div className="together">
          <PaperTable table={fingeringModesTable(words.openModes(name), findings.open)} />
        </div>
      )}
    </>
  )
}

function BoreFacts({
  workbook,
  bore,
  findings,
}: Pick<BorePartProps, 'workbook' | 'bore' | 'findings'>): ReactNode {
  const unit = useSettings((settings) => settings.unit)
  const { waveFronts = 'spherical', mouth = 'unflanged' } = bore
  const degrees = (celsius: number): string => `${plainFigure(celsius, 1)} °C`
  return (
    <dl className="sheetFacts">
      {findings.kind === 'refused' ? null : (
        <Fact name={words.boreLength}>{lengthText(findings.lengthMm, unit)}</Fact>
      )}
      {findings.kind === 'refused' || findings.open.nominalFundamentalHz === null ? null : (
        <Fact name={words.suitsBest}>{`${plainFigure(findings.open.nominalFundamentalHz, 2)} Hz`}</Fact>
      )}
      <Fact name={words.waveFronts}>{boreWords[waveFronts]}</Fact>
      <Fact name={words.mouth}>{mouth === 'open' ? boreWords.idealMouth : boreWords.unflanged}</Fact>
      <Fact name={words.meanAir}>{degrees(playedAir(workbook.air).temperatureC)}</Fact>
      {bore.bellTemperatureC === undefined ? null : (
        <Fact name={words.bellAir}>{degrees(bore.bellTemperatureC)}</Fact>
      )}
    </dl>
  )
}

/** So high, CSS px, that the tables beneath it have room on the same page. */
const mostHighPx = 150

/** The bore in side view, its diameters stretched as far as there is room. */
function PaperBore({ bore, widthPx }: Pick<BorePartProps, 'bore' | 'widthPx'>): ReactNode {
  const unit = useSettings((settings) => settings.unit)
  const drawn = drawnBore(bore.sections, widthPx, true, mostHighPx)
  return (
    <figure className="paperBore">
      <svg width={widthPx} height={drawn.heightPx} aria-hidden="true">
        <BoreOutline drawn={drawn} width={widthPx} hasCup={bore.sections[0]?.kind === 'cup'} />
      </svg>
      <BoreScaleBar drawn={drawn} unit={unit} />
    </figure>
  )
}
