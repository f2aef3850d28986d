import { basename, dirname, extname, join } from 'node:path'
import type { ExportedFile, SaveAnswer } from '#shared/bridge/bridge.ts'
import { fileNameFor } from '#shared/bridge/fileName.ts'
import { writeSafely } from '../files/writeSafely.ts'
import { askSavePath } from './savePath.ts'

export interface ExportQuestions {
  whereToExport(suggestedPath: string): Promise<string | null>
  replaceExisting(name: string): Promise<boolean>
}

/** Asks where to keep a picture, table or drawing, and writes it. Starts in the folder of the last one. */
export function exporter(
  questions: ExportQuestions,
  workbookFolder: () => string,
): (file: ExportedFile) => Promise<SaveAnswer> {
  let lastFolder: string | null = null
  return async (file) => {
    const ending = extname(file.name).toLowerCase()
    const suggested = join(lastFolder ?? workbookFolder(), fileNameFor(file.name, ending))
    const asked = { where: questions.whereToExport, replaceExisting: questions.replaceExisting }
    const path = await askSavePath(asked, suggested, [ending])
    if (path === null) return { kind: 'cancelled' }
    lastFolder = dirname(path)
    const answer = await writeSafely(path, bytesOf(file.content), { keepPrevious: false })
    return answer.kind === 'failed' ? answer : { kind: 'saved', name: basename(path) }
  }
}

function bytesOf(content: string | Uint8Array): Uint8Array {
  return typeof content === 'string' ? Buffer.from(content, 'utf8') : content
}
