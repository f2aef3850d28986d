import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { systemOf, systems } from '#shared/valves/systems/systems.ts'
import type { Command } from '#shared/workbook/commands/command.ts'
import { moved, withOptional } from '#shared/workbook/commands/command.ts'
import {
  chooseFingering,
  moveMainSlide,
  replaceSystem,
  setFingerings,
  setHarmonicOffset,
  setInstrument,
  setMainSlidePosition,
} from '#shared/workbook/commands/designCommands.ts'
import {
  addValve,
  moveLoopSlide,
  moveValve,
  removeLoop,
  removeValve,
  renameValve,
  setGate,
  setLoopLength,
  setLoopTravel,
} from '#shared/workbook/commands/valveCommands.ts'
import {
  addDesign,
  duplicateDesign,
  moveDesign,
  removeDesign,
  renameDesign,
  setA4,
  setAir,
  setTemperament,
  setTuning,
} from '#shared/workbook/commands/workbookCommands.ts'
import { designFromSystem, emptyWorkbook } from '#shared/workbook/newWorkbook.ts'
import { brokenRule } from '#shared/workbook/rules.ts'
import type { Design, Workbook } from '#shared/workbook/workbook.ts'

const empty = emptyWorkbook('Bench')

function bookOf(...systemIds: readonly string[]): Workbook {
  const designs = systemIds.map((id, i) =>
    designFromSystem(empty, systemOf(id)!, { fundamentalHz: 43.654 }, `d${i}`),
  )
  return { ...empty, designs }
}

const book = bookOf('compensating-4', 'double')
const result = (command: Command, workbook: Workbook = book): Workbook => command.apply(workbook)
const first = (workbook: Workbook): Design => workbook.designs[0]!
const loopOf = (id: string) => first(book).loops.find((loop) => loop.id === id)!

describe('a command', () => {
  it('leaves the workbook it was given alone', () => {
    const before = JSON.stringify(book)
    for (const command of [
      setA4(442),
      removeValve('d0', '4'),
      setLoopLength('d0', loopOf('L1'), 500),
      moveDesign('d0', 1),
      chooseFingering('d0', 53, { pressed: ['1'], harmonic: 3 }),
    ]) {
      result(command)
    }
    expect(JSON.stringify(book)).toBe(before)
  })

  it('for a design that is not there changes nothing, and gives the same workbook', () => {
    expect(result(setLoopLength('nobody', loopOf('L1'), 5))).toBe(book)
    expect(result(moveDesign('nobody', 1))).toBe(book)
    expect(result(duplicateDesign('nobody', 'x'))).toBe(book)
  })

  it('that moves something past the end of its list gives the same workbook', () => {
    expect(result(moveDesign('d1', 5))).toBe(book)
    expect(result(moveValve('d0', '1', -1))).toBe(book)
  })
})

describe('the line-up', () => {
  it('keeps a copy behind its original, adds at the end, moves and deletes', () => {
    const ids = (workbook: Workbook) => workbook.designs.map(({ id }) => id)
    expect(ids(result(duplicateDesign('d0', 'copy')))).toEqual(['d0', 'copy', 'd1'])
    expect(ids(result(addDesign({ ...first(book), id: 'new' })))).toEqual(['d0', 'd1', 'new'])
    expect(ids(result(moveDesign('d1', -1)))).toEqual(['d1', 'd0'])
    expect(ids(result(removeDesign('d0')))).toEqual(['d1'])
  })

  it('numbers the copies of a design, and of its copies', () => {
    const names = (workbook: Workbook) => workbook.designs.map(({ name }) => name)
    const named = result(renameDesign('d1', 'Other'), result(renameDesign('d0', 'Plain')))
    const once = result(duplicateDesign('d0', 'c1'), named)
    const twice = result(duplicateDesign('c1', 'c2'), once)
    expect(names(result(duplicateDesign('d0', 'c3'), twice))).toEqual([
      'Plain',
      'Plain, copy 3',
      'Plain, copy',
      'Plain, copy 2',
      'Other',
    ])
  })

  it('is tuned alike', () => {
    const tuned = result(setTuning({ kind: 'open', harmonic: 4 }))
    expect(tuned.designs.map(({ tuning }) => tuning)).toEqual(Array(2).fill({ kind: 'open', harmonic: 4 }))
  })
})

