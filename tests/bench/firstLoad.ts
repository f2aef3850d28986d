import { gzipSync } from 'node:zlib'
import { chromium, type Response } from 'playwright-core'
import { ownChromium as own } from '../desktop/harness/chromiumFlags.ts'

/**
 * All script and style that a cold start loads, gzip, KB: the start page, and what arrives by itself while it is
 * read. Pages that a person asks for, fonts and examples are not in it.
 */
export async function firstLoadKilobytes(address: string): Promise<number> {
  const browser = await chromium.launch(own)
  const page = await browser.newPage()
  const loaded: Response[] = []
  page.on('response', (response) => {
    if (['script', 'stylesheet'].includes(response.request().resourceType())) loaded.push(response)
  })
  await page.goto(address)
  await page.getByRole('heading', { name: 'Ferrule' }).waitFor()
  await page.waitForLoadState('networkidle')
  const bodies = await Promise.all(loaded.map((response) => response.body()))
  await browser.close()
  return bodies.reduce((sum, body) => sum + gzipSync(body).length, 0) / 1024
}
