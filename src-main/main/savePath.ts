import { access } from 'node:fs/promises'
import { basename } from 'node:path'

export interface SavePathQuestions {
  where(suggestedPath: string): Promise<string | null>
  /** The name was completed with its ending, and a file of that full name exists. */
  replaceExisting(name: string): Promise<boolean>
}

/**
 * Asks where to save and completes the name with the first of `endings` unless it carries one of them. The
 * dialog has asked about replacing the name that was typed, not the completed one, so that is asked here.
 */
export async function askSavePath(
  questions: SavePathQuestions,
  suggestedPath: string,
  endings: readonly [string, ...string[]],
): Promise<string | null> {
  const chosen = await questions.where(suggestedPath)
  if (chosen === null) return null
  const path = completed(chosen, endings)
  if (path === chosen || !(await exists(path))) return path
  return (await questions.replaceExisting(basename(path))) ? path : null
}

function completed(path: string, endings: readonly [string, ...string[]]): string {
  const lower = path.toLowerCase()
  return endings.some((ending) => lower.endsWith(ending)) ? path : `${path}${endings[0]}`
}

function exists(path: string): Promise<boolean> {
  return access(path).then(
    () => true,
    () => false,
  )
}