describe('a valve', () => {
  it('renamed is renamed in gates, lists and choices alike', () => {
    const chosen = result(chooseFingering('d0', 41, { pressed: ['1', '4'], harmonic: 3 }))
    const listed = result(setFingerings('d0', [{ pressed: [] }, { pressed: ['4'] }]), chosen)
    const renamed = first(result(renameValve('d0', '4', 'thumb'), listed))
    expect(JSON.stringify(renamed)).not.toContain('"4"')
    expect(renamed.chosen?.['41']?.pressed).toEqual(['1', 'thumb'])
    expect(renamed.fingerings).toEqual([{ pressed: [] }, { pressed: ['thumb'] }])
    expect(brokenRule({ ...book, designs: [renamed] })).toBeNull()
  })

  it('renamed to a name that is taken breaks a rule, so the window refuses it', () => {
    expect(brokenRule(result(renameValve('d0', '4', '1')))).toMatchObject({ path: 'designs[0].valves[3].id' })
  })

  it('taken out takes the loops that it switches in with it, and is released from the other gates', () => {
    const without = first(result(removeValve('d0', '4')))
    expect(without.loops.map(({ id }) => id)).toEqual(['L1', 'L2', 'L3'])
    const single = result(removeValve('d1', 'T')).designs[1]!
    expect(single.loops.map(({ id, released }) => [id, released])).toEqual([
      ['long body', []],
      ['long 1', []],
      ['long 2', []],
      ['long 3', []],
    ])
  })

  it('can be any one of any system without breaking a rule', () => {
    for (const { id } of systems) {
      const workbook = bookOf(id)
      for (const valve of first(workbook).valves) {
        expect(brokenRule(result(removeValve('d0', valve.id), workbook))).toBeNull()
      }
    }
  })

  it('added brings its loop', () => {
    const loop = { id: 'L5', lengthMm: 100, pressed: ['5'] }
    const added = first(result(addValve('d0', { id: '5', semitones: 2 }, loop)))
    expect([added.valves.at(-1)?.id, added.loops.at(-1)?.id]).toEqual(['5', 'L5'])
  })
})

describe('a loop', () => {
  it('whose slide is moved out grows by twice the movement, and shrinks again by as much', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 30, noNaN: true }), (outMm) => {
        const out = result(moveLoopSlide('d0', loopOf('L1'), outMm))
        const moved = first(out).loops[0]!
        expect(moved.lengthMm).toBeCloseTo(loopOf('L1').lengthMm + 2 * outMm, 9)
        const back = first(result(moveLoopSlide('d0', moved, 0), out)).loops[0]!
        expect(back.lengthMm).toBeCloseTo(loopOf('L1').lengthMm, 9)
      }),
    )
  })

  it('has its gate set without an empty list of released valves left behind', () => {
    const gated = first(result(setGate('d0', loopOf('L1'), { pressed: ['1'], released: [] }))).loops[0]!
    expect(gated).not.toHaveProperty('released')
    const up = first(result(setGate('d0', loopOf('L1'), { pressed: ['1'], released: ['2'] }))).loops[0]!
    expect(up.released).toEqual(['2'])
  })

  it('names its step after itself', () => {
    expect(setLoopLength('d0', loopOf('C1'), 5).name).toBe('First, compensating loop length')
    expect(removeLoop('d0', loopOf('C1')).name).toBe('Delete first, compensating')
  })
})

