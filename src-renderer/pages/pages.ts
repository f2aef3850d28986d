import { type ComponentType, lazy } from 'react'
import type { Page } from '../state/viewStore.ts'
import { Bench } from './Bench.tsx'
import { Compare } from './Compare.tsx'
import { Curves } from './Curves.tsx'
import { Fingerings } from './Fingerings.tsx'
import { Lengths } from './Lengths.tsx'

// The bore is not for every workbook: it arrives when it is first looked at.
const Bore = lazy(() => import('./Bore.tsx').then(({ Bore: component }) => ({ default: component })))

/** The pages of the middle, in the order of their tabs. */
export const pages: readonly { readonly id: Page; readonly name: string; readonly page: ComponentType }[] = [
  { id: 'curves', name: 'Curves', page: Curves },
  { id: 'fingerings', name: 'Fingerings', page: Fingerings },
  { id: 'lengths', name: 'Lengths', page: Lengths },
  { id: 'compare', name: 'Compare', page: Compare },
  { id: 'bore', name: 'Bore', page: Bore },
  { id: 'bench', name: 'Bench', page: Bench },
]
