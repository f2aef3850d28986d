import { AxeBuilder } from '@axe-core/playwright'
import type { Page } from 'playwright-core'
import { describe, expect } from 'vitest'
import { browserTest } from '../desktop/harness/browserForm.ts'
import { scenes } from '../screens/scenes.ts'

/** Rows of a table are all made alike: the first ones stand for the rest. */
const furtherRows = 'tbody tr:nth-child(n + 13)'

/** What hinders people on the page as it stands; with `rules`, only by those. */
async function violations(page: Page, rules?: readonly string[]): Promise<readonly string[]> {
  const builder = new AxeBuilder({ page })
    .setLegacyMode(true)
    .options({ resultTypes: ['violations'] })
    .exclude(furtherRows)
  if (rules !== undefined) builder.withRules([...rules])
  const { violations: found } = await builder.analyze()
  return found.flatMap(({ id, nodes }) =>
    nodes.map(({ target, failureSummary }) => `${id} at ${target}: ${failureSummary}`),
  )
}

/** Scenes with other figures in parts that a scene before them has already: there to be looked at, not checked again. */
const seenBefore = new Set([
  'curves-all',
  'double-horn',
  'cut-off',
  'early',
  'historic',
  'twelve',
  'twelve-all',
  'lengths-table',
  'lengths-doubt',
  'lengths-refused',
  'bench-slide-long',
  'bench-slide-slips',
  'listen-empty',
  'bore-models',
  'bore-twelve',
  'bore-group',
  'bore-sections',
  'pictures-ruler-all',
  'pictures-company-growth',
  'pictures-air-double',
  'pictures-air-cut-off',
  'pictures-air-combinations',
  'pictures-air-twelve',
  'pictures-long-name',
  'left-work-dialog',
  'loops-in-empty',
  'find-none',
  'first-compensating',
  'first-compare',
])

/** Tests that the scenes of these names are free of what hinders people; in several files, that they run side by side. */
export function scenesAreClear(title: string, named: (name: string) => boolean): void {
  const looked = scenes.filter(({ name }) => named(name) && !seenBefore.has(name))
  describe(title, () => {
    for (const { name, set } of looked) {
      browserTest(name, async ({ form }) => {
        const { page } = await form.open()
        await page.emulateMedia({ colorScheme: 'light', reducedMotion: 'reduce' })
        await set(page)
        expect(await violations(page)).toEqual([])
        // Nothing but colours changes with the theme.
        await page.emulateMedia({ colorScheme: 'dark', reducedMotion: 'reduce' })
        expect(await violations(page, ['color-contrast', 'link-in-text-block'])).toEqual([])
      })
    }
  })
}