describe('keys of other programs', () => {
  const ours = <T extends object>(value: T): T => ({ ...value, ours: 1 })
  const marked: Workbook = {
    ...book,
    reference: { ...book.reference, temperament: ours({ kind: 'just', key: 'F' }) },
    designs: book.designs.map((design) => ({
      ...design,
      mainSlide: ours({ outMm: 12, travelMm: 60 }),
      tuning: ours({ kind: 'open', harmonic: 4 }),
      loops: design.loops.map((loop) => ({ ...loop, slide: ours({ outMm: 5, travelMm: 30 }) })),
    })),
  }
  const changed = (command: Command) => result(command, marked)

  it('stay with the slide that is moved or has its travel set', () => {
    const slideAfter = (command: Command) => first(changed(command)).loops[0]?.slide
    expect(slideAfter(setLoopTravel('d0', loopOf('L1'), 40))).toEqual({ outMm: 5, travelMm: 40, ours: 1 })
    expect(slideAfter(moveLoopSlide('d0', loopOf('L1'), 6))).toEqual({ outMm: 6, travelMm: 30, ours: 1 })
    const main = changed(setMainSlidePosition('d0', { outMm: 3, travelMm: 60 }))
    expect(first(main).mainSlide).toEqual({ outMm: 3, travelMm: 60, ours: 1 })
    expect(first(changed(setMainSlidePosition('d0', undefined)))).not.toHaveProperty('mainSlide')
  })

  it('the main slide’s travel goes along with a slide farther out only where it was never typed', () => {
    const moved = (outMm: number, slide?: { outMm: number; travelMm: number }) => {
      const set = changed(setMainSlidePosition('d0', slide))
      return first(moveMainSlide('d0', outMm).apply(set)).mainSlide
    }
    expect(moved(30)).toEqual({ outMm: 30, travelMm: 30 })
    expect(moved(30, { outMm: 3, travelMm: 3 })).toMatchObject({ outMm: 30, travelMm: 30 })
    expect(moved(30, { outMm: 0, travelMm: 20 })).toMatchObject({ outMm: 30, travelMm: 20 })
    expect(moved(12, { outMm: 30, travelMm: 30 })).toMatchObject({ outMm: 12, travelMm: 30 })
  })

  it('stay with the temperament and the tuning that stay of their kind', () => {
    const temperamentAfter = (command: Command) => changed(command).reference.temperament
    const just = { kind: 'just', key: 'B♭' } as const
    expect(temperamentAfter(setTemperament(just))).toEqual({ ...just, ours: 1 })
    expect(temperamentAfter(setTemperament({ kind: 'equal' }))).toEqual({ kind: 'equal' })
    const open = { kind: 'open', harmonic: 2 } as const
    expect(first(changed(setTuning(open))).tuning).toEqual({ ...open, ours: 1 })
    expect(first(changed(setTuning({ kind: 'none' }))).tuning).toEqual({ kind: 'none' })
  })
})

describe('an optional value', () => {
  it('set to nothing leaves the file', () => {
    const set = result(setInstrument('d0', 'boreLengthMm', 3800))
    expect(first(set).instrument.boreLengthMm).toBe(3800)
    expect(first(result(setInstrument('d0', 'boreLengthMm', undefined), set)).instrument).not.toHaveProperty(
      'boreLengthMm',
    )
    expect(result(setAir('playingTemperatureC', undefined)).air).not.toHaveProperty('playingTemperatureC')
    const offset = result(setHarmonicOffset('d0', 5, 3))
    expect(first(offset).instrument.harmonicOffsetsCents).toEqual({ '5': 3 })
    expect(first(result(setHarmonicOffset('d0', 5, 0), offset)).instrument).not.toHaveProperty(
      'harmonicOffsetsCents',
    )
  })

  it('is set and left out without touching the others', () => {
    const value: { a: number; b?: number } = { a: 1 }
    expect(withOptional(value, 'b', 2)).toEqual({ a: 1, b: 2 })
    expect(withOptional({ a: 1, b: 2 } as typeof value, 'b', undefined)).toEqual({ a: 1 })
  })
})

describe('another system', () => {
  it('drops the choices that name valves it has not', () => {
    const chosen = result(
      chooseFingering('d0', 53, { pressed: ['1'], harmonic: 3 }),
      result(chooseFingering('d0', 41, { pressed: ['4'], harmonic: 3 })),
    )
    const plain = result(replaceSystem('d0', 'Plain, three valves', systemOf('plain-3')!.build(3969)), chosen)
    expect(Object.keys(first(plain).chosen ?? {})).toEqual(['53'])
    expect(brokenRule(plain)).toBeNull()
  })

  it.each([
    ['Plain, four valves', 'Compensating, four valves'],
    ['Plain, four valves, copy 2', 'Compensating, four valves'],
    ['Plain, four valves, mine', 'Plain, four valves, mine'],
  ])('renames a design called %s to %s', (name, after) => {
    const parts = systemOf('compensating-4')!.build(3969)
    const made = result(
      replaceSystem('d0', 'Compensating, four valves', parts),
      result(renameDesign('d0', name)),
    )
    expect(first(made).name).toBe(after)
  })
})

describe('moving an item of a list', () => {
  it('keeps every item, and undoes itself when moved back within the list', () => {
    fc.assert(
      fc.property(
        fc.uniqueArray(fc.nat(), { minLength: 1, maxLength: 9 }),
        fc.nat(8),
        fc.integer({ min: -9, max: 9 }),
        (items, at, by) => {
          const from = at % items.length
          const changed = moved(items, from, by)
          expect([...changed].sort()).toEqual([...items].sort())
          const to = changed.indexOf(items[from]!)
          expect(moved(changed, to, from - to)).toEqual(items)
        },
      ),
    )
  })
})
