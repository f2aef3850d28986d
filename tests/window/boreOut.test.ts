import type { Page } from 'playwright-core'
import { describe, expect } from 'vitest'
import { prepareBody } from '#shared/bore/body.ts'
import { csvText } from '#shared/table/csv.ts'
import type { Table } from '#shared/table/table.ts'
import { boreInput } from '#shared/workbook/boreInput.ts'
import { examples } from '#shared/workbook/examples/examples.ts'
import { modelsTable, peaksTable, sectionsTable } from '../../src-renderer/tables/boreTables.ts'
import { type BoreAnswer, describeBore } from '../../src-renderer/worker/boreAnswer.ts'
import { browserTest } from '../desktop/harness/browserForm.ts'
import { exampleWorkbook } from '../fixtures/exampleFiles.ts'
import { demand } from '../shared/bore/bores.ts'
import { csvRows, saved, withoutFaces } from './outWindow.ts'
import { field, goTo, openExample } from './steps.ts'

const bass = exampleWorkbook(examples.find(({ title }) => title === 'Bass in F, four ways')!)
const design = bass.designs.find(({ bore }) => bore !== undefined)!
const input = boreInput(bass, design)!
const highestMode = 16

/** What the library says of the bore with these fingerings, and the curves of those drawn. */
async function reckoned(names: readonly string[], drawn: readonly string[]): Promise<BoreAnswer> {
  const { sections, conditions, open } = input
  const fingerings = names.map((name) => input.fingerings.find(({ fingering }) => fingering === name)!)
  const body = prepareBody(sections, conditions, { highestMode })
  const question = { bodyKey: '', highestMode, open, fingerings, drawn, points: 1600 }
  return demand(await describeBore(question, body, () => undefined))
}

/** Figures of a scale with their places, and the value that another place stands for. */
function valueAt(scale: readonly (readonly [string, number])[], px: number): number {
  const figures = scale.map(([text, at]) => [Number(text.replace('−', '-')), at] as const)
  const [[low, from], [high, to]] = [figures[0]!, figures.at(-1)!]
  return low + ((px - from) / (to - from)) * (high - low)
}

