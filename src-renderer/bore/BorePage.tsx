import { type ReactNode, useMemo, useState } from 'react'
import type { Bore } from '#shared/workbook/bore.ts'
import { boreWarnings } from '#shared/workbook/sanity/boreWarnings.ts'
import type { DerivedDesign } from '../state/derived.ts'
import { BoreDrawing } from './BoreDrawing.tsx'
import { BoreHead, Slices } from './BoreHead.tsx'
import { BoreStatus } from './BoreStatus.tsx'
import { FitFold } from './fit/FitFold.tsx'
import { Pictures } from './pictures/Pictures.tsx'
import { SectionList } from './SectionList.tsx'
import { useBore } from './useBore.ts'

interface BorePageProps {
  readonly derived: DerivedDesign
  readonly bore: Bore
}

/** A design's bore: drawn and listed, and what its resonances say. */
export function BorePage({ derived, bore }: BorePageProps): ReactNode {
  const [again, setAgain] = useState(0)
  const shownBore = useBore(derived, again)
  const { design } = derived
  const openMm = derived.tables.mainSlide.nominalOpenMm
  const warnings = useMemo(() => boreWarnings(design, openMm, ''), [design, openMm])
  const listed = shownBore?.listed
  const names = shownBore?.shown
  const shown = useMemo(
    () =>
      (names ?? []).flatMap((name, series) => {
        const found = listed?.find(({ fingering }) => fingering === name)
        return found === undefined ? [] : [{ ...found, series }]
      }),
    [listed, names],
  )
  if (shownBore === null) return null
  return (
    <>
      <BoreHead design={design} bore={bore} />
      {warnings.map(({ path, message }) => (
        <p key={path} className="slip">
          {message}
        </p>
      ))}
      <BoreDrawing designId={design.id} designName={design.name} sections={bore.sections} />
      <BoreStatus bore={shownBore} again={() => setAgain((times) => times + 1)} />
      <div className="boreColumns">
        <Pictures bore={shownBore} shown={shown} designId={design.id} designName={design.name} />
        <div className="boreEditor">
          <SectionList designId={design.id} designName={design.name} sections={bore.sections} />
          {shownBore.answer === null ? null : <Slices slicing={shownBore.answer.slicing} />}
          <FitFold design={design} bore={bore} input={shownBore.input} answer={shownBore.answer} />
        </div>
      </div>
    </>
  )
}
