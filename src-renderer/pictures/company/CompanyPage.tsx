import { type ReactNode, useMemo } from 'react'
import { loopsInCompany } from '#shared/tubing/loopInCompany.ts'
import type { InCompany } from '#shared/tuning/inCompany.ts'
import { Choice } from '../../fields/Choice.tsx'
import { Fold } from '../../fields/Fold.tsx'
import { type DerivedDesign, useDerived } from '../../state/derived.ts'
import { selectDesign } from '../../state/viewStore.ts'
import { partWords, pictureWords, companyWords as words } from '../../words/pictures.ts'
import { PictureFrame } from '../PictureFrame.tsx'
import { PictureHead } from '../PictureHead.tsx'
import { usePictures, usePressed } from '../picturesStore.ts'
import { apartOf, companyFingering, companyFingerings } from './apartOf.ts'
import { CompanyTable } from './CompanyTable.tsx'
import { GrowthPicture } from './GrowthPicture.tsx'
import { GrowthTable } from './GrowthTable.tsx'
import { StepsPicture } from './StepsPicture.tsx'

/** Why a loop that fits alone is too short in company. */
export function CompanyPage({ derived }: { readonly derived: DerivedDesign }): ReactNode {
  const { design } = derived
  const choices = useMemo(() => companyFingerings(derived), [derived])
  const pressed = usePressed(derived)
  const chosen = companyFingering(derived, choices, pressed)
  const apart = useMemo(() => (chosen === undefined ? null : apartOf(derived, chosen)), [derived, chosen])
  return (
    <>
      <PictureHead part="company" look={apart === null ? null : undefined}>
        {chosen === undefined ? null : (
          <Choice
            label={words.choose}
            value={chosen.name}
            options={choices.map(({ name }) => ({ value: name, text: name }))}
            take={(name) =>
              usePictures.setState({ pressed: choices.find((each) => each.name === name)!.pressed })
            }
          />
        )}
      </PictureHead>
      {apart === null ? (
        <NeverInCompany name={design.name} />
      ) : (
        <>
          <PictureFrame
            name={pictureWords.fileOf(`${partWords.company.name} ${apart.together.fingering}`, design.name)}
            draw={(width) => <StepsPicture design={design.name} apart={apart} width={width} />}
          />
          <Fold title={pictureWords.figures} hint={pictureWords.figuresHint}>
            {() => <CompanyTable apart={apart} />}
          </Fold>
          <Growth derived={derived} apart={apart} />
        </>
      )}
    </>
  )
}

/** Says so of a design whose loops are never in company, and leads to those of the workbook whose loops are. */
function NeverInCompany({ name }: { readonly name: string }): ReactNode {
  const others = useDerived().filter((each) => companyFingerings(each).length > 0)
  return (
    <div className="neverInCompany">
      <p className="soft">{words.none(name)}</p>
      {others.map(({ design }) => (
        <button key={design.id} type="button" onClick={() => selectDesign(design.id)}>
          {words.lookAt(design.name)}
        </button>
      ))}
    </div>
  )
}

/** The loop of the last valve after every semitone; nothing where that valve takes tube out. */
function Growth({
  derived,
  apart,
}: {
  readonly derived: DerivedDesign
  readonly apart: InCompany
}): ReactNode {
  const { design, tables } = derived
  const { alone, addedAloneMm } = apart
  if (addedAloneMm <= 0 || alone.semitones <= 0) return null
  const rows = loopsInCompany(
    tables.mainSlide.inTuneOpenMm,
    addedAloneMm,
    alone.semitones,
    Math.max(6, Math.min(12, Math.round(apart.company.semitones))),
  )
  const valve = alone.fingering
  return (
    <>
      <h2 className="furtherPicture">{words.growth.heading(valve)}</h2>
      <p className="look">{words.growth.look}</p>
      <PictureFrame
        name={pictureWords.fileOf(words.growth.heading(valve), design.name)}
        draw={(width) => (
          <GrowthPicture design={design.name} valve={valve} loopMm={addedAloneMm} rows={rows} width={width} />
        )}
      />
      <Fold title={pictureWords.figures} hint={pictureWords.figuresHint}>
        {() => <GrowthTable valve={valve} rows={rows} />}
      </Fold>
    </>
  )
}
