import type { Locator, Page } from 'playwright-core'
import { describe, expect } from 'vitest'
import { browserTest } from '../desktop/harness/browserForm.ts'
import acoustics from '../fixtures/acoustics.json' with { type: 'json' }
import { field, fill, goTo, startFrom, type } from './steps.ts'

/** A new workbook of three plain valves, at its bore. */
async function plainBore(page: Page): Promise<void> {
  await startFrom(page, 'Plain, three valves')
  await goTo(page, 'Bore')
}

/** A starting bore of a high instrument, its impedance and the figures of its peaks in sight. */
async function highImpedance(page: Page): Promise<void> {
  await plainBore(page)
  await page.getByRole('button', { name: /^High instrument/ }).click()
  await button(page, 'impedance').click()
  await button(page, 'Table').click()
}

function button(page: Page, name: string): Locator {
  return page.getByRole('button', { name, exact: true })
}

async function paste(page: Page, text: string): Promise<void> {
  await field(page, 'Distance and diameter').fill(text)
}

/** Drops a file of points where profiles are taken. */
async function dropProfile(page: Page, text: string): Promise<void> {
  await page.locator('.profileEntry').evaluate((zone, content) => {
    const dataTransfer = new DataTransfer()
    dataTransfer.items.add(new File([content], 'bore.csv'))
    for (const kind of ['dragover', 'drop'])
      zone.dispatchEvent(new DragEvent(kind, { dataTransfer, bubbles: true, cancelable: true }))
  }, text)
}

/** The figures of the table behind the picture, column by column. */
async function columns(page: Page): Promise<ReadonlyMap<string, readonly number[]>> {
  const rows = await page.locator('.boreFigures').first().locator('tr').all()
  const cells = await Promise.all(rows.map((row) => row.locator('th, td').allTextContents()))
  const [head, ...body] = cells
  return new Map(
    (head ?? []).map((name, column) => [name, body.map((row) => Number(row[column]?.replace('−', '-')))]),
  )
}

/** Dimensions of the invented high instrument of the fixture, as a person types them over a starting bore. */
const inventedHigh = {
  'Volume of section 1': '1200',
  'Length of section 2': '3',
  'Diameter of section 2': '3.66',
  'Length of section 3': '70',
  'Diameter at the start of section 3': '3,66',
  'Diameter at the end of section 3': '8.8',
  'Length of section 4': '24 cm',
  'Diameter at the start of section 4': '8.8',
  'Diameter at the end of section 4': '11.66',
  'Diameter of section 5': '11.66',
  'Length of section 6': '532',
  'Diameter of section 6': '11.66',
  'Length of section 7': '550',
  'Diameter at the start of section 7': '11.66',
  'Diameter at the end of section 7': '122',
  'Flare of section 7': '0.7',
}

const fixturePeaks = new Map(
  acoustics.cases.flatMap(({ name, peaksHz }) => {
    const fingering = /^invented high instrument, fingering (.+)$/.exec(name)?.[1]
    return fingering === undefined ? [] : [[fingering, peaksHz] as const]
  }),
)

