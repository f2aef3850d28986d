import '../look/pictures.css'
import type { ReactNode } from 'react'
import { AirPage } from '../pictures/air/AirPage.tsx'
import { CompanyPage } from '../pictures/company/CompanyPage.tsx'
import { GalleryPage } from '../pictures/gallery/GalleryPage.tsx'
import { HarmonicsPage } from '../pictures/harmonics/HarmonicsPage.tsx'
import { PictureIndex } from '../pictures/PictureIndex.tsx'
import { type PicturePart, usePictures } from '../pictures/picturesStore.ts'
import { RulerPage } from '../pictures/ruler/RulerPage.tsx'
import { type DerivedDesign, useSelectedDesign } from '../state/derived.ts'
import { pictureWords } from '../words/pictures.ts'

const parts: Readonly<Record<PicturePart, (props: { readonly derived: DerivedDesign }) => ReactNode>> = {
  harmonics: HarmonicsPage,
  ruler: RulerPage,
  company: CompanyPage,
  air: AirPage,
  gallery: GalleryPage,
}

/** Pictures that explain the selected design: one at a time, from an index. */
export function Pictures(): ReactNode {
  const derived = useSelectedDesign()
  const part = usePictures((state) => state.part)
  const Part = parts[part]
  return (
    <section className="sheet picturesPage" aria-label={pictureWords.page}>
      <PictureIndex />
      <div className="picturePlace">{derived === null ? null : <Part derived={derived} />}</div>
    </section>
  )
}
