import { readFileSync } from 'node:fs'
import { describe, expect } from 'vitest'
import { plainFigure, signedCents } from '#shared/quantity/figures.ts'
import { examples } from '#shared/workbook/examples/examples.ts'
import { openWorkbook } from '#shared/workbook/openWorkbook.ts'
import { tablesRecord } from '#shared/workbook/tablesRecord.ts'
import { browserTest } from '../desktop/harness/browserForm.ts'
import { card, openExample } from './steps.ts'

describe('each example shows in the window what the headless tables print', () => {
  for (const { title, file } of examples) {
    browserTest(title, async ({ form }) => {
      const text = readFileSync(
        new URL(`../../src-shared/workbook/examples/${file}`, import.meta.url),
        'utf8',
      )
      const opened = openWorkbook(text)
      if (!opened.ok) throw new Error(opened.failure.message)
      const { page, complaints } = await form.open()
      await openExample(page, title)
      await page.getByRole('button', { name: 'all', exact: true }).click()
      for (const [column, design] of tablesRecord(opened.workbook).designs.entries()) {
        const shown = await card(page, design.name).textContent()
        expect(shown).toContain(`rms${plainFigure(design.summary.rmsCents, 1)}`)
        expect(shown).toContain(`largest${signedCents(design.summary.largestCents)}`)
        const cells = await page
          .locator('table.figures tbody tr')
          .evaluateAll(
            (rows, at) =>
              rows.map((row) => [
                row.querySelector('th')?.textContent,
                row.querySelectorAll('td')[at]?.textContent,
              ]),
            column,
          )
        const byName = new Map(cells.map(([name, cell]) => [name, cell]))
        for (const { fingering, errorCents } of design.combinations) {
          expect(byName.get(fingering)).toBe(signedCents(errorCents))
        }
      }
      expect(complaints).toEqual([])
    })
  }
})
