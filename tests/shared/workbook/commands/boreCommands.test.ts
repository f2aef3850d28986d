import { describe, expect, it } from 'vitest'
import { boreLengthMm } from '#shared/bore/checkBore.ts'
import { startingBores } from '#shared/bore/startingBores.ts'
import type { Bore, DesignSection } from '#shared/workbook/bore.ts'
import {
  addSection,
  changeSection,
  moveSection,
  removeSection,
  renameSection,
  setBore,
  setBoreSetting,
  setSectionValue,
  startBore,
  takeSections,
} from '#shared/workbook/commands/boreCommands.ts'
import { moveBoreJoint, replaceByProfile } from '#shared/workbook/commands/boreShapeCommands.ts'
import type { Command } from '#shared/workbook/commands/command.ts'
import { brokenRule } from '#shared/workbook/rules.ts'
import type { Workbook } from '#shared/workbook/workbook.ts'
import { workbookWith } from '../../../fixtures/workbooks.ts'

const sections: readonly DesignSection[] = [
  { kind: 'cup', volumeMm3: 1000 },
  { kind: 'cone', name: 'leadpipe', lengthMm: 240, startDiameterMm: 9, endDiameterMm: 11.66 },
  { kind: 'valves', diameterMm: 11.66 },
  { kind: 'cylinder', lengthMm: 500, diameterMm: 11.66 },
  { kind: 'bell', lengthMm: 560, startDiameterMm: 11.66, endDiameterMm: 124, flare: 0.7 },
]
const bore: Bore = { waveFronts: 'plane', sections }
const book = workbookWith('plain-3', { bore })

function boreAfter(command: Command, workbook: Workbook = book): Bore | undefined {
  const next = command.apply(workbook)
  expect(brokenRule(next)).toBeNull()
  return next.designs[0]!.bore
}

const sectionsAfter = (command: Command) => boreAfter(command)!.sections

describe('a bore', () => {
  it('is set whole and taken away', () => {
    expect(boreAfter(setBore('design', bore), workbookWith('plain-3'))).toEqual(bore)
    const without = setBore('design', undefined).apply(book)
    expect(without.designs[0]).not.toHaveProperty('bore')
  })

  it('starts from a starting bore and keeps what was set beside the sections', () => {
    const low = startingBores.find(({ id }) => id === 'low')!
    expect(boreAfter(startBore('design', low), workbookWith('plain-3'))).toEqual({
      waveFronts: 'spherical',
      sections: low.sections,
    })
    expect(boreAfter(startBore('design', low))).toEqual({ waveFronts: 'plane', sections: low.sections })
  })

  it('has its settings set and left to their defaults, all typing of one setting in one step', () => {
    const cooler = setBoreSetting('design', 'bellTemperatureC', 21)
    expect(boreAfter(cooler)).toEqual({ ...bore, bellTemperatureC: 21 })
    expect(boreAfter(setBoreSetting('design', 'waveFronts', undefined))).toEqual({ sections })
    expect(cooler).toMatchObject({ undo: 'coalesce', burst: 'design bore bellTemperatureC' })
  })

  it('that a design has not cannot be changed', () => {
    const plain = workbookWith('plain-3')
    expect(setSectionValue('design', 1, 'lengthMm', 250).apply(plain)).toBe(plain)
    expect(setBoreSetting('other', 'mouth', 'open').apply(book)).toBe(book)
  })
})

describe('a section', () => {
  const tube: DesignSection = { kind: 'cylinder', lengthMm: 30, diameterMm: 11.66 }

  it('is added where asked, deleted, moved and changed to another kind', () => {
    expect(sectionsAfter(addSection('design', 2, tube))).toEqual(sections.toSpliced(2, 0, tube))
    expect(sectionsAfter(addSection('design', 5, tube))).toEqual([...sections, tube])
    expect(sectionsAfter(removeSection('design', 3))).toEqual(sections.toSpliced(3, 1))
    expect(sectionsAfter(moveSection('design', 3, -2)).map(({ kind }) => kind)).toEqual([
      'cup',
      'cylinder',
      'cone',
      'valves',
      'bell',
    ])
    expect(sectionsAfter(changeSection('design', 3, tube))).toEqual(sections.with(3, tube))
  })

  it('that is the place for the valves is not deleted', () => {
    expect(removeSection('design', 2).apply(book)).toBe(book)
  })

  it('has one value set; a field it has not is left alone', () => {
    expect(sectionsAfter(setSectionValue('design', 4, 'flare', 0.68))[4]).toEqual({
      ...sections[4],
      flare: 0.68,
    })
    expect(setSectionValue('design', 3, 'flare', 0.68).apply(book)).toBe(book)
    expect(setSectionValue('design', 9, 'lengthMm', 1).apply(book)).toBe(book)
  })

  it('breaks a rule with its path when its value is out of range, so that the window refuses it', () => {
    const broken = setSectionValue('design', 3, 'lengthMm', -1).apply(book)
    expect(brokenRule(broken)?.path).toBe('designs[0].bore.sections[3].lengthMm')
  })

  it('is named, and an empty name is no name', () => {
    expect(sectionsAfter(renameSection('design', 3, 'tuning slide'))[3]).toHaveProperty(
      'name',
      'tuning slide',
    )
    expect(sectionsAfter(renameSection('design', 1, ''))[1]).not.toHaveProperty('name')
  })
})