/** A saved picture as a browser's own parser finds it. */
async function picture(page: Page, name: string) {
  const { content } = await saved(page, `Save picture as SVG: ${name}`)
  const text = content.toString()
  // Colours that every program knows, and nothing that the page would have to resolve.
  expect(text).not.toMatch(/var\(--|rgba\(|href="http|url\(http/)
  return page.evaluate((svg) => {
    const file = new DOMParser().parseFromString(svg, 'image/svg+xml')
    const root = file.documentElement
    const number = (each: Element, name: string): number => Number(each.getAttribute(name))
    const scale = (kind: string, name: string) =>
      [...file.querySelectorAll(`line.${kind}`)].map(
        (each) => [each.nextElementSibling?.textContent ?? '', number(each, name)] as const,
      )
    const texts = [...file.querySelectorAll('text')]
    return {
      faults: file.querySelectorAll('parsererror').length,
      title: root.querySelector(':scope > title')?.textContent,
      paper: root.querySelector(':scope > rect')?.getAttribute('fill'),
      size: [number(root, 'width'), number(root, 'height')] as const,
      words: texts.map((each) => each.textContent ?? ''),
      levels: scale('level', 'y1'),
      frequencies: scale('frequency', 'x1'),
      lines: [...file.querySelectorAll('path.line')].map((each) => ({
        name: each.querySelector('title')?.textContent ?? '',
        points: [...(each.getAttribute('d') ?? '').matchAll(/[ML](\S+?) ([^ML]+)/g)].map(([, x, y]) => [
          Number(x),
          Number(y),
        ]),
      })),
      // Figures of a scale of the page stand at the end of a line across the picture.
      ticks: [...file.querySelectorAll('g > path + text')].flatMap((each) => {
        const [, y] = /^M\S+ (\S+)H/.exec(each.previousElementSibling?.getAttribute('d') ?? '') ?? []
        return y === undefined ? [] : [[each.textContent ?? '', Number(y)] as const]
      }),
      marks: [...file.querySelectorAll('g > circle')].flatMap((each) => {
        const said = each.parentElement?.querySelector(':scope > title')?.textContent
        return said == null ? [] : [{ said, y: number(each, 'cy') }]
      }),
      fills: [...file.querySelectorAll('rect')].map((each) => each.closest('[fill]')?.getAttribute('fill')),
      text: svg,
    }
  }, withoutFaces(text))
}

/** Whether a CSV file is a table, its numbers to a millionth: powers are not everywhere the same. */
function expectNear(content: Buffer, table: Table): void {
  const [found, wanted] = [csvRows(content), csvRows(Buffer.from(csvText(table)))]
  expect(found.headings).toEqual(wanted.headings)
  expect(found.rows).toHaveLength(wanted.rows.length)
  for (const [i, row] of wanted.rows.entries()) {
    for (const [j, cell] of row.entries()) {
      const value = Number(cell)
      const cells = found.rows[i]![j]!
      if (cell === '' || !Number.isFinite(value)) expect(cells).toBe(cell)
      else expect(Math.abs(Number(cells) - value)).toBeLessThan(1e-6 * Math.max(1, Math.abs(value)))
    }
  }
}

async function boreOf(page: Page, shown: string): Promise<void> {
  await openExample(page, 'Bass in F, four ways')
  await goTo(page, 'Bore')
  await page.getByRole('button', { name: shown, exact: true }).click()
}

describe('What leaves the page of the bore', () => {
  browserTest(
    'is the impedance as vectors, its curves and peaks those of the library, and as pixels',
    async ({ form }) => {
      const { page, complaints } = await form.open()
      await page.emulateMedia({ colorScheme: 'dark' })
      await boreOf(page, 'impedance')
      const name = `Input impedance of ${design.name}`
      const found = await picture(page, name)
      expect([found.faults, found.title, found.paper]).toEqual([0, name, '#ffffff'])
      const names = found.lines.map((line) => line.name)
      expect(names[0]).toBe('0')
      expect(names.length).toBeGreaterThan(1)
      for (const words of [...names, '|Z|, MPa·s/m³', 'Hz']) expect(found.words).toContain(words)
      const answer = await reckoned(names, names)
      for (const [i, { points }] of found.lines.entries()) {
        const { magnitude } = answer.curves[i]!
        const most = Math.max(...magnitude)
        expect(points).toHaveLength(magnitude.length)
        for (const [place, [x, y]] of points.entries()) {
          expect(Math.abs(valueAt(found.frequencies, x!) - answer.hz[place]!)).toBeLessThan(0.05)
          expect(Math.abs(valueAt(found.levels, y!) - magnitude[place]!)).toBeLessThan(1e-3 * most)
        }
      }
      // The first fingering's blue of the light theme.
      expect(found.text).toContain('#2b5f93')

      const png = await saved(page, `Save picture as PNG: ${name}`)
      const [width, height] = [16, 20].map((at) => png.content.readUInt32BE(at))
      expect([width, height]).toEqual(found.size.map((px) => Math.round(2 * px)))

      const phase = await picture(page, `Phase of the input impedance of ${design.name}`)
      expect(phase.levels.map(([text]) => text)).toEqual(['−90', '−45', '0', '45', '90'])

      await page.getByRole('button', { name: 'Table', exact: true }).click()
      const peaks = await saved(page, `Save table as CSV: Peaks of the input impedance of ${design.name}`)
      expectNear(peaks.content, peaksTable(design.name, answer.modes, answer.modes))
      expect(complaints).toEqual([])
    },
  )

  browserTest('is the picture of both models, with its title and key, and its table', async ({ form }) => {
    const { page, complaints } = await form.open()
    await page.emulateMedia({ colorScheme: 'dark' })
    await boreOf(page, 'both models')
    await page.locator('.modelsSays').waitFor()
    const name = `Length model and bore of ${design.name}`
    const found = await picture(page, name)
    expect([found.faults, found.title, found.paper]).toEqual([0, name, '#ffffff'])
    for (const words of [name, 'length model, the same for every mode', 'bore, mode by mode'])
      expect(found.words).toContain(words)
    // The blue of the light theme, in the key too.
    expect(found.text).toContain('#2b5f93')

    await page.getByRole('button', { name: 'Table', exact: true }).click()
    const table = await saved(page, `Save table as CSV: ${name}`)
    const names = csvRows(table.content).rows.map(([fingering]) => fingering!)
    const { modes } = await reckoned(names, [])
    expectNear(table.content, modelsTable(design.name, modes, [2, 8]))

    expect(found.marks).toHaveLength(7 * names.length)
    for (const { said, y } of found.marks) {
      const [, fingering, mode] = /^(\S+), mode (\d+): /.exec(said)!
      const wanted = modes.find((each) => each.fingering === fingering)!.modes[Number(mode) - 1]!
      expect(Math.abs(valueAt(found.ticks, y) - wanted.errorCents!), said).toBeLessThan(0.05)
    }
    expect(complaints).toEqual([])
  })

  browserTest(
    'is every other picture and table, named after the design, and the drawing with its scale',
    async ({ form }) => {
      const { page, complaints } = await form.open()
      await boreOf(page, 'equivalent fundamental')
      // A section that is being worked on is marked on the page, and not in what is saved.
      await field(page, 'Name of section 2').focus()
      await page.locator('.sectionArea.on').waitFor()
      const drawing = await picture(page, `Bore of ${design.name}`)
      for (const words of ['lips', 'valves', 'bell']) expect(drawing.words).toContain(words)
      expect(drawing.words.some((words) => words.startsWith('to scale: '))).toBe(true)
      expect(new Set(drawing.fills)).toEqual(new Set(['#ffffff', 'none']))
      await expect.poll(() => page.locator('.sectionArea.on').count()).toBe(1)

      const sections = await saved(page, `Save table as CSV: Sections of the bore of ${design.name}`)
      expectNear(sections.content, sectionsTable(design.name, design.bore!.sections, 'mm'))

      await page.getByRole('button', { name: 'Table', exact: true }).click()
      for (const [shown, ofPicture, ofTable] of [
        ['equivalent fundamental', 'Equivalent fundamentals of', 'Equivalent fundamentals of'],
        ['group length', 'Group lengths of', 'Group lengths of'],
        ['weighted sum', 'Weighted sum of Re Z of', 'Where notes settle by the weighted sum of'],
      ] as const) {
        await page.getByRole('button', { name: shown, exact: true }).click()
        const found = await picture(page, `${ofPicture} ${design.name}`)
        expect([found.faults, found.title]).toEqual([0, `${ofPicture} ${design.name}`])
        const table = await saved(page, `Save table as CSV: ${ofTable} ${design.name}`)
        expect(table.name).toBe(`${ofTable} ${design.name}.csv`)
        const names = [...new Set(csvRows(table.content).rows.map(([fingering]) => fingering!))]
        expect(names.length).toBeGreaterThan(1)
        // The key names the fingerings that the table has.
        for (const fingering of names) expect(found.words).toContain(fingering)
      }
      expect(complaints).toEqual([])
    },
  )
})
