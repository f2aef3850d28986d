import { describe, expect, it } from 'vitest'
import { newestFirst } from '../../src-renderer/worker/newestFirst.ts'

/** Work that ends when it is told to, and keeps the order in which it was begun. */
function bench() {
  const begun: string[] = []
  const ends = new Map<string, () => void>()
  const work = (name: string) => () =>
    new Promise<string>((resolve) => {
      begun.push(name)
      ends.set(name, () => resolve(name))
    })
  const settle = () => new Promise((resolve) => setTimeout(resolve))
  return { begun, work, end: (name: string) => ends.get(name)?.(), settle }
}

describe('newestFirst', () => {
  it('begins one piece of work at a time', async () => {
    const [desk, { begun, work, end, settle }] = [newestFirst(), bench()]
    const first = desk.ask(0, work('first'))
    const second = desk.ask(1, work('second'))
    expect(begun).toEqual(['first'])
    end('first')
    await settle()
    expect(begun).toEqual(['first', 'second'])
    end('second')
    expect(await Promise.all([first, second])).toEqual(['first', 'second'])
  })

  it('drops what waited when newer work of its kind comes, and answers it with nothing', async () => {
    const [desk, { begun, work, end, settle }] = [newestFirst(), bench()]
    void desk.ask(0, work('running'))
    const older = desk.ask(0, work('older'))
    const newer = desk.ask(0, work('newer'))
    expect(await older).toBeNull()
    end('running')
    await settle()
    end('newer')
    expect(await newer).toBe('newer')
    expect(begun).toEqual(['running', 'newer'])
  })

  it('takes the more urgent kind first, however late it came', async () => {
    const [desk, { begun, work, end, settle }] = [newestFirst(), bench()]
    void desk.ask(2, work('running'))
    void desk.ask(2, work('patient'))
    void desk.ask(0, work('urgent'))
    end('running')
    await settle()
    expect(begun).toEqual(['running', 'urgent'])
  })

  it('goes on after work that failed', async () => {
    const desk = newestFirst()
    const failed = desk.ask(0, () => Promise.reject(new Error('no')))
    const after = desk.ask(1, async () => 'done')
    await expect(failed).rejects.toThrow('no')
    expect(await after).toBe('done')
  })
})
