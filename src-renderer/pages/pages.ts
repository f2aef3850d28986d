import type { ComponentType } from 'react'
import { type Arriving, arriving } from '../look/arriving.ts'
import type { Page } from '../state/viewStore.ts'
import { pageNames } from '../words/pages.ts'
import { Curves } from './Curves.tsx'

interface PageEntry {
  readonly id: Page
  readonly name: string
  readonly page: ComponentType
  /** Fetches the page ahead of its being shown. */
  readonly load?: Arriving['load']
}

function asked(id: Page, { component, load }: Arriving): PageEntry {
  return { id, name: pageNames[id], page: component, load }
}

const fingerings = () => import('./Fingerings.tsx').then(({ Fingerings: page }) => ({ default: page }))
const lengths = () => import('./Lengths.tsx').then(({ Lengths: page }) => ({ default: page }))
const compare = () => import('./Compare.tsx').then(({ Compare: page }) => ({ default: page }))
const bore = () => import('./Bore.tsx').then(({ Bore: page }) => ({ default: page }))
const bench = () => import('./Bench.tsx').then(({ Bench: page }) => ({ default: page }))
const pictures = () => import('./Pictures.tsx').then(({ Pictures: page }) => ({ default: page }))

/**
 * The pages of the middle, in the order of their tabs. Those that are not looked at first arrive when they are asked
 * for, and their style sheets with them; a pointer or the focus on their tab asks already.
 */
export const pages: readonly PageEntry[] = [
  { id: 'curves', name: pageNames.curves, page: Curves },
  asked('fingerings', arriving(fingerings)),
  asked('lengths', arriving(lengths)),
  asked('compare', arriving(compare)),
  asked('bore', arriving(bore)),
  asked('bench', arriving(bench)),
  asked('pictures', arriving(pictures)),
]