describe('a bore entered by hand', () => {
  browserTest('has the peaks of the separate program, all eight fingerings of them', async ({ form }) => {
    const { page, complaints } = await form.open()
    await plainBore(page)
    await page.getByRole('button', { name: /^air/ }).first().click()
    await type(page, 'Temperature', '26.85')
    await button(page, 'Done').click()
    await page.getByRole('button', { name: /^High instrument/ }).click()
    await fill(page, inventedHigh)
    await fill(page, { 'Length of first': '169.5', 'Length of second': '82.3', 'Length of third': '262' })
    await button(page, 'impedance').click()
    await button(page, 'all').click()
    for (const name of fixturePeaks.keys()) {
      const overlay = page.locator('.overlays').getByRole('button', { name, exact: true })
      if ((await overlay.getAttribute('aria-pressed')) === 'false') await overlay.click()
    }
    await button(page, 'Table').click()
    await expect.poll(async () => (await columns(page)).size).toBe(9)
    expect(fixturePeaks.size).toBe(8)
    await expect.poll(async () => (await columns(page)).get('1-2-3')?.[0]).toBeGreaterThan(0)
    const shown = await columns(page)
    for (const [fingering, peaksHz] of fixturePeaks) {
      for (const [i, hz] of peaksHz.entries()) {
        const found = shown.get(fingering)?.[i] ?? Number.NaN
        expect(Math.abs(found - hz), `${fingering}, mode ${i + 1}: ${found} for ${hz}`).toBeLessThan(0.05)
      }
    }
    expect(complaints).toEqual([])
  })

  browserTest('follows a loop, and says where the two models differ', async ({ form }) => {
    const { page, complaints } = await form.open()
    await highImpedance(page)
    await expect.poll(async () => (await columns(page)).get('1-2-3')?.[1] ?? 0).toBeGreaterThan(100)
    const before = (await columns(page)).get('1-2-3')?.[1] ?? 0
    await page.getByRole('slider', { name: 'Length of third', exact: true }).press('PageUp')
    await expect.poll(async () => (await columns(page)).get('1-2-3')?.[1]).toBeLessThan(before - 0.2)
    await button(page, 'both models').click()
    await expect
      .poll(() => page.locator('.modelsSays').textContent())
      .toMatch(
        /^They differ most at [\d-]+, mode \d+: the bore lies [+−]\d+\.\d cents from what the length model says\.$/,
      )
    const row = page.locator('.boreFigures.models tbody tr').filter({ hasText: /^0/ })
    // The open route is what both are measured from.
    await expect.poll(() => row.locator('td').allTextContents()).toEqual(['0.0', ...Array(7).fill('0.00.0')])
    expect(complaints).toEqual([])
  })

  browserTest('ends in a bell mouth that radiates, or in an ideal one for comparison', async ({ form }) => {
    const { page, complaints } = await form.open()
    await highImpedance(page)
    // An instrument of a high bore and a low fundamental is told where it is looked at.
    await page
      .locator('#page')
      .getByText(/^Found a bore length of 1392.0 mm for 43\.65 Hz/)
      .waitFor()
    const sixth = async () => (await columns(page)).get('0')?.[5] ?? 0
    await expect.poll(sixth).toBeGreaterThan(100)
    const before = await sixth()
    await button(page, 'ideal').click()
    // Without the air beyond the rim the bore is shorter.
    await expect.poll(sixth).toBeGreaterThan(before + 0.5)
    await button(page, 'Undo “Bell mouth”').click()
    await expect.poll(sixth).toBe(before)
    expect(complaints).toEqual([])
  })

  browserTest(
    'has joints that keys move, sections that come and go, and all of it undone',
    async ({ form }) => {
      const { page } = await form.open()
      await plainBore(page)
      await page.getByRole('button', { name: /^High instrument/ }).click()
      const joint = page.getByRole('slider', { name: 'Joint between cylinder 6 and bell 7' })
      await joint.press('Shift+ArrowRight')
      await expect.poll(() => field(page, 'Length of section 6').inputValue()).toBe('530.0')
      await expect.poll(() => field(page, 'Length of section 7').inputValue()).toBe('555.0')
      await button(page, 'Undo “Move joint”').click()
      await expect.poll(() => field(page, 'Length of section 6').inputValue()).toBe('525.0')

      await type(page, 'Name of section 6', 'tuning slide')
      await page.getByRole('slider', { name: 'Joint between tuning slide and bell 7' }).waitFor()
      await button(page, 'Actions on section 6').click()
      await page.getByRole('menuitem', { name: 'Add a cone after it' }).click()
      await expect.poll(() => field(page, 'Diameter at the start of section 7').inputValue()).toBe('11.70')
      await button(page, 'Actions on section 7').click()
      await page.getByRole('menuitem', { name: 'Move towards the lips' }).click()
      await expect.poll(() => field(page, 'Name of section 7').inputValue()).toBe('tuning slide')
      await button(page, 'Actions on section 6').click()
      await page.getByRole('menuitem', { name: 'Delete' }).click()
      await expect.poll(() => field(page, 'Name of section 6').inputValue()).toBe('tuning slide')
      await button(page, 'Undo “Delete section”').click()
      await expect.poll(() => field(page, 'Name of section 7').inputValue()).toBe('tuning slide')

      await type(page, 'Diameter at the end of section 8', '9')
      await expect.poll(() => page.getByRole('alert').textContent()).toContain('a bell widens')
      await expect.poll(() => field(page, 'Diameter at the end of section 8').inputValue()).toBe('9')
    },
  )

  browserTest('is fitted to its targets, shown first, taken in one step', async ({ form }) => {
    const { page } = await form.open()
    await plainBore(page)
    await page.getByRole('button', { name: /^High instrument/ }).click()
    await page.locator('.fold', { hasText: 'Fit to targets' }).locator('summary').click()
    await page.getByRole('checkbox', { name: 'flare of bell 7' }).check()
    await page.getByRole('checkbox', { name: 'Mode 8 counts' }).uncheck()
    await button(page, 'Fit').click()
    const proposal = page.getByRole('region', { name: 'Fitted' })
    await proposal.waitFor()
    await expect.poll(() => field(page, 'Length of section 6').inputValue()).toBe('525.0')
    // With other freedoms it is no answer any more.
    await page.getByRole('checkbox', { name: 'length of bell 7' }).check()
    await page.getByText('fit again').waitFor()
    await expect.poll(() => proposal.count()).toBe(0)
    await page.getByRole('checkbox', { name: 'length of bell 7' }).uncheck()
    const fitted = await proposal.locator('tbody tr').first().locator('td').last().textContent()
    await button(page, 'Take the fit').click()
    await expect.poll(() => field(page, 'Length of section 6').inputValue()).not.toBe('525.0')
    expect(`${await field(page, 'Length of section 6').inputValue()} mm`).toBe(fitted)
    await button(page, 'Undo “Fit bore”').click()
    await expect.poll(() => field(page, 'Length of section 6').inputValue()).toBe('525.0')
    await expect.poll(() => field(page, 'Flare of section 7').inputValue()).toBe('0.680')
  })
})

