import type { ReactNode } from 'react'
import { type BenchPart, useBench } from '../bench/benchStore.ts'
import { JobIndex } from '../bench/JobIndex.tsx'
import { OnePiecePage } from '../bench/onePiece/OnePiecePage.tsx'
import { PitchPage } from '../bench/pitch/PitchPage.tsx'
import { ReadingsPage } from '../bench/readings/ReadingsPage.tsx'
import { SlidePage } from '../bench/slide/SlidePage.tsx'
import { pageNames } from '../words/pages.ts'

const parts: Readonly<Record<BenchPart, () => ReactNode>> = {
  slides: SlidePage,
  readings: ReadingsPage,
  pitchChanges: PitchPage,
  onePiece: OnePiecePage,
}

/** The bench: slides to be made, a tuner's readings, changes of pitch, and what follows from one piece. */
export function Bench(): ReactNode {
  const part = useBench((state) => state.part)
  const Part = parts[part]
  return (
    <section className="sheet benchPage" aria-label={pageNames.bench}>
      <JobIndex />
      <div className="jobPlace">
        <Part />
      </div>
    </section>
  )
}
