import type { Page } from 'playwright-core'
import { describe, expect } from 'vitest'
import { prepareBody } from '#shared/bore/body.ts'
import { describeFingerings } from '#shared/bore/fingeringModes.ts'
import { boreInput } from '#shared/workbook/boreInput.ts'
import { examples } from '#shared/workbook/examples/examples.ts'
import { derive } from '../../src-renderer/state/derived.ts'
import { comparisonTable } from '../../src-renderer/tables/comparisonTables.ts'
import { combinationsTable } from '../../src-renderer/tables/curvesTables.ts'
import { fingeringsTable } from '../../src-renderer/tables/fingeringsTable.ts'
import { browserTest } from '../desktop/harness/browserForm.ts'
import { exampleWorkbook } from '../fixtures/exampleFiles.ts'
import { tenReadings } from '../screens/benchScenes.ts'
import {
  beyondSheet,
  csvRows,
  download,
  expectTable,
  keepPrints,
  paperAsPdf,
  printing,
  saved,
  withoutFaces,
} from './outWindow.ts'
import { pageCount, pdfWords, pdfWordsTest } from './pdf.ts'
import { choose, dropFile, field, figure, goTo, openExample, startFrom, type } from './steps.ts'

const bass = exampleWorkbook(examples.find(({ title }) => title === 'Bass in F, four ways')!)
const derived = bass.designs.map((design, i) => derive(bass, design, i))

/** The picture as a browser's own parser finds it: its title, faults, and what is drawn. */
function parsed(page: Page, svg: string) {
  return page.evaluate((text) => {
    const picture = new DOMParser().parseFromString(text, 'image/svg+xml')
    const line = (each: Element) =>
      [...(each.getAttribute('d') ?? '').matchAll(/[ML]([\d.]+) ([\d.]+)/g)].map(([, x, y]) => [
        Number(x),
        Number(y),
      ])
    const zero = [...picture.querySelectorAll('line')].find(
      (each) => each.getAttribute('stroke-width') === '1.4',
    )
    return {
      faults: picture.querySelectorAll('parsererror').length,
      title: picture.querySelector('title')?.textContent,
      words: [...picture.querySelectorAll('text')].map((each) => each.textContent),
      lines: [...picture.querySelectorAll('path.line')].map(line),
      zero: Number(zero?.getAttribute('y1')),
      levels: [...picture.querySelectorAll('line')].map(
        (each) => [each.nextElementSibling?.textContent, Number(each.getAttribute('y1'))] as const,
      ),
      strangers: [...picture.querySelectorAll('*')].filter(
        (each) => each.namespaceURI !== 'http://www.w3.org/2000/svg',
      ).length,
      paper: picture.querySelector('rect')?.getAttribute('fill'),
      text,
    }
  }, withoutFaces(svg))
}

