import { AxeBuilder } from '@axe-core/playwright'
import type { Page } from 'playwright-core'
import { describe, expect } from 'vitest'
import { browserTest } from '../desktop/harness/browserForm.ts'
import { scenes } from '../screens/scenes.ts'

async function violations(page: Page): Promise<readonly string[]> {
  const { violations: found } = await new AxeBuilder({ page }).analyze()
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
      await page.emulateMedia({ colorScheme: 'dark', reducedMotion: 'reduce' })
      expect(await violations(page)).toEqual([])
    })
  }
})
