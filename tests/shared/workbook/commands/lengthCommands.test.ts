import { describe, expect, it } from 'vitest'
import { setOpenDetuning } from '#shared/workbook/commands/lengthCommands.ts'
import { takeIntoDesign } from '#shared/workbook/commands/takeIntoDesign.ts'
import { brokenRule } from '#shared/workbook/rules.ts'
import { workbookWith } from '../../../fixtures/workbooks.ts'

const workbook = workbookWith('plain-3')
const [design] = workbook.designs

describe('takeIntoDesign', () => {
  const found = { loopsMm: { L1: 500, L3: 800 }, openDetuningCents: 11.5 }

  it('sets the loops that are named and the open note, and leaves the rest of the workbook as it is', () => {
    const taken = takeIntoDesign('Take lengths', 'design', found).apply(workbook)
    expect(taken).toEqual({
      ...workbook,
      designs: [
        {
          ...design,
          openDetuningCents: 11.5,
          loops: design!.loops.map((loop) => ({
            ...loop,
            lengthMm: { L1: 500, L3: 800 }[loop.id] ?? loop.lengthMm,
          })),
        },
      ],
    })
  })

  it('takes the open note back to its pitch, and leaves it where nothing is said of it', () => {
    const off = setOpenDetuning('design', -3).apply(workbook)
    const taken = (openDetuningCents?: number) =>
      takeIntoDesign('Take lengths', 'design', {
        loopsMm: {},
        ...(openDetuningCents === undefined ? {} : { openDetuningCents }),
      }).apply(off)
    expect(taken(0)).toEqual(workbook)
    expect(taken()).toEqual(off)
  })

  it('is one step of its own', () => {
    expect(takeIntoDesign('Take lengths', 'design', found).undo).toBe('record')
  })

  it('changes nothing when the design is not there', () => {
    expect(takeIntoDesign('Take lengths', 'other', found).apply(workbook)).toBe(workbook)
  })

  it('makes a length that is no length a broken rule, not a hidden one', () => {
    const taken = takeIntoDesign('Take lengths', 'design', { loopsMm: { L1: Number.NaN } }).apply(workbook)
    expect(brokenRule(taken)?.path).toBe('designs[0].loops[0].lengthMm')
  })
})

describe('setOpenDetuning', () => {
  it('leaves no key behind at 0', () => {
    const set = setOpenDetuning('design', -3).apply(workbook)
    expect(set.designs[0]).toHaveProperty('openDetuningCents', -3)
    expect(setOpenDetuning('design', 0).apply(set)).toEqual(workbook)
  })

  it('is held to a semitone by the rules of the file', () => {
    expect(brokenRule(setOpenDetuning('design', 101).apply(workbook))?.path).toBe(
      'designs[0].openDetuningCents',
    )
  })
})
