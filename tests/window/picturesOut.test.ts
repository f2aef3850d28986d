import { expect } from 'vitest'
import { harmonicSeries } from '#shared/tuning/harmonicSeries.ts'
import { tubeRuler } from '#shared/tuning/tubeRuler.ts'
import { usualFingerings } from '#shared/valves/usual.ts'
import { examples } from '#shared/workbook/examples/examples.ts'
import { derive } from '../../src-renderer/state/derived.ts'
import { harmonicsTable, rulerTable } from '../../src-renderer/tables/picturesTables.ts'
import { browserTest } from '../desktop/harness/browserForm.ts'
import { exampleWorkbook } from '../fixtures/exampleFiles.ts'
import { expectTable, saved } from './outWindow.ts'
import { goTo, openExample } from './steps.ts'

const bass = exampleWorkbook(examples.find(({ title }) => title === 'Bass in F, four ways')!)
const plain = derive(bass, bass.designs[0]!, 0)
const { design, instrument, tables } = plain

browserTest('every explaining picture leaves the program, its figures with it', async ({ form }) => {
  const { page, complaints } = await form.open()
  await page.emulateMedia({ colorScheme: 'dark' })
  await openExample(page, 'Bass in F, four ways')
  await goTo(page, 'Pictures')
  const turnTo = async (name: string): Promise<void> => {
    await page.getByRole('navigation', { name: 'Pictures' }).getByRole('button', { name }).click()
    await page.getByRole('heading', { name, level: 1 }).waitFor()
  }
  const picture = (name: string) => saved(page, `Save picture as SVG: ${name}, ${design.name}`)

  await page.getByText('The same figures in a table').click()
  const harmonics = await saved(page, `Save table as CSV: Harmonics of the open route of ${design.name}`)
  const series = harmonicSeries(instrument, tables.mainSlide.openMm, 16)
  expectTable(harmonics.content, harmonicsTable(design.name, series, 'flats'))

  await turnTo('The tube ruler')
  await page.getByText('The same figures in a table').click()
  const usual = usualFingerings(design.valves, tables.fingerings).map(({ name }) => name)
  const rows = usual.map((name) => tables.combinations.find(({ fingering }) => fingering === name)!)
  const ruler = tubeRuler(tables.summary.bodyMm, design.loops, rows)
  const csv = await saved(page, `Save table as CSV: Tube of each fingering of ${design.name}`)
  expectTable(csv.content, rulerTable(design.name, ruler, 'mm'))
  const svg = (await picture('The tube ruler')).content.toString()
  expect(svg).toContain(
    `Tube ruler of ${design.name}: the tube each fingering has against the tube it needs</title>`,
  )
  expect(svg).toContain('short 721.4 mm')
  expect(svg).toContain('<style>@font-face')
  expect(svg).not.toMatch(/var\(--|href="http/)
  // White paper under the light theme's ink, whatever the theme of the window.
  expect(svg).toContain('fill="#ffffff"')

  await turnTo('A loop in company')
  expect((await picture('A loop in company 1-3')).content.toString()).toContain('>open</text>')
  await turnTo('How the air runs')
  expect((await picture('How the air runs 1-3')).name).toBe(`How the air runs 1-3, ${design.name}.svg`)
  const notes = await saved(page, 'Save table as CSV: Notes of 1-3')
  expect(notes.content.toString()).toMatch(/^\uFEFF?harmonic,sounds,written,frequency \(Hz\),error \(cents\)/)
  expect(complaints).toEqual([])
})