/** Cylinder and bell as a spreadsheet with decimal commas copies it. */
const spreadsheet = [
  'Abstand x (mm)\tDurchmesser (mm)',
  '0\t11,66',
  '850\t11,66',
  '1100\t17,4',
  '1250\t26,3',
  '1330\t41,5',
  '1375\t73,9',
  '1400\t122',
].join('\r\n')

describe('a measured profile', () => {
  browserTest('pasted from a spreadsheet becomes the bore at the first try', async ({ form }) => {
    const { page, complaints } = await form.open()
    await plainBore(page)
    await paste(page, spreadsheet)
    await expect
      .poll(() => page.getByRole('status').textContent())
      .toBe('Read 7 points over 1400.0 mm, up to 122.0 mm wide: mm, parted by tabs, one line of heading.')
    await type(page, 'Valves at, from the first point', '300')
    await button(page, 'Use as the bore').click()
    await page.getByText('1400.0 mm in all, without loops').waitFor()
    await expect.poll(() => field(page, 'Diameter of section 2').inputValue()).toBe('11.66')
    await page.locator('.modelsSays').waitFor()
    await button(page, 'Undo “Measured profile”').click()
    await page.getByRole('heading', { name: 'No bore yet' }).waitFor()
    expect(complaints).toEqual([])
  })

  browserTest('may be a dropped file in inches with semicolons', async ({ form }) => {
    const { page } = await form.open()
    await plainBore(page)
    await dropProfile(page, 'x (in);d (in)\n0;0,46\n40;0,46\n55;4,8\n')
    await page.getByText(/^Read 3 points over 1397\.0 mm.*: in, parted by semicolons/).waitFor()
    await expect.poll(() => page.locator('.window.dropping').count()).toBe(0)
  })

  browserTest('with a slip in it is refused by line, and what is there stays', async ({ form }) => {
    const { page } = await form.open()
    await plainBore(page)
    await paste(page, spreadsheet.replace('26,3', '26,3 mm'))
    await expect
      .poll(() => page.getByRole('alert').textContent())
      .toBe('Line 5: found “1250\t26,3 mm”, expected two numbers: distance and diameter.')
    await expect.poll(() => button(page, 'Use as the bore').count()).toBe(0)
    // What was pasted is still there after a look at another page, and gone once it was taken.
    await goTo(page, 'Curves')
    await goTo(page, 'Bore')
    await expect.poll(() => page.getByRole('alert').textContent()).toMatch(/^Line 5: /)
    await paste(page, spreadsheet)
    await button(page, 'Use as the bore').click()
    await page.getByText('A measured profile', { exact: true }).click()
    await expect.poll(() => field(page, 'Distance and diameter').inputValue()).toBe('')
  })

  browserTest(
    'of ninety thousand points shows that it is being worked on, and can be given up',
    async ({ form }) => {
      const { page } = await form.open()
      await plainBore(page)
      const points = Array.from({ length: 90_000 }, (_, i) => `${i / 60},${11 + 110 * (i / 90_000) ** 6}`)
      await dropProfile(page, points.join('\n'))
      await button(page, 'Use as the bore').click()
      await button(page, 'Cancel').click()
      await page.getByText('Given up. What is shown belongs to the bore as it was before.').waitFor()
      await button(page, 'Reckon again').click()
      await button(page, 'Cancel').waitFor()
      await page.locator('.modelsSays').waitFor()
      await expect.poll(() => button(page, 'Cancel').count()).toBe(0)
    },
  )
})
