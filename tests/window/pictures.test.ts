import type { Locator, Page } from 'playwright-core'
import { describe, expect } from 'vitest'
import { plainFigure, signedCents } from '#shared/quantity/figures.ts'
import { harmonicSeries } from '#shared/tuning/harmonicSeries.ts'
import { type TuningTables, tuningTables } from '#shared/tuning/tables.ts'
import { usualFingerings } from '#shared/valves/usual.ts'
import { examples } from '#shared/workbook/examples/examples.ts'
import { instrumentOf } from '#shared/workbook/instrumentOf.ts'
import { browserTest } from '../desktop/harness/browserForm.ts'
import { exampleWorkbook } from '../fixtures/exampleFiles.ts'
import { card, field, goTo, openExample } from './steps.ts'

async function openPicture(page: Page, example: string, name: string): Promise<void> {
  await openExample(page, example)
  await goTo(page, 'Pictures')
  await turnTo(page, name)
}

async function turnTo(page: Page, name: string): Promise<void> {
  await page.getByRole('navigation', { name: 'Pictures' }).getByRole('button', { name }).click()
}

function picture(page: Page, name: string): Locator {
  return page.locator(`svg[data-picture="${name}"]`)
}

/** The library's own tables of a design of an example. */
function tablesOf(exampleId: string, at: number): TuningTables {
  const workbook = exampleWorkbook(examples.find(({ id }) => id === exampleId)!)
  return tuningTables(instrumentOf(workbook, workbook.designs[at]!))
}

function rowOf({ combinations }: TuningTables, fingering: string) {
  return combinations.find((row) => row.fingering === fingering)!
}

/** Words of a picture with single spaces, as one reads them. */
async function wordsOf(drawn: Locator): Promise<string> {
  await drawn.waitFor()
  return (await drawn.locator('text').allTextContents()).join(' ').replace(/\s+/g, ' ')
}

/** The cents that a picture shows, in its order. */
async function centsOf(drawn: Locator): Promise<readonly string[]> {
  await drawn.waitFor()
  return drawn.locator('[data-cents]').allTextContents()
}

/** The large figures of the route: tube it has, tube it needs, the difference, the error. */
function facts(page: Page): Promise<readonly string[]> {
  return page.getByRole('region', { name: 'The route' }).locator('dd b').allTextContents()
}

/** What the library says of the route, written as the window writes it. */
function expectedFacts(tables: TuningTables, fingering: string): readonly string[] {
  const { lengthMm, requiredLengthMm, errorCents } = rowOf(tables, fingering)
  return [
    plainFigure(lengthMm, 1),
    plainFigure(requiredLengthMm, 1),
    plainFigure(Math.abs(requiredLengthMm - lengthMm), 1),
    signedCents(errorCents),
  ]
}

