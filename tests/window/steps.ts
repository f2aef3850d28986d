import type { Locator, Page } from 'playwright-core'
import type { BrowserForm, OpenPage } from '../desktop/harness/browserForm.ts'

/** What a person does in the window, in plain words. */

export async function startFrom(page: Page, system: string | RegExp): Promise<void> {
  await page.getByRole('button', { name: 'New workbook…' }).click()
  await page.getByRole('radio', { name: system, exact: false }).check()
  await page.getByRole('button', { name: 'Create workbook' }).click()
  await page.getByRole('complementary', { name: 'Line-up' }).waitFor()
}

export async function openExample(page: Page, title: string | RegExp): Promise<void> {
  await page.getByRole('button', { name: title }).click()
  await page.getByRole('complementary', { name: 'Line-up' }).waitFor()
}

export function openBass(page: Page): Promise<void> {
  return openExample(page, /Bass in F/)
}

export function field(page: Page, name: string): Locator {
  return page.getByRole('textbox', { name, exact: true })
}

/** Types into a field and confirms. */
export async function type(page: Page, name: string, text: string): Promise<void> {
  await field(page, name).fill(text)
  await field(page, name).press('Enter')
}

/** Types into fields by their names, one after the other. */
export async function fill(page: Page, values: Readonly<Record<string, string>>): Promise<void> {
  for (const [name, text] of Object.entries(values)) await type(page, name, text)
}

/** What has the focus, by its label. */
export function focused(page: Page): Promise<string> {
  return page.evaluate(() => {
    const at = document.activeElement
    if (at === null || at === document.body) return ''
    const label = at instanceof HTMLInputElement ? at.labels?.[0]?.textContent : null
    return at.getAttribute('aria-label') ?? label ?? at.textContent ?? ''
  })
}

/** Pastes readings into the table of the job that is shown. */
export async function pasteReadings(page: Page, text: string): Promise<void> {
  await page.getByText('Paste from a spreadsheet').click()
  await field(page, 'Columns of fingering, harmonic or note, and cents; with headings in any order').fill(
    text,
  )
  await page.getByRole('button', { name: 'Add to the table' }).click()
}

/** The figure of a row and design in the table under the curves. */
export function figure(page: Page, row: string, column = 0): Locator {
  return page
    .getByRole('row')
    .filter({ has: page.getByRole('rowheader', { name: row, exact: true }) })
    .getByRole('cell')
    .nth(column)
}

export function card(page: Page, design: string): Locator {
  return page.getByRole('listitem').filter({ has: page.getByRole('button', { name: design, exact: true }) })
}

export async function choose(page: Page, menu: string, item: string): Promise<void> {
  await page.getByRole('button', { name: menu, exact: true }).click()
  await page
    .getByRole('menuitem')
    .filter({ has: page.getByText(item, { exact: true }) })
    .click()
}

export function goTo(page: Page, tab: string): Promise<void> {
  return page.getByRole('tab', { name: tab, exact: true }).click()
}

/** A page of its own with an example open on its lengths. */
export async function lengthsOf(form: BrowserForm, title: RegExp): Promise<OpenPage> {
  const opened = await form.open()
  await opened.page.getByRole('button', { name: title }).click()
  await goTo(opened.page, 'Lengths')
  return opened
}

/** Drops a file on the window, as from a folder. */
export async function dropFile(page: Page, name: string, text: string): Promise<void> {
  await page.evaluate(
    ([fileName, content]) => {
      const data = new DataTransfer()
      data.items.add(new File([content ?? ''], fileName ?? ''))
      document
        .querySelector('.window')
        ?.dispatchEvent(new DragEvent('drop', { dataTransfer: data, bubbles: true }))
    },
    [name, text],
  )
}