describe('What leaves the program', () => {
  browserTest(
    'is every table as CSV and for the clipboard, the figures those of the library',
    async ({ form }) => {
      const { page, complaints } = await form.open()
      await form.context.grantPermissions(['clipboard-read'])
      await openExample(page, 'Bass in F, four ways')
      const curves = csvRows((await saved(page, 'Save table as CSV: Combination error by fingering')).content)
      expect(curves.headings.at(-1)).toBe(`${bass.designs.at(-1)!.name} (cents)`)
      const combinations = await saved(page, `Save table as CSV: Combinations of ${bass.designs[0]!.name}`)
      expectTable(combinations.content, combinationsTable(derived[0]!, 'mm'))

      await page.getByRole('button', { name: 'Copy table: Combination error by fingering' }).click()
      await page.getByText('copied', { exact: true }).waitFor()
      const [text, markup] = await page.evaluate(async () => {
        const [item] = await navigator.clipboard.read()
        return Promise.all(
          ['text/plain', 'text/html'].map(async (kind) => (await item!.getType(kind)).text()),
        )
      })
      expect(
        text!
          .trimEnd()
          .split('\n')
          .map((line) => line.split('\t')),
      ).toEqual([curves.headings, ...curves.rows])
      expect(markup).toContain('>1-2</td>')

      await goTo(page, 'Fingerings')
      const chart = await saved(page, `Save table as CSV: Fingering chart of ${bass.designs[0]!.name}`)
      expectTable(chart.content, fingeringsTable(derived[0]!, 'flats'))
      await goTo(page, 'Compare')
      const comparison = await saved(page, 'Save table as CSV: Comparison of the designs')
      expectTable(comparison.content, comparisonTable(derived, 'mm', 'flats'))
      expect(complaints).toEqual([])
    },
  )

  browserTest(
    'is the error chart as vectors, its places those of the table, whatever the theme',
    async ({ form }) => {
      const { page, complaints } = await form.open()
      await page.emulateMedia({ colorScheme: 'dark' })
      await openExample(page, 'Bass in F, four ways')
      const { content } = await saved(page, 'Save picture as SVG: Combination error by fingering')
      const { faults, title, lines, zero, levels, words, paper, text, strangers } = await parsed(
        page,
        content.toString(),
      )
      expect([faults, strangers, title, paper]).toEqual([0, 0, 'Combination error by fingering', '#ffffff'])
      for (const { name } of bass.designs) expect(words).toContain(name)
      const perCent = (zero - levels.find(([words]) => words === '+50')![1]) / 50
      const table = csvRows((await saved(page, 'Save table as CSV: Combination error by fingering')).content)
      const plain = table.headings.indexOf(`${bass.designs[0]!.name} (cents)`)
      const drawn = lines[0]!.map(([, y]) => (zero - y!) / perCent)
      const wanted = table.rows.map((row) => Number(row[plain]))
      expect(drawn).toHaveLength(wanted.length)
      for (const [i, cents] of wanted.entries()) expect(Math.abs(drawn[i]! - cents)).toBeLessThan(0.05)
      // The first design's blue of the light theme, and nothing that the page would have to resolve.
      expect(text).toContain('#2b5f93')
      expect(text).not.toMatch(/var\(--|href="http|url\(http/)
      expect(complaints).toEqual([])
    },
  )

  browserTest(
    'is a picture of the page with its own colours, as SVG and as PNG of twice its size',
    async ({ form }) => {
      const { page, complaints } = await form.open()
      await page.emulateMedia({ colorScheme: 'dark' })
      await openExample(page, 'Bass in F, four ways')
      await goTo(page, 'Bench')
      await page
        .getByRole('navigation', { name: 'On the bench' })
        .getByRole('button', { name: 'Read a tuner' })
        .click()
      await page.getByText('Paste from a spreadsheet').click()
      await page.getByRole('textbox', { name: /^Columns of fingering/ }).fill(tenReadings)
      await page.getByRole('button', { name: 'Add to the table' }).click()
      const picture = page.locator('.jobPlace .readingsPicture')
      await picture.waitFor()
      const shown = await picture.evaluate((svg) => {
        const { width, height } = svg.getBoundingClientRect()
        return {
          width,
          height,
          marks: svg.querySelectorAll('circle').length,
          words: [...svg.querySelectorAll('text')].map((each) => each.textContent),
        }
      })
      const { content } = await saved(page, 'Save picture as SVG: Readings against the fit, as found')
      const found = await page.evaluate((text) => {
        const file = new DOMParser().parseFromString(text, 'image/svg+xml')
        const root = file.documentElement
        return {
          faults: file.querySelectorAll('parsererror').length,
          title: root.firstElementChild?.textContent,
          size: [Number(root.getAttribute('width')), Number(root.getAttribute('height'))],
          marks: file.querySelectorAll('circle').length,
          words: [...file.querySelectorAll('text')].map((each) => each.textContent),
          classes: file.querySelectorAll('[class],[style],[tabindex]').length,
          inks: [...file.querySelectorAll('text')].map(
            (each) => each.getAttribute('fill') ?? each.closest('[fill]')?.getAttribute('fill'),
          ),
        }
      }, withoutFaces(content.toString()))
      expect(found).toMatchObject({
        faults: 0,
        title: 'Readings against the fit, as found',
        marks: shown.marks,
        words: shown.words,
        classes: 0,
      })
      expect(found.size).toEqual([expect.closeTo(shown.width, 1), expect.closeTo(shown.height, 1)])
      // --ink, --soft and --hot of the light theme
      for (const ink of found.inks)
        expect(['rgb(30, 34, 38)', 'rgb(93, 96, 102)', 'rgb(155, 47, 28)']).toContain(ink)

      const png = await saved(page, 'Save picture as PNG: Readings against the fit, as found')
      const pixels = await page.evaluate(
        async (bytes) => {
          const bitmap = await createImageBitmap(new Blob([new Uint8Array(bytes)], { type: 'image/png' }))
          const canvas = new OffscreenCanvas(bitmap.width, bitmap.height)
          const context = canvas.getContext('2d')!
          context.drawImage(bitmap, 0, 0)
          const { data } = context.getImageData(0, 0, bitmap.width, bitmap.height)
          // A strip at the left holds the figures of the scale, and nothing else that is dark.
          let dark = 0
          for (let y = 60; y < bitmap.height - 80; y++)
            for (let x = 4; x < 80; x++) if (data[4 * (y * bitmap.width + x)]! < 140) dark++
          return { size: [bitmap.width, bitmap.height], corner: [...data.slice(0, 4)], dark }
        },
        [...png.content],
      )
      expect(pixels.size).toEqual([Math.round(2 * found.size[0]!), Math.round(2 * found.size[1]!)])
      expect(pixels.corner).toEqual([255, 255, 255, 255])
      expect(pixels.dark).toBeGreaterThan(50)
      expect(complaints).toEqual([])
    },
  )

  browserTest('is the tubing to scale, and its loops, which come in again as they were', async ({ form }) => {
    const { page, complaints } = await form.open()
    await openExample(page, 'Bass in F, four ways')
    const out = (item: string) => download(page, () => choose(page, 'Loops in and out', item))
    const dxf = (await out('Drawing to scale as DXF')).content.toString()
    expect(dxf).toMatch(/^0\nSECTION[\s\S]*\nARC\n[\s\S]*EOF\n$/)
    expect((await out('Drawing to scale as SVG')).content.toString()).toContain('<title>Loops of ')
    const loops = await out('Loops as CSV')
    expect(loops.name).toBe(`Loops of ${bass.designs[0]!.name}.csv`)
    await dropFile(page, loops.name, loops.content.toString())
    await page.getByRole('dialog').getByText('What is taken').waitFor()
    const rows = page.getByRole('dialog').locator('tbody tr')
    await expect.poll(() => rows.count()).toBe(bass.designs[0]!.loops.length)
    await page.getByRole('button', { name: 'Cancel' }).click()
    expect(complaints).toEqual([])
  })
})

function startJob(page: Page, name: string): Promise<void> {
  return page.getByRole('navigation', { name: 'On the bench' }).getByRole('button', { name }).click()
}

/** The bass with a change of pitch on its bench, its prints kept. */
async function changeThePitch(page: Page): Promise<void> {
  await openExample(page, 'Bass in F, four ways')
  await goTo(page, 'Bench')
  await startJob(page, 'Change the pitch')
  await keepPrints(page)
}

/** Prints the report without some of its parts. */
async function report(page: Page, ...without: readonly string[]): Promise<void> {
  await choose(page, 'File', 'Report…')
  for (const part of without) await page.getByRole('checkbox', { name: part }).uncheck()
  await printing(page, () => page.getByRole('button', { name: 'Print…' }).click())
}

async function printChart(page: Page): Promise<void> {
  await goTo(page, 'Fingerings')
  await printing(page, () => page.getByRole('button', { name: 'Print chart' }).click())
}

/** Adds to the six valves of a design. */
async function addValvesToTwelve(page: Page): Promise<void> {
  for (let valve = 7; valve <= 12; valve++) await page.getByRole('button', { name: 'Add a valve' }).click()
}

/** Prints a template that is larger than the paper, and says on how many sheets. */
async function printLargeTemplate(page: Page): Promise<number> {
  await openExample(page, 'Bass in F, four ways')
  await goTo(page, 'Bench')
  await startJob(page, 'Size a slide')
  await type(page, 'Outer leg, each', '400')
  await keepPrints(page)
  await page.getByRole('button', { name: 'Drawing and template' }).click()
  const item = page.getByRole('menuitem', { name: /^Print template 1 : 1 on \d+ sheets$/ })
  const sheets = Number(/on (\d+) sheets/.exec((await item.textContent()) ?? '')?.[1])
  await printing(page, () => item.click())
  return sheets
}

/** The template that was printed last, the paper lying as its sheets do. */
async function templateAsPdf(page: Page, paper: 'A4' | 'Letter'): Promise<Uint8Array> {
  const landscape = await page
    .locator('.kept .templateSheet')
    .first()
    .evaluate((sheet) => sheet.getBoundingClientRect().width > sheet.getBoundingClientRect().height)
  return paperAsPdf(page, paper, landscape)
}

describe('The report', () => {
  browserTest('has the parts that were ticked, on both papers, and nothing is clipped', async ({ form }) => {
    const { page, complaints } = await form.open()
    await page.emulateMedia({ colorScheme: 'dark' })
    await changeThePitch(page)
    await report(page)
    expect(await beyondSheet(page)).toBeLessThan(1)
    const pages = await page.locator('.kept > article').count()
    // designs, comparison, curves; all tables of combinations; a chart and a bore a design; the change of pitch
    expect(pages).toBe(3 + 1 + 4 + 4 + 1)
    await report(page, 'fingering charts', 'combination tables', 'error curves', 'bores', 'bench')
    await expect.poll(() => page.locator('.kept > article').count()).toBe(2)
    expect(complaints).toEqual([])
  })

  pdfWordsTest('says what its parts hold, and nothing of a part that was not ticked', async ({ form }) => {
    const { page } = await form.open()
    await changeThePitch(page)
    await report(page)
    const whole = await paperAsPdf(page, 'A4')
    const words = pdfWords(whole)
    for (const { name } of bass.designs) expect(words).toContain(`Fingering chart of ${name}`)
    for (const expected of [
      'Report: ',
      'Designs and lengths',
      'Comparison of the designs',
      'Combinations of',
      'cents, sharp above the line',
      'Change of pitch: ',
      'Sections of the bore of',
      'Resonances of the open route of',
      'Its bore is that of Plain, four valves',
      `1 / ${pageCount(whole)}`,
    ])
      expect(words).toContain(expected)
    // 1-3 of the plain design: 1200·log2(2^(5/12) / (2^(2/12) + 2^(3/12) − 1)) = +30.3
    expect(words).toMatch(/1-3 5 first; third [\d.]+ [\d.]+ [\d.]+ \+30\.3/)
    await report(page, 'fingering charts', 'combination tables', 'error curves', 'bench')
    expect(pdfWords(await paperAsPdf(page, 'Letter'))).not.toContain('Fingering chart of')
  })

  pdfWordsTest('has the resonances of a bore as the calculation gives them', async ({ form }) => {
    const { page } = await form.open()
    await openExample(page, 'Bass in F, four ways')
    await keepPrints(page)
    const others = ['designs', 'fingering charts', 'combination tables', 'error curves', 'comparison']
    await report(page, ...others)
    const input = boreInput(bass, bass.designs[0]!)!
    const body = prepareBody(input.sections, input.conditions, { highestMode: 16 })
    const modes = body.ok ? describeFingerings(body.value, input.open, [input.open]) : body
    if (!modes.ok) throw new Error('the example has a bore that is refused')
    const words = pdfWords(await paperAsPdf(page, 'A4'))
    for (const { mode, hz } of modes.value[0]!.modes) expect(words).toContain(` ${mode} ${hz.toFixed(2)} `)
  })

  browserTest('has the workbook at the foot of its pages, whatever its name', async ({ form }) => {
    const { page } = await form.open()
    await openExample(page, 'Bass in F, four ways')
    await page.getByRole('button', { name: /^Bass in F/ }).click()
    await field(page, 'Workbook name').fill('A "bass" \\ in F')
    await page.keyboard.press('Enter')
    await page.evaluate(() => {
      window.print = () => {
        const rules = document.adoptedStyleSheets.flatMap((sheet) => [...sheet.cssRules])
        document.body.dataset.rules = rules.map(({ cssText }) => cssText).join('\n')
      }
    })
    await choose(page, 'File', 'Report…')
    await page.getByRole('button', { name: 'Print…' }).click()
    const rules = () => page.evaluate(() => document.body.dataset.rules ?? '')
    await expect.poll(rules).toContain('content: "A \\"bass\\" \\\\ in F, ')
  })

  browserTest('offers no bores where no design has one', async ({ form }) => {
    const { page } = await form.open()
    await startFrom(page, 'Plain, three valves')
    await choose(page, 'File', 'Report…')
    await expect.poll(() => page.getByRole('checkbox', { name: 'bores' }).isDisabled()).toBe(true)
    await expect.poll(() => page.getByRole('dialog').textContent()).toContain('no design has a bore')
  })

  browserTest(
    'has the fingering chart on exactly one page of either paper, with twelve valves too',
    async ({ form }) => {
      const { page, complaints } = await form.open()
      await startFrom(page, 'Plain, six valves')
      await keepPrints(page)
      const printed = async (): Promise<void> => {
        await printChart(page)
        const [a4, letter] = [await paperAsPdf(page, 'A4'), await paperAsPdf(page, 'Letter')]
        expect([pageCount(a4), pageCount(letter)]).toEqual([1, 1])
        expect(await beyondSheet(page)).toBeLessThan(1)
      }
      await printed()
      await addValvesToTwelve(page)
      const notes = page.locator('.chartTable tbody tr')
      await printed()
      const lines = await page.locator('.kept .chartLines li').count()
      expect(lines).toBe(await notes.count())
      expect(complaints).toEqual([])
    },
  )

  browserTest('leaves hidden curves out, and says so', async ({ form }) => {
    const { page } = await form.open()
    await openExample(page, 'Bass in F, four ways')
    await keepPrints(page)
    await page.getByTitle('Hide the curve').first().click()
    await report(page)
    const curves = page.locator('.kept > article', { hasText: 'Error curves' })
    const headings = (await curves.locator('thead th').allTextContents()).join()
    expect(headings).toContain('Compensating on the fourth')
    expect(headings).not.toContain('Plain, four valves')
    expect(await curves.textContent()).toContain('Hidden, and so not among the curves: Plain, four valves.')
    expect(await page.locator('.kept').textContent()).toContain('Fingering chart of Plain, four valves')
  })

  pdfWordsTest('shows a class the pictures of a design where they are ticked', async ({ form }) => {
    const { page } = await form.open()
    await startFrom(page, 'Plain, three valves')
    await keepPrints(page)
    await choose(page, 'File', 'Report…')
    // What is asked for all that there is does not wait for it.
    await page.getByRole('checkbox', { name: 'pictures for a class' }).waitFor()
    for (const box of await page.getByRole('dialog').getByRole('checkbox').all())
      if (await box.isEnabled()) await box.uncheck()
    await page.getByRole('checkbox', { name: 'pictures for a class' }).check()
    await printing(page, () => page.getByRole('button', { name: 'Print…' }).click())
    expect(await beyondSheet(page)).toBeLessThan(1)
    const pdf = await paperAsPdf(page, 'A4')
    const words = pdfWords(pdf)
    for (const expected of [
      'Pictures of Plain, three valves',
      'The tube ruler',
      'tube beyond the body',
      '1-3',
    ])
      expect(words).toContain(expected)
    // The head, and two pages of pictures.
    expect(pageCount(pdf)).toBe(3)
  })

  browserTest('offers nothing of designs where there is none', async ({ form }) => {
    const { page } = await form.open()
    await startFrom(page, 'Plain, three valves')
    await choose(page, 'More for Plain, three valves', 'Delete')
    await choose(page, 'File', 'Report…')
    const dialog = page.getByRole('dialog')
    await expect.poll(() => dialog.getByRole('checkbox', { disabled: true }).count()).toBe(8)
    expect(await dialog.getByRole('button', { name: 'Print…' }).isDisabled()).toBe(true)
  })

  pdfWordsTest('says on the fingering chart how many ways it has no room for', async ({ form }) => {
    const { page } = await form.open()
    await startFrom(page, 'Plain, six valves')
    await keepPrints(page)
    await printChart(page)
    const six = pdfWords(await paperAsPdf(page, 'Letter'))
    expect(six).toMatch(/Not shown: \d+ further ways/)
    await addValvesToTwelve(page)
    await printChart(page)
    const twelve = pdfWords(await paperAsPdf(page, 'Letter'))
    expect(twelve).toMatch(/Not shown: \d{3,} further ways/)
  })

  browserTest(
    'of a template larger than the paper is several sheets at full size, with marks',
    async ({ form }) => {
      const { page, complaints } = await form.open()
      const sheets = await printLargeTemplate(page)
      const drawn = await page.locator('.kept .templateSheet > svg:first-child').evaluateAll((all) =>
        all.map((svg) => ({
          width: svg.getBoundingClientRect().width / Number(svg.getAttribute('viewBox')!.split(' ')[2]),
          marks: svg.querySelectorAll('.mark').length,
        })),
      )
      expect(drawn).toHaveLength(sheets)
      for (const { width, marks } of drawn) {
        // One millimetre of the drawing is one of paper.
        expect(width).toBeCloseTo(96 / 25.4, 3)
        expect(marks).toBeGreaterThan(0)
      }
      for (const paper of ['A4', 'Letter'] as const)
        expect(pageCount(await templateAsPdf(page, paper))).toBe(sheets)
      expect(complaints).toEqual([])
    },
  )

  pdfWordsTest('of such a template has a line to measure on every sheet', async ({ form }) => {
    const { page } = await form.open()
    const sheets = await printLargeTemplate(page)
    for (const paper of ['A4', 'Letter'] as const) {
      const words = pdfWords(await templateAsPdf(page, paper))
      expect(words.match(/This line must measure 100 mm/g)?.length).toBeGreaterThanOrEqual(sheets)
    }
  })
})

describe('What comes in', () => {
  browserTest(
    'is a table of loops dropped on the window, seen first, and one step back',
    async ({ form }) => {
      const { page, complaints } = await form.open()
      await openExample(page, 'Bass in F, four ways')
      const before = await figure(page, '1-2').textContent()
      await dropFile(page, 'loops.csv', 'loop;length;unit;valves\nfirst;500,5;mm;1\nfifth;9 3/4;in;2-4\n')
      const dialog = page.getByRole('dialog')
      await dialog.getByRole('button', { name: 'Take 2 loops' }).waitFor()
      await expect
        .poll(() => dialog.locator('tbody tr').allTextContents())
        .toEqual([
          expect.stringMatching(/^first2\d+\.\d mm500\.5 mm1 down$/),
          'fifth3new247.7 mm2 and 4 down',
        ])
      await dialog.getByRole('button', { name: 'Take 2 loops' }).click()
      await expect.poll(() => field(page, 'Length of first').inputValue()).toBe('500.5')
      await expect.poll(() => field(page, 'Length of fifth').inputValue()).toBe('247.7')
      await page.getByRole('button', { name: 'Undo “Take 2 loops”' }).click()
      await expect.poll(() => field(page, 'Length of fifth').count()).toBe(0)
      await expect.poll(() => figure(page, '1-2').textContent()).toBe(before)
      expect(complaints).toEqual([])
    },
  )

  browserTest(
    'names every line that it cannot read, and takes nothing until all can be',
    async ({ form }) => {
      const { page } = await form.open()
      await openExample(page, 'Bass in F, four ways')
      await choose(page, 'Loops in and out', 'Loops from a table…')
      const dialog = page.getByRole('dialog')
      const text = dialog.getByRole('textbox', { name: 'Paste from a spreadsheet' })
      await text.fill('first\tlong\t1\nsecond\t90\t9')
      const refused = dialog.getByRole('alert')
      await refused.waitFor()
      await expect
        .poll(() => refused.getByRole('listitem').allTextContents())
        .toEqual([
          expect.stringMatching(/^Line 1, length: found “long”, expected /),
          'Line 2, valves down: found “9”, expected 0, or valves of 1, 2, 3, 4 joined with -.',
        ])
      await expect.poll(() => dialog.getByRole('button', { name: /^Take/ }).isDisabled()).toBe(true)
      await text.fill('first\t480\t1')
      await dialog.getByRole('button', { name: 'go', exact: true }).click()
      await dialog.getByRole('button', { name: 'Take a loop' }).click()
      await expect.poll(() => page.locator('.loops > li').count()).toBe(1)
    },
  )

  browserTest('and without a workbook says what is missing', async ({ form }) => {
    const { page } = await form.open()
    await dropFile(page, 'loops.csv', 'first;480;1')
    await page.getByRole('dialog', { name: 'No workbook is open' }).waitFor()
  })
})
