import { describe, expect, it } from 'vitest'
import { type Migration, migrate, migrations } from '#shared/workbook/migrate.ts'
import { currentVersion } from '#shared/workbook/workbook.ts'

const step = (from: number): Migration => ({
  from,
  change: (value) => ({ ...value, steps: [...((value.steps as number[] | undefined) ?? []), from] }),
})

describe('migration', () => {
  it('runs every step from the file’s version to the present one, in order', () => {
    const steps = [step(3), step(1), step(2)]
    expect(migrate({ version: 1 }, 1, 4, steps)).toEqual({ version: 4, steps: [1, 2, 3] })
    expect(migrate({ version: 2 }, 2, 4, steps)).toEqual({ version: 4, steps: [2, 3] })
  })

  it('hands each step the version it was made for', () => {
    const seen: unknown[] = []
    const looking = (from: number): Migration => ({
      from,
      change: (value) => {
        seen.push(value.version)
        return value
      },
    })
    migrate({ version: 1 }, 1, 3, [looking(1), looking(2)])
    expect(seen).toEqual([1, 2])
  })

  it('leaves a value of the present version alone', () => {
    const value = { version: 4 }
    expect(migrate(value, 4, 4, [step(4)])).toBe(value)
  })

  it('is refused when a step is missing', () => {
    expect(migrate({ version: 1 }, 1, 4, [step(1), step(3)])).toBeNull()
  })

  it('keeps unknown keys and does not change the value it was given', () => {
    const value = Object.freeze({ version: 1, ours: 5 })
    expect(migrate(value, 1, 2, [step(1)])).toEqual({ version: 2, ours: 5, steps: [1] })
    expect(value).toEqual({ version: 1, ours: 5 })
  })

  it('has a step for every version from the first to the one before the present', () => {
    const needed = Array.from({ length: currentVersion - 1 }, (_, i) => i + 1)
    expect(migrations.map(({ from }) => from)).toEqual(needed)
  })
})
