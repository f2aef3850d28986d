import { mkdir, readFile } from 'node:fs/promises'
import { dirname } from 'node:path'
import type * as z from 'zod'
import { writeSafely } from './writeSafely.ts'

/** A small JSON file in the user's data. What is missing or does not fit its shape counts as absent. */
export async function readStored<Shape>(path: string, shape: z.ZodType<Shape>): Promise<Shape | null> {
  try {
    const found = shape.safeParse(JSON.parse(await readFile(path, 'utf8')))
    return found.success ? found.data : null
  } catch {
    return null
  }
}

/** Answers whether it was kept. The program's own notes are never worth stopping the person for. */
export async function writeStored(path: string, value: unknown): Promise<boolean> {
  await mkdir(dirname(path), { recursive: true }).catch(() => undefined)
  const answer = await writeSafely(path, Buffer.from(JSON.stringify(value)), { keepPrevious: false })
  return answer.kind === 'written'
}
