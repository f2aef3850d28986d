import { readFileSync } from 'node:fs'
import Papa from 'papaparse'
import type { Page } from 'playwright-core'
import { expect } from 'vitest'
import { csvText } from '#shared/table/csv.ts'
import type { Table } from '#shared/table/table.ts'

/** A file that the page hands to the browser when something is done. */
export async function download(
  page: Page,
  act: () => Promise<void>,
): Promise<{ name: string; content: Buffer }> {
  const downloading = page.waitForEvent('download')
  await act()
  const file = await downloading
  return { name: file.suggestedFilename(), content: readFileSync(await file.path()) }
}

/** Presses a button that saves a file. */
export function saved(page: Page, button: string) {
  return download(page, () => page.getByRole('button', { name: button, exact: true }).first().click())
}

/** The page's content policy would refuse the faces of a document that it parses; the file opened alone has no such. */
export function withoutFaces(svg: string): string {
  expect(svg).toContain('<style>@font-face')
  return svg.replace(/<style>[^<]*<\/style>/, '')
}

/** A CSV file's headings and rows, as another library reads them. */
export function csvRows(content: Buffer): {
  headings: readonly string[]
  rows: readonly (readonly string[])[]
} {
  const [headings = [], ...rows] = Papa.parse<string[]>(content.toString('utf8'), {
    skipEmptyLines: true,
  }).data
  return { headings, rows }
}

/** Whether a CSV file is a table: the same words, and numbers equal to eight decimals, for powers are not everywhere the same. */
export function expectTable(content: Buffer, table: Table): void {
  const [wanted, found] = [csvRows(Buffer.from(csvText(table))), csvRows(content)]
  expect(found.headings).toEqual(wanted.headings)
  const figure = (cell: string): string =>
    cell !== '' && Number.isFinite(Number(cell)) ? Number(cell).toFixed(8) : cell
  expect(found.rows.map((row) => row.map(figure))).toEqual(wanted.rows.map((row) => row.map(figure)))
}

/** From now on a print keeps what is on paper, for `paperAsPdf`; the program believes that it was printed. */
export async function keepPrints(page: Page): Promise<void> {
  await page.evaluate(() => {
    window.print = () => {
      for (const before of document.querySelectorAll('.kept')) before.remove()
      const kept = document.querySelector('.onPaper')?.cloneNode(true) as HTMLElement
      kept.classList.add('kept')
      document.body.append(kept)
      document.body.dataset.prints = String(Number(document.body.dataset.prints ?? 0) + 1)
    }
  })
}

/** Does something that prints, and waits until it was printed. */
export async function printing(page: Page, act: () => Promise<void>): Promise<void> {
  const before = await page.evaluate(() => Number(document.body.dataset.prints ?? 0))
  await act()
  await page.locator(`body[data-prints="${before + 1}"]`).waitFor()
}

/** What was printed last, on a paper. */
export async function paperAsPdf(
  page: Page,
  format: 'A4' | 'Letter',
  landscape = false,
): Promise<Uint8Array> {
  await page.evaluate(() => {
    for (const other of document.querySelectorAll<HTMLElement>('.onPaper:not(.kept)'))
      other.style.display = 'none'
  })
  return page.pdf({ format, landscape })
}

/** How far anything that was printed reaches beyond the width of its sheet, px. */
export function beyondSheet(page: Page): Promise<number> {
  return page.locator('.kept .benchSheet').evaluateAll((sheets) =>
    Math.max(
      ...sheets.flatMap((sheet) => {
        const { right } = sheet.getBoundingClientRect()
        const boxes = [...sheet.querySelectorAll('*')].map((each) => each.getBoundingClientRect())
        return boxes.filter(({ width }) => width > 0).map((box) => box.right - right)
      }),
    ),
  )
}
