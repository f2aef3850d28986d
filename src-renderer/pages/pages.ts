import { type ComponentType, lazy } from 'react'
import type { Page } from '../state/viewStore.ts'
import { pageNames } from '../words/pages.ts'
import { Curves } from './Curves.tsx'

// Pages that are not looked at first arrive when they are asked for, and their style sheets with them.
const Fingerings = lazy(() => import('./Fingerings.tsx').then(({ Fingerings: page }) => ({ default: page })))
const Lengths = lazy(() => import('./Lengths.tsx').then(({ Lengths: page }) => ({ default: page })))
const Compare = lazy(() => import('./Compare.tsx').then(({ Compare: page }) => ({ default: page })))
const Bore = lazy(() => import('./Bore.tsx').then(({ Bore: page }) => ({ default: page })))
const Bench = lazy(() => import('./Bench.tsx').then(({ Bench: page }) => ({ default: page })))
const Pictures = lazy(() => import('./Pictures.tsx').then(({ Pictures: page }) => ({ default: page })))

/** The pages of the middle, in the order of their tabs. */
export const pages: readonly { readonly id: Page; readonly name: string; readonly page: ComponentType }[] = [
  { id: 'curves', name: pageNames.curves, page: Curves },
  { id: 'fingerings', name: pageNames.fingerings, page: Fingerings },
  { id: 'lengths', name: pageNames.lengths, page: Lengths },
  { id: 'compare', name: pageNames.compare, page: Compare },
  { id: 'bore', name: pageNames.bore, page: Bore },
  { id: 'bench', name: pageNames.bench, page: Bench },
  { id: 'pictures', name: pageNames.pictures, page: Pictures },
]
