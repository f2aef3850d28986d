import { describe, expect, it } from 'vitest'
import {
  addJob,
  jobsOf,
  removeJob,
  renameJob,
  setJob,
  setSlideLoop,
} from '#shared/workbook/commands/benchCommands.ts'
import type { Command } from '#shared/workbook/commands/command.ts'
import {
  addReadings,
  leaveOutReading,
  removeReading,
  replaceReadings,
  setReading,
} from '#shared/workbook/commands/readingCommands.ts'
import { takeIntoDesign } from '#shared/workbook/commands/takeIntoDesign.ts'
import { renameValve } from '#shared/workbook/commands/valveCommands.ts'
import { brokenRule } from '#shared/workbook/rules.ts'
import type { Workbook } from '#shared/workbook/workbook.ts'
import { benchWorkbook, oneOfEach } from '../../fixtures/benchWorkbook.ts'
import { workbookWith } from '../../fixtures/workbooks.ts'

const [slide] = oneOfEach.slides

function changed(command: Command, workbook: Workbook = benchWorkbook()): Workbook {
  const next = command.apply(workbook)
  expect(brokenRule(next)).toBeNull()
  return next
}

describe('a job', () => {
  it('is added to a workbook that has no bench yet', () => {
    const next = changed(addJob('slides', slide), workbookWith('plain-3'))
    expect(next.bench).toEqual({ slides: [slide] })
  })

  it('is added, renamed and deleted without a change to the others', () => {
    const second = { ...slide, id: 'second slide' }
    const two = changed(addJob('slides', second))
    expect(jobsOf(changed(renameJob('slides', 'second slide', '2nd'), two), 'slides')).toEqual([
      slide,
      { ...second, id: '2nd' },
    ])
    expect(changed(removeJob('slides', 'third slide'), two).bench).toEqual({ ...oneOfEach, slides: [second] })
  })

  it('that is not there changes nothing', () => {
    const workbook = benchWorkbook()
    expect(setJob('slides', 'gone', 'wallMm', 0.4, 'Wall').apply(workbook)).toBe(workbook)
  })

  it('takes a name of another to break a rule, so that the window refuses it', () => {
    const two = changed(addJob('slides', { ...slide, id: 'other' }))
    expect(brokenRule(renameJob('slides', 'other', 'third slide').apply(two))?.path).toBe(
      'bench.slides[1].id',
    )
  })

  it('has a value set while typing in one step, and an optional one left out', () => {
    const command = setJob('slides', 'third slide', 'legSpacingMm', 40, 'Leg spacing')
    expect(command).toMatchObject({ name: 'Leg spacing', undo: 'coalesce' })
    expect(jobsOf(changed(command), 'slides')[0]?.legSpacingMm).toBe(40)
    const without = changed(setJob('slides', 'third slide', 'wallMm', undefined, 'Wall'))
    expect(jobsOf(without, 'slides')[0]).not.toHaveProperty('wallMm')
  })

  it('types two fields, or two slides, in two steps', () => {
    const bursts = [
      setJob('slides', 'a', 'wallMm', 1, 'Wall'),
      setJob('slides', 'b', 'wallMm', 1, 'Wall'),
      setJob('slides', 'a', 'trimMm', 1, 'Trim'),
    ].map(({ burst }) => burst)
    expect(new Set(bursts).size).toBe(3)
  })

  // A new slide at 11.7 mm of bore has valves of 14 + 21 − 11 = 24 mm, legs 26 mm apart (40.8 mm of bow) and is 6 mm out:
  // 94 mm are left of the third loop for legs of 60 and 30 of travel, as typed; 94.6 of the first's 171.4 for both legs,
  // 47 each, and 47 − 1 − 20 = 26 of travel.
  it('is handed to another loop: what was as for a new slide becomes that loop’s, what was typed stays', () => {
    expect(jobsOf(changed(setSlideLoop('third slide', 'design', 'L1')), 'slides')).toEqual([
      { ...slide, loop: 'L1', outerLegMm: 47, travelMm: 26 },
    ])
  })
})

describe('readings', () => {
  const rows = (workbook: Workbook) => jobsOf(workbook, 'readings')[0]?.rows
  const [open, third] = oneOfEach.readings[0].rows
  const more = { pressed: ['1'], harmonic: 4, cents: -3 }

  it('are added behind the others, one or many in one step', () => {
    expect(rows(changed(addReadings('as found', [more])))).toEqual([open, third, more])
    expect(addReadings('as found', [more, more]).name).toBe('Paste 2 readings')
  })

  it('are replaced, changed and deleted', () => {
    expect(rows(changed(replaceReadings('as found', [more])))).toEqual([more])
    expect(rows(changed(setReading('as found', 1, { cents: 9 })))).toEqual([open, { ...third, cents: 9 }])
    expect(rows(changed(removeReading('as found', 0)))).toEqual([third])
  })

  it('are left out of the fit and taken in again', () => {
    const out = changed(leaveOutReading('as found', 1, true))
    expect(rows(out)).toEqual([open, { ...third, leaveOut: true }])
    expect(rows(changed(leaveOutReading('as found', 1, false), out))).toEqual([open, third])
  })

  it('follow a valve that is renamed', () => {
    expect(rows(changed(renameValve('design', '3', 'III')))?.[1]?.pressed).toEqual(['III'])
  })

  it('of another design do not', () => {
    const elsewhere = benchWorkbook({ readings: [{ ...oneOfEach.readings[0], design: 'other' }] })
    expect(rows(changed(renameValve('design', '3', 'III'), elsewhere))?.[1]?.pressed).toEqual(['3'])
  })
})

describe('lengths from the bench', () => {
  it('go into the design as one step, the rest left as it is', () => {
    const workbook = benchWorkbook()
    const command = takeIntoDesign('Take lengths found', 'design', {
      loopsMm: { L3: 259.1, L9: 5 },
      fundamentalHz: 100,
      boreLengthMm: 1333,
      harmonicOffsetsCents: { '5': -3, '6': 0 },
    })
    expect(command.undo).toBe('record')
    const [before, [design]] = [workbook.designs[0]!, changed(command, workbook).designs]
    expect(design?.loops.map(({ lengthMm }) => lengthMm)).toEqual([
      before.loops[0]!.lengthMm,
      before.loops[1]!.lengthMm,
      259.1,
    ])
    expect(design?.instrument).toEqual({
      fundamentalHz: 100,
      boreLengthMm: 1333,
      harmonicOffsetsCents: { '5': -3 },
    })
  })
})
