import type { ReactNode } from 'react'
import { Choice } from '../fields/Choice.tsx'
import { useDerived, useSelectedDesign } from '../state/derived.ts'
import { selectDesign } from '../state/viewStore.ts'
import { partWords, pictureWords } from '../words/pictures.ts'
import type { PicturePart } from './picturesStore.ts'

interface PictureHeadProps {
  readonly part: PicturePart
  /** What to look at, where it is not what the picture is usually for; `null` where there is nothing to see. */
  readonly look?: string | null | undefined
  readonly children?: ReactNode
}

/** The head of a picture: its name, which design it shows, and the sentence that says what to look at. */
export function PictureHead({ part, look = partWords[part].look, children }: PictureHeadProps): ReactNode {
  const all = useDerived()
  const shown = useSelectedDesign()
  const { name } = partWords[part]
  return (
    <header className="pictureHead">
      <div className="caption">
        <h1>{name}</h1>
        {shown === null ? null : (
          <Choice
            label={pictureWords.design}
            labelHidden
            value={shown.design.id}
            options={all.map(({ design }) => ({
              value: design.id,
              text: design.name === '' ? design.id : design.name,
            }))}
            take={selectDesign}
          />
        )}
        {children}
      </div>
      {look === null ? null : <p className="look">{look}</p>}
    </header>
  )
}
