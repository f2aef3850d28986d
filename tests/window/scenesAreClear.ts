import axe from 'axe-core'
import type { Page } from 'playwright-core'
import { describe, expect } from 'vitest'
import { browserTest } from '../desktop/harness/browserForm.ts'
import { scenes } from '../screens/scenes.ts'

/** Rows of a table are all made alike: the first ones stand for the rest. */
const furtherRows = 'tbody tr:nth-child(n + 13)'

/** Puts the checker into the page; its answers are asked for by `violations`. */
async function bringAxe(page: Page): Promise<void> {
  await page.evaluate(axe.source)
}

/** What hinders people on the page as it stands; with `rules`, only by those. */
async function violations(page: Page, rules?: readonly string[]): Promise<readonly string[]> {
  return page.evaluate(
    async ({ furtherRows, only }) => {
      const checker = (globalThis as unknown as { readonly axe: typeof axe }).axe
      const { violations: found } = await checker.run(
        { exclude: [[furtherRows]] },
        {
          resultTypes: ['violations'],
          // Style sheets and sounds are the page's own: there is nothing to fetch beforehand.
          preload: false,
          ...(only === undefined ? {} : { runOnly: { type: 'rule', values: only } }),
        },
      )
      return found.flatMap(({ id, nodes }) =>
        nodes.map(({ target, failureSummary }) => `${id} at ${target}: ${failureSummary}`),
      )
    },
    { furtherRows, only: rules === undefined ? undefined : [...rules] },
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
  'first-why',
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
        await bringAxe(page)
        expect(await violations(page)).toEqual([])
        // Nothing but colours changes with the theme.
        await page.emulateMedia({ colorScheme: 'dark', reducedMotion: 'reduce' })
        expect(await violations(page, ['color-contrast', 'link-in-text-block'])).toEqual([])
      })
    }
  })
}
