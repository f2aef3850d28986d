import { describe, expect, it } from 'vitest'
import { systems } from '#shared/valves/systems/systems.ts'
import { designFromSystem, emptyWorkbook, freshId } from '#shared/workbook/newWorkbook.ts'
import { openWorkbook } from '#shared/workbook/openWorkbook.ts'
import { writeWorkbook } from '#shared/workbook/writeWorkbook.ts'

describe('a new workbook', () => {
  it('opens with no designs at all', () => {
    const workbook = emptyWorkbook('')
    expect(openWorkbook(writeWorkbook(workbook))).toEqual({ ok: true, workbook })
  })

  it('opens with a design of every system', () => {
    const empty = emptyWorkbook('all systems')
    const designs = systems.map((system) =>
      designFromSystem(empty, system, { fundamentalHz: 58.27 }, system.id),
    )
    const workbook = { ...empty, designs }
    expect(openWorkbook(writeWorkbook(workbook))).toEqual({ ok: true, workbook })
  })
})

describe('a fresh id', () => {
  it.each([
    ['Plain, four valves', 'plain-four-valves'],
    ['Cafés', 'cafes'],
    ['E♭', 'e'],
    ['', 'design'],
    ['♭♯', 'design'],
    [`${'a'.repeat(39)} b`, 'a'.repeat(39)],
  ])('of %j is %s', (name, id) => {
    expect(freshId(name, [])).toBe(id)
  })

  it('takes the next number when it is taken', () => {
    expect(freshId('Plain', ['plain'])).toBe('plain-2')
    expect(freshId('Plain', ['plain', 'plain-2', 'plain-3'])).toBe('plain-4')
  })
})
