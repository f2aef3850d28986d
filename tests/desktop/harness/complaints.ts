import type { Page } from 'playwright-core'

/** Collects what a page complains of from now on. */
export function complaintsOf(page: Page): readonly string[] {
  const complaints: string[] = []
  page.on('pageerror', (error) => complaints.push(error.message))
  page.on('console', (message) => {
    if (message.type() === 'error') complaints.push(message.text())
  })
  return complaints
}