describe('a joint', () => {
  it('moves across the valves without changing the length of the bore', () => {
    const next = sectionsAfter(moveBoreJoint('design', 1, 40))
    expect(next.map((section) => ('lengthMm' in section ? section.lengthMm : 0))).toEqual([
      0, 280, 0, 460, 560,
    ])
    expect(next[1]).toHaveProperty('name', 'leadpipe')
  })

  it.each([
    [900, 740, 0],
    [-900, 0, 740],
  ])('stops where a section would be gone: %d mm', (byMm, leadpipeMm, cylinderMm) => {
    const next = sectionsAfter(moveBoreJoint('design', 1, byMm))
    expect(next[1]).toHaveProperty('lengthMm', leadpipeMm)
    expect(next[3]).toHaveProperty('lengthMm', cylinderMm)
  })

  it('that is none, or does not move, changes nothing', () => {
    expect(moveBoreJoint('design', 4, 10).apply(book)).toBe(book)
    expect(moveBoreJoint('design', 0, 10).apply(book)).toBe(book)
    expect(moveBoreJoint('design', 1, 0).apply(book)).toBe(book)
  })
})

describe('a measured profile', () => {
  const profile: DesignSection & { kind: 'profile' } = {
    kind: 'profile',
    name: 'as measured',
    points: [
      [10, 9],
      [110, 10],
      [310, 12],
      [1310, 130],
    ],
  }

  it('takes the place of some sections', () => {
    expect(sectionsAfter(replaceByProfile('design', 3, 2, profile))).toEqual([
      ...sections.slice(0, 3),
      profile,
    ])
  })

  it('of the whole bore is parted at the valves, as far along as they stood', () => {
    const next = sectionsAfter(replaceByProfile('design', 1, 4, profile))
    const parts = [
      [
        [10, 9],
        [110, 10],
        [250, 11.4],
      ],
      [
        [250, 11.4],
        [310, 12],
        [1310, 130],
      ],
    ]
    expect(next).toEqual([
      sections[0],
      { ...profile, points: parts[0] },
      sections[2],
      { ...profile, points: parts[1] },
    ])
    expect(boreLengthMm(next)).toBe(1300)
  })

  it('with a point where the valves stood has it once on either side', () => {
    const points = [profile.points[0]!, [250, 11.4], profile.points.at(-1)!] as const
    const next = sectionsAfter(replaceByProfile('design', 1, 4, { ...profile, points }))
    expect(next[1]).toEqual({ ...profile, points: points.slice(0, 2) })
    expect(next[3]).toEqual({ ...profile, points: points.slice(1) })
  })

  it('shorter than the way to the valves ends at them', () => {
    const short = { ...profile, points: profile.points.slice(0, 2) }
    const next = sectionsAfter(replaceByProfile('design', 1, 4, short))
    expect(next.map(({ kind }) => kind)).toEqual(['cup', 'profile', 'valves'])
  })

  it('begins at the valves when they came first', () => {
    const next = sectionsAfter(replaceByProfile('design', 2, 3, profile))
    expect(next).toEqual([...sections.slice(0, 3), profile])
  })
})

describe('sections that were worked out', () => {
  it('are taken in one step of its own', () => {
    const longer = sections.with(3, { kind: 'cylinder', lengthMm: 510, diameterMm: 11.66 })
    const taken = takeSections('design', 'Fit bore', longer)
    expect(sectionsAfter(taken)).toBe(longer)
    expect(taken).toMatchObject({ name: 'Fit bore', undo: 'record' })
  })
})
