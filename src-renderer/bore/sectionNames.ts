import type { DesignSection } from '#shared/workbook/bore.ts'
import { boreWords } from '../words/bore.ts'

/** What a section is called: its name, else its kind with its number. */
export function sectionName(sections: readonly DesignSection[], index: number): string {
  const section = sections[index]
  if (section === undefined) return ''
  return section.name ?? `${boreWords.kinds[section.kind]} ${index + 1}`
}
