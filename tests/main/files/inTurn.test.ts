import { describe, expect, test } from 'vitest'
import { inTurn } from '#shared/bridge/inTurn.ts'

describe('Tasks in turn', () => {
  test('each starts when the one before it has ended, and each answer goes to who asked', async () => {
    const queue = inTurn()
    const steps: string[] = []
    const task = (name: string, waitMs: number) => async (): Promise<string> => {
      steps.push(`${name} starts`)
      await new Promise((resume) => setTimeout(resume, waitMs))
      steps.push(`${name} ends`)
      return name
    }
    const answers = await Promise.all([queue(task('slow', 20)), queue(task('quick', 0))])
    expect(answers).toEqual(['slow', 'quick'])
    expect(steps).toEqual(['slow starts', 'slow ends', 'quick starts', 'quick ends'])
  })

  test('a task that fails does not hold up the next', async () => {
    const queue = inTurn()
    const failed = queue(() => Promise.reject(new Error('no')))
    const next = queue(async () => 'yes')
    await expect(failed).rejects.toThrow('no')
    expect(await next).toBe('yes')
  })
})
