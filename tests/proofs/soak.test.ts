import { describe, expect, it } from 'vitest'
import { moves, soak } from './soak/soak.ts'

/** Functions of the command files that make no command. */
const noCommands = new Set([
  'copyIdOf',
  'jobCount',
  'jobsOf',
  'meantLoop',
  'strangers',
  'withBore',
  'withDetuning',
  'withJob',
  'withReadingsOf',
  'withSections',
])
const files = import.meta.glob<Record<string, unknown>>(
  ['../../src-shared/workbook/commands/*.ts', '!**/command.ts'],
  { eager: true },
)

describe('many commands with undo and redo', () => {
  it('are drawn from every command that there is', () => {
    const all = Object.values(files).flatMap((file) =>
      Object.keys(file).filter((name) => typeof file[name] === 'function'),
    )
    expect(Object.keys(moves).sort()).toEqual(all.filter((name) => !noCommands.has(name)).sort())
  })

  it('leave the workbook that their replay makes, and no more steps than are kept', () => {
    const { taken, refused, undone, redone } = soak(600, 3, 100, () => undefined)
    expect(Math.min(taken, refused, undone, redone)).toBeGreaterThan(20)
  }, 60_000)
})
