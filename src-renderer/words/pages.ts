import type { Page } from '../state/viewStore.ts'

/** The pages of the window by the names on their tabs. */
export const pageNames = {
  curves: 'Curves',
  fingerings: 'Fingerings',
  lengths: 'Lengths',
  compare: 'Compare',
  bore: 'Bore',
  bench: 'Bench',
  pictures: 'Pictures',
} as const satisfies Record<Page, string>

/** What stands round the pages, and in their place when there is nothing to show. */
export const pagesWords = {
  tabs: 'Pages',
  noDesigns: 'No designs yet',
  noDesignsText: 'A design is one instrument with one valve system. Add two or three to compare them.',
  addDesign: 'Add a design…',
} as const

/** What heads the page of the lengths. */
export const lengthsPageWords = {
  title: 'Lengths',
  foundFor: (design: string) => `found for ${design}`,
} as const
