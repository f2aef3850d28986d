import { type ComponentType, lazy } from 'react'
import type { Page } from '../state/viewStore.ts'
import { Bench } from './Bench.tsx'
import { Compare } from './Compare.tsx'
import { Curves } from './Curves.tsx'
import { Fingerings } from './Fingerings.tsx'
import { Lengths } from './Lengths.tsx'

const Bore = lazy(() => import('./Bore.tsx').then(({ Bore: component }) => ({ default: component })))
// Pages that are not looked at first arrive when they are asked for, and their style sheets with them.
const Pictures = lazy(() => import('./Pictures.tsx').then(({ Pictures: page }) => ({ default: page })))

/** The pages of the middle, in the order of their tabs. */
export const pages: readonly { readonly id: Page; readonly name: string; readonly page: ComponentType }[] = [
  { id: 'curves', name: 'Curves', page: Curves },
  { id: 'fingerings', name: 'Fingerings', page: Fingerings },
  { id: 'lengths', name: 'Lengths', page: Lengths },
  { id: 'compare', name: 'Compare', page: Compare },
  { id: 'bore', name: 'Bore', page: Bore },
  { id: 'bench', name: 'Bench', page: Bench },
  { id: 'pictures', name: 'Pictures', page: Pictures },
]