/** A picture taken out of the page must be drawn alike: one SVG, titled, naming no class of a style sheet. */
async function expectSelfContained(drawn: Locator): Promise<void> {
  const parsed = await drawn.evaluate((svg) => {
    const parsedSvg = new DOMParser().parseFromString(
      new XMLSerializer().serializeToString(svg),
      'image/svg+xml',
    )
    const root = parsedSvg.documentElement
    const inks = [...root.querySelectorAll('*')].flatMap((each) => [
      each.getAttribute('fill'),
      each.getAttribute('stroke'),
    ])
    return {
      name: root.nodeName,
      role: root.getAttribute('role'),
      title: root.querySelector('title')?.textContent ?? '',
      figures: [...root.querySelectorAll('path')].map((path) => path.getAttribute('d') ?? ''),
      inks: [...new Set(inks)].filter((ink) => ink !== null),
      strange: root.querySelectorAll('parsererror, foreignObject, style, image, use').length,
    }
  })
  expect([parsed.name, parsed.role, parsed.strange]).toEqual(['svg', 'img', 0])
  expect(parsed.title).not.toBe('')
  expect(parsed.figures.filter((d) => /NaN|Infinity/.test(d))).toEqual([])
  for (const ink of parsed.inks) expect(ink).toMatch(/^(none|transparent|var\(--\w+\)|url\(#[^)]+\))$/)
}

describe('a teacher', () => {
  browserTest('is shown why 1-3 is sharp, and what a compensating system does about it', async ({ form }) => {
    const { page, complaints } = await form.open()
    await openPicture(page, 'Alto in E♭, three ways', 'A loop in company')
    const [plainTables, compensatingTables] = [0, 1].map((at) => tablesOf('alto-in-e-flat', at))
    const together = rowOf(plainTables!, '1-3')
    const loopMm = rowOf(plainTables!, '3').lengthMm - rowOf(plainTables!, '0').lengthMm
    const neededMm = together.requiredLengthMm - rowOf(plainTables!, '1').requiredLengthMm
    const missing = `${plainFigure(together.requiredLengthMm - together.lengthMm, 1)} mm`
    expect(together.errorCents).toBeCloseTo(30.3, 1)
    const steps = await wordsOf(picture(page, 'company'))
    for (const sentence of [
      `3 alone adds ${plainFigure(loopMm, 1)} mm; a drop of 3 semitones needs ${plainFigure(loopMm, 1)} mm: it fits.`,
      'Every semitone now needs 12.2 % more.',
      `the same drop of 3 semitones now needs ${plainFigure(neededMm, 1)} mm, and the loop still has ${plainFigure(loopMm, 1)} mm`,
      `${missing} short, and so +30.3 cents, sharp.`,
      `A compensating system would add a further loop here, open only with 1 and 3 down: ${missing}.`,
    ])
      expect(steps).toContain(sentence)

    await page
      .getByRole('combobox', { name: 'Design', exact: true })
      .selectOption('Compensating on the third')
    const compensating = await wordsOf(picture(page, 'company'))
    expect(compensating).toContain(
      `first, compensating, open only with 1 and 3 down, gives ${missing}: nothing is missing.`,
    )
    await turnTo(page, 'How the air runs')
    const route = page.getByRole('region', { name: 'The route' })
    await expect
      .poll(() => route.textContent())
      .toContain('The air goes through first; third; first, compensating.')
    await expect.poll(() => route.textContent()).toContain('The air goes through the valves a second time.')
    expect(await facts(page)).toEqual(expectedFacts(compensatingTables!, '1-3'))
    expect(complaints).toEqual([])
  })

  browserTest(
    'presses valves with the number keys, and sees route, length, error and notes',
    async ({ form }) => {
      const { page, complaints } = await form.open()
      await openPicture(page, 'Double horn in F, full and compensating', 'How the air runs')
      const tables = tablesOf('double-horn-in-f', 0)
      const route = page.getByRole('region', { name: 'The route' })
      for (const [keys, fingering, loops] of [
        ['0', '0', 'long side'],
        ['2', '2', 'second, long side; long side'],
        ['13', '1-2-3', 'first, long side; second, long side; third, long side; long side'],
        ['4', '1-2-3-T', 'first, short side; second, short side; third, short side'],
        ['23', '1-T', 'first, short side'],
        ['t', '1', 'first, long side; long side'],
      ] as const) {
        for (const key of keys) await page.keyboard.press(key)
        await expect.poll(() => facts(page)).toEqual(expectedFacts(tables, fingering))
        await expect.poll(() => route.textContent()).toContain(`The air goes through ${loops}.`)
        await expect
          .poll(() => picture(page, 'air').locator('desc').textContent())
          .toContain(`through ${loops}.`)
        const down = page.getByRole('group', { name: 'Valves' }).getByRole('button', { pressed: true })
        expect((await down.locator('b').allTextContents()).join('-')).toBe(fingering.replace(/^0$/, 'Open'))
      }
      const notes = page.getByRole('region', { name: 'Notes of 1' })
      const hz = await notes.getByRole('row', { name: /^Hz/ }).getByRole('cell').allTextContents()
      const expected = tables.notes.flatMap(({ candidates }) =>
        candidates()
          .filter((each) => each.fingering === '1')
          .map((each) => plainFigure(each.hz, 1)),
      )
      expect(expected.length).toBeGreaterThan(8)
      expect(hz).toEqual(expect.arrayContaining(expected))

      await field(page, 'A4').press('2')
      expect(await facts(page)).toEqual(expectedFacts(tables, '1'))
      await field(page, 'A4').press('Escape')
      await page.getByRole('group', { name: 'Valves' }).getByRole('button', { name: /^3/ }).press('Space')
      await expect.poll(() => facts(page)).toEqual(expectedFacts(tables, '1-3'))
      expect(complaints).toEqual([])
    },
  )
})

describe('the pictures', () => {
  browserTest('have the library’s numbers, and stand by themselves', async ({ form }) => {
    const { page, complaints } = await form.open()
    await openPicture(page, 'Bass in F, four ways', 'Harmonics and scale')
    const workbook = exampleWorkbook(examples[0]!)
    for (const [at, design] of workbook.designs.entries()) {
      const instrument = instrumentOf(workbook, design)
      const tables = tuningTables(instrument)
      await page.getByRole('combobox', { name: 'Design', exact: true }).selectOption(design.id)
      await turnTo(page, 'Harmonics and scale')
      const series = harmonicSeries(instrument, tables.mainSlide.openMm, 16)
      expect(await centsOf(picture(page, 'harmonics'))).toEqual(
        series.map((row) => signedCents(row.centsFromScale)),
      )
      await turnTo(page, 'The tube ruler')
      const usual = usualFingerings(design.valves, tables.fingerings)
      expect(await centsOf(picture(page, 'ruler'))).toEqual(
        usual.map(({ name }) => signedCents(rowOf(tables, name).errorCents)),
      )
      if (at === 0) expect(await wordsOf(picture(page, 'ruler'))).toContain('short 721.4 mm')
    }
    await page.getByText('The same figures in a table').click()
    const table = page.getByRole('table', { name: /^Tube of each fingering/ })
    await table.waitFor()
    await expect
      .poll(() => table.getByRole('rowheader').count())
      .toBe(await picture(page, 'ruler').locator('[data-cents]').count())

    const names = { harmonics: 'Harmonics and scale', ruler: 'The tube ruler', air: 'How the air runs' }
    for (const [name, title] of Object.entries(names)) {
      await turnTo(page, title)
      await expectSelfContained(picture(page, name))
    }
    await turnTo(page, 'A loop in company')
    await expectSelfContained(picture(page, 'company'))
    await page.getByRole('combobox', { name: 'Design', exact: true }).selectOption('plain')
    await expectSelfContained(picture(page, 'growth'))
    expect(complaints).toEqual([])
  })

  browserTest('move no air where less motion is asked for, and show its way by arrows', async ({ form }) => {
    const { page } = await form.open()
    await openPicture(page, 'Alto in E♭, three ways', 'How the air runs')
    const flow = page.locator('.airFlow')
    expect(await flow.evaluate((path) => path.getAnimations().length)).toBe(1)
    await page.emulateMedia({ reducedMotion: 'reduce' })
    await expect.poll(() => flow.evaluate((path) => path.getAnimations().length)).toBe(0)
    await expect.poll(() => flow.isVisible()).toBe(false)
    await expect
      .poll(() => picture(page, 'air').locator('path[transform*="rotate"]').count())
      .toBeGreaterThan(2)
  })

  browserTest('of the systems open one as a design, which undo takes out', async ({ form }) => {
    const { page, complaints } = await form.open()
    await openPicture(page, 'Early two-valve horn', 'Valve systems')
    await expect.poll(() => page.getByRole('img', { name: /^Route of/ }).count()).toBe(15)
    for (const drawn of await page.getByRole('img', { name: /^Route of/ }).all()) {
      await expectSelfContained(drawn)
    }
    await page.getByRole('button', { name: 'Add Compensating, three valves to the line-up' }).click()
    await card(page, 'Compensating, three valves').waitFor()
    await page.getByText('Compensating, three valves is in the line-up.').waitFor()
    await turnTo(page, 'How the air runs')
    for (const key of ['0', '1', '3']) await page.keyboard.press(key)
    const [, , missing, error] = await facts(page)
    expect([missing, error]).toEqual(['0.0', '0.0'])
    await page.getByRole('button', { name: 'Undo “Add design”' }).click()
    await expect.poll(() => card(page, 'Compensating, three valves').count()).toBe(0)
    expect(complaints).toEqual([])
  })
})

describe('a loop in company', () => {
  browserTest('leads from a design without it to one that has it', async ({ form }) => {
    const { page } = await form.open()
    await openExample(page, 'Six-valve trombone against a plain one')
    await goTo(page, 'Pictures')
    await page.getByRole('button', { name: 'A loop in company' }).click()
    await page.getByText(/never adds one loop to another/).waitFor()
    await page.getByRole('button', { name: 'Look at Plain, three valves' }).click()
    await page.locator('[data-picture="company"]').waitFor()
  })
})
