import { describe, expect, it } from 'vitest'
import { centsBetween } from '#shared/pitch/cents.ts'
import { designModes } from '#shared/workbook/boreRecord.ts'
import { examples } from '#shared/workbook/examples/examples.ts'
import { boreWorkbook } from '../../fixtures/boreWorkbook.ts'
import { exampleWorkbook } from '../../fixtures/exampleFiles.ts'
import { workbookWith } from '../../fixtures/workbooks.ts'
import { demand } from '../bore/bores.ts'

describe('the modes of a design', () => {
  it('are refused for a design without a bore, or a place without a design', () => {
    expect(designModes(workbookWith('plain-3'), 0)).toMatchObject({
      ok: false,
      refusal: { path: 'designs[0].bore' },
    })
    expect(designModes(boreWorkbook(), 3)).toMatchObject({ ok: false, refusal: { path: 'designs[3].bore' } })
  })

  it('are those of its own fingerings, in their order', () => {
    const workbook = boreWorkbook()
    const fingerings = [{ pressed: ['3'] }, { pressed: [] }]
    const listed = { ...workbook, designs: [{ ...workbook.designs[0]!, fingerings }] }
    expect(demand(designModes(listed, 0)).fingerings.map(({ fingering }) => fingering)).toEqual(['3', '0'])
  })

  it('do not depend on the order in which the file lists loops of one bore', () => {
    const workbook = boreWorkbook()
    const [design] = workbook.designs
    const turned = { ...workbook, designs: [{ ...design!, loops: design!.loops.toReversed() }] }
    const peaksHz = (book: typeof workbook) =>
      demand(designModes(book, 0, '1-2-3')).fingerings[0]!.modes.map(({ hz }) => hz)
    expect(peaksHz(turned)).toEqual(peaksHz(workbook))
  })
})

describe('the bore of the bass in F', () => {
  it('has its playing modes at the harmonics of the fundamental that the design states', () => {
    const { fingerings, input } = demand(designModes(exampleWorkbook(examples[0]!), 0, '0'))
    const playing = fingerings[0]!.modes.slice(1, 8)
    const cents = playing.map(({ hz, mode }) => centsBetween(mode * input.fundamentalHz, hz))
    const meanCents = cents.reduce((sum, each) => sum + each, 0) / cents.length
    expect(Math.abs(meanCents)).toBeLessThan(1)
    expect(Math.max(...cents.map(Math.abs))).toBeLessThan(12)
  })

  it('is one body for all four ways', () => {
    const { designs } = exampleWorkbook(examples[0]!)
    for (const { bore } of designs) expect(bore).toEqual(designs[0]!.bore)
  })
})
