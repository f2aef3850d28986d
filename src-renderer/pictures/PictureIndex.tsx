import type { ReactNode } from 'react'
import { partWords, pictureWords } from '../words/pictures.ts'
import { type PicturePart, usePictures } from './picturesStore.ts'

const parts = Object.keys(partWords) as PicturePart[]

/** The pictures by name. */
export function PictureIndex(): ReactNode {
  const shown = usePictures(({ part }) => part)
  return (
    <nav className="jobIndex pictureIndex" aria-label={pictureWords.index}>
      <ul>
        {parts.map((part) => (
          <li key={part}>
            <button
              type="button"
              className={part === shown ? 'job on' : 'job'}
              aria-current={part === shown ? 'page' : undefined}
              onClick={() => usePictures.setState({ part })}
            >
              {partWords[part].name}
            </button>
          </li>
        ))}
      </ul>
    </nav>
  )
}
