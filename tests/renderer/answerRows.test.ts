import { describe, expect, it } from 'vitest'
import type { FittedLoop, ReadingsFit, Remark } from '#shared/bench/readings/readingsFit.ts'
import { answerRows, answerSentences, cutsAreHeld } from '../../src-renderer/bench/readings/answerRows.ts'
import { workbookWith } from '../fixtures/workbooks.ts'

const loop: FittedLoop = {
  value: 258.6,
  standardError: 1.4,
  targetMm: 265,
  changeMm: 6.4,
  movementMm: 3.2,
  changeStandardErrorMm: 1.2,
  firstCutMm: 267.4,
  exactMm: 265,
}

const fit: ReadingsFit = {
  kind: 'fitted',
  converged: true,
  openLengthMm: { value: 1400, standardError: 2 },
  loops: { L3: loop },
  harmonicOffsetsCents: {},
  referenceHarmonic: null,
  residualsCents: [],
  fittedCents: [],
  notToldApart: [],
  readingErrorCents: 3,
  degreesOfFreedom: 4,
  remarks: [],
}

/** The design that the readings are of, its third slide standing somewhere. */
function designWith(slide?: { readonly outMm: number; readonly travelMm: number }) {
  const [design] = workbookWith('plain-3').designs
  const loops = design!.loops.map((each) =>
    each.id === 'L3' && slide !== undefined ? { ...each, slide } : each,
  )
  return { ...design!, loops }
}

const rowOf = (of: Partial<FittedLoop>, unit: 'mm' | 'in' = 'mm') =>
  answerRows({ ...fit, loops: { L3: { ...loop, ...of } } }, designWith(), unit)[0]

describe('A row of the answers', () => {
  it('keeps tube and movement apart', () => {
    expect(rowOf({})).toEqual({
      loop: 'third',
      off: '6.4 short',
      doubt: '1.2',
      kind: 'clear',
      slide: '3.2 outwards',
      newLoop: '265.0',
      firstCut: '267.4',
    })
    expect(rowOf({ changeMm: -6.4 })).toMatchObject({ off: '6.4 long', slide: '3.2 inwards' })
  })

  it('is in inches where these are shown', () => {
    expect(rowOf({}, 'in')).toMatchObject({ off: '0.252 short', slide: '0.126 outwards', newLoop: '10.433' })
  })

  it('says when there is nothing to change, and when it may be nothing', () => {
    expect(rowOf({ changeMm: 0.04 })).toMatchObject({
      off: 'nothing to change',
      kind: 'nothing',
      slide: null,
    })
    expect(rowOf({ changeMm: 2.3 })).toMatchObject({
      off: '2.3 short',
      kind: 'doubtful',
      slide: '1.1 outwards',
    })
  })

  it('without a target says how long the loop is', () => {
    const bare = {
      targetMm: null,
      changeMm: null,
      movementMm: null,
      changeStandardErrorMm: null,
      firstCutMm: null,
    }
    expect(rowOf({ ...bare, exactMm: null })).toMatchObject({ off: 'is 258.6', doubt: '1.4', newLoop: null })
  })

  it.each<Remark['kind']>(['farOff', 'disagree', 'notConverged', 'negativeLength'])(
    'gives nothing to cut by while a remark says %s',
    (kind) => {
      const held = { ...fit, remarks: [{ kind, rows: [], message: '' }] }
      expect(cutsAreHeld(held)).toBe(true)
      expect(answerRows(held, designWith(), 'mm')[0]).toMatchObject({
        slide: null,
        newLoop: null,
        firstCut: null,
      })
      expect(answerSentences(held, designWith(), 'mm')[0]).toMatch(/^No length to cut and no movement/)
    },
  )
})

describe('What is no row', () => {
  const sentences = (
    of: Partial<FittedLoop>,
    slide?: { readonly outMm: number; readonly travelMm: number },
  ) => answerSentences({ ...fit, loops: { L3: { ...loop, ...of } } }, designWith(slide), 'mm')

  // 12 mm of tube are 6 of movement; 2 in leave 8 mm of tube, of which 2.4 are spared at first
  it('is what a slide leaves over, in tube', () => {
    const long = { changeMm: -12, movementMm: -6 }
    expect(sentences(long, { outMm: 2, travelMm: 30 })[0]).toBe(
      'The slide of third can move 2.0 mm inwards and no more: take off the 8.0 mm of tube left over, at first 5.6 mm.',
    )
    expect(sentences(long, { outMm: 0, travelMm: 30 })[0]).toBe(
      'The slide of third is all the way in already: take off the 12.0 mm of tube left over, at first 9.6 mm.',
    )
    expect(sentences(long, { outMm: 5, travelMm: 30 })[0]).toBe(
      'The slide of third can move 5.0 mm inwards and no more: 2.0 mm of tube are left over to take off, too little to be sure of.',
    )
    expect(sentences({ changeMm: 12, movementMm: 6 }, { outMm: 27, travelMm: 30 })[0]).toBe(
      'The slide of third can move 3.0 mm outwards and no more: add the 6.0 mm of tube left over.',
    )
    expect(sentences(long, { outMm: 6, travelMm: 30 })).toEqual([
      'The open length is 1400.0 mm of tube, ± 2.0 mm.',
    ])
  })

  it('is how far each harmonic lies from the one that the open length is as', () => {
    const harmonicOffsetsCents = {
      '4': { value: 0, standardError: 0 },
      '5': { value: -3.2, standardError: 1.5 },
    }
    const offsets = (referenceHarmonic: number | null) =>
      answerSentences({ ...fit, harmonicOffsetsCents, referenceHarmonic }, designWith(), 'mm').filter(
        (each) => each.startsWith('Harmonic'),
      )
    expect(offsets(4)).toEqual(['Harmonic 5 lies −3.2 ± 1.5 cents from harmonic 4.'])
    expect(offsets(null)).toHaveLength(2)
  })

  it('is the exact length where another is wanted, and to take more readings where they do not tell', () => {
    expect(sentences({ exactMm: 243.04 })[0]).toBe(
      'Exact for its own fingering, third would be 243.0 mm of tube.',
    )
    expect(sentences({ exactMm: 265.04 })).toHaveLength(1)
    expect(sentences({ changeMm: 2.3 })[0]).toMatch(/^Where a change may be nothing/)
  })
})
