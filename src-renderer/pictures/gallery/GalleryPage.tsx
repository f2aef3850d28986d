import { type ReactNode, useMemo, useState } from 'react'
import { lengthText } from '#shared/quantity/figures.ts'
import { systems } from '#shared/valves/systems/systems.ts'
import { addDesign } from '#shared/workbook/commands/workbookCommands.ts'
import { designFromSystem, freshId } from '#shared/workbook/newWorkbook.ts'
import { type DerivedDesign, derive } from '../../state/derived.ts'
import { runOrSay } from '../../state/runOrSay.ts'
import { useSettings } from '../../state/settings.ts'
import { selectDesign } from '../../state/viewStore.ts'
import { useWorkbook } from '../../state/workbookStore.ts'
import { galleryWords as words } from '../../words/pictures.ts'
import { PictureHead } from '../PictureHead.tsx'
import { SystemCard } from './SystemCard.tsx'

/** Every valve system on the open instrument of the design shown; any of them can be added as a design. */
export function GalleryPage({ derived }: { readonly derived: DerivedDesign }): ReactNode {
  const unit = useSettings((settings) => settings.unit)
  const workbook = useWorkbook((state) => state.workbook)
  const { instrument } = derived.design
  const [added, setAdded] = useState<string | null>(null)
  const built = useMemo(
    () =>
      workbook === null
        ? []
        : systems.map((system) => {
            const design = designFromSystem(workbook, system, instrument, system.id)
            return { system, derived: derive(workbook, design, 0) }
          }),
    [workbook, instrument],
  )
  const add = (at: number): void => {
    const chosen = built[at]
    if (workbook === null || chosen === undefined) return
    const id = freshId(
      chosen.system.name,
      workbook.designs.map((design) => design.id),
    )
    if (!runOrSay(addDesign({ ...chosen.derived.design, id }))) return
    selectDesign(id)
    setAdded(chosen.system.name)
  }
  return (
    <>
      <PictureHead part="gallery" />
      <p className="soft">{words.builtOn(lengthText(derived.tables.mainSlide.nominalOpenMm, unit))}</p>
      <p className="added" role="status">
        {added === null ? null : words.added(added)}
      </p>
      <ul className="gallery">
        {built.map(({ system, derived: own }, i) => (
          <SystemCard key={system.id} system={system} derived={own} add={() => add(i)} />
        ))}
      </ul>
    </>
  )
}
