import type { ReactNode } from 'react'
import { fingeringName } from '#shared/valves/fingering.ts'
import { apartOf, companyFingering, companyFingerings } from '../pictures/company/apartOf.ts'
import { StepsPicture } from '../pictures/company/StepsPicture.tsx'
import { HarmonicsPicture } from '../pictures/harmonics/HarmonicsPicture.tsx'
import { harmonicRowsOf } from '../pictures/harmonics/harmonicRowsOf.ts'
import { usePressed } from '../pictures/picturesStore.ts'
import { RulerPicture } from '../pictures/ruler/RulerPicture.tsx'
import { rulerOf } from '../pictures/ruler/rulerOf.ts'
import type { DerivedDesign } from '../state/derived.ts'
import { partWords } from '../words/pictures.ts'
import { reportWords as words } from '../words/report.ts'

interface PicturesPartProps {
  readonly derived: DerivedDesign
  readonly widthPx: number
}

/** What a design shows a class: its harmonics against the scale, its tube ruler, and a loop in company. */
export function PicturesPart({ derived, widthPx }: PicturesPartProps): ReactNode {
  const { name } = derived.design
  const pressed = usePressed(derived)
  const fingering = companyFingering(derived, companyFingerings(derived), pressed)
  return (
    <>
      <h2 className="reportPart">{words.picturesHeading(name)}</h2>
      <PaperPicture title={partWords.harmonics.name}>
        <HarmonicsPicture design={name} rows={harmonicRowsOf(derived)} width={widthPx} />
      </PaperPicture>
      <PaperPicture title={partWords.ruler.name}>
        <RulerPicture
          design={name}
          ruler={rulerOf(derived, 'usual')}
          width={widthPx}
          marked={fingeringName(pressed)}
        />
      </PaperPicture>
      {fingering === undefined ? null : (
        <PaperPicture title={partWords.company.name}>
          <StepsPicture design={name} apart={apartOf(derived, fingering)} width={widthPx} />
        </PaperPicture>
      )}
    </>
  )
}

function PaperPicture({
  title,
  children,
}: {
  readonly title: string
  readonly children: ReactNode
}): ReactNode {
  return (
    <figure className="paperPicture">
      <figcaption>{title}</figcaption>
      {children}
    </figure>
  )
}
