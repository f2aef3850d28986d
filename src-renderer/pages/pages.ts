import type { ComponentType } from 'react'
import { type Arriving, arriving } from '../look/arriving.ts'
import type { Page } from '../state/viewStore.ts'
import { pageNames } from '../words/pages.ts'
import { Curves } from './Curves.tsx'

/**
 * Pages that are not looked at first arrive when they are asked for, and their style sheets with them; a pointer
 * or the focus on their tab asks already.
 */
const loads: Readonly<Record<Exclude<Page, 'curves'>, Parameters<typeof arriving>[0]>> = {
  fingerings: () => import('./Fingerings.tsx').then(({ Fingerings: page }) => ({ default: page })),
  lengths: () => import('./Lengths.tsx').then(({ Lengths: page }) => ({ default: page })),
  compare: () => import('./Compare.tsx').then(({ Compare: page }) => ({ default: page })),
  bore: () => import('./Bore.tsx').then(({ Bore: page }) => ({ default: page })),
  bench: () => import('./Bench.tsx').then(({ Bench: page }) => ({ default: page })),
  pictures: () => import('./Pictures.tsx').then(({ Pictures: page }) => ({ default: page })),
}

interface PageEntry {
  readonly id: Page
  readonly name: string
  readonly page: ComponentType
  /** Fetches the page ahead of its being shown. */
  readonly load?: Arriving['load']
}

function asked(id: Exclude<Page, 'curves'>): PageEntry {
  const { component, load } = arriving(loads[id])
  return { id, name: pageNames[id], page: component, load }
}

/** The pages of the middle, in the order of their tabs. */
export const pages: readonly PageEntry[] = [
  { id: 'curves', name: pageNames.curves, page: Curves },
  asked('fingerings'),
  asked('lengths'),
  asked('compare'),
  asked('bore'),
  asked('bench'),
  asked('pictures'),
]
