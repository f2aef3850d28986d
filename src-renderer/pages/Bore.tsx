import type { ReactNode } from 'react'
import { BorePage } from '../bore/BorePage.tsx'
import { EmptyBore } from '../bore/EmptyBore.tsx'
import '../look/bore.css'
import { useSelectedDesign } from '../state/derived.ts'
import { boreWords } from '../words/bore.ts'

/** The acoustic bore of the selected design. */
export function Bore(): ReactNode {
  const derived = useSelectedDesign()
  if (derived === null) return null
  const { design } = derived
  return (
    <section className="sheet borePage" aria-label={boreWords.title}>
      {design.bore === undefined ? (
        <EmptyBore key={design.id} derived={derived} />
      ) : (
        <BorePage key={design.id} derived={derived} bore={design.bore} />
      )}
    </section>
  )
}
