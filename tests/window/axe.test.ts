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

describe('every view is free of what hinders people, in both themes', () => {
  for (const { name, set } of scenes) {
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
