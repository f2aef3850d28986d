import { resolve } from 'node:path'
import * as z from 'zod'

/** What a second start hands to the first. */
const startShape = z.object({ files: z.array(z.string().max(4096)).max(100) })
export type Start = z.infer<typeof startShape>

/**
 * The files named on a command line, as full paths. What starts with a dash is an option. `folderIsNamed` says
 * that the first plain argument is the program's own folder, as in a run from the sources.
 */
export function filesNamed(argv: readonly string[], folderIsNamed: boolean, from: string): string[] {
  return argv
    .slice(1)
    .filter((argument) => argument !== '' && !argument.startsWith('-'))
    .slice(folderIsNamed ? 1 : 0)
    .map((argument) => resolve(from, argument))
}

/** The files of a second start; none when what it sent has another shape. */
export function filesOfStart(data: unknown): readonly string[] {
  const found = startShape.safeParse(data)
  return found.success ? found.data.files : []
}
