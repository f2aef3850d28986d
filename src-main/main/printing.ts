import type { WebContents } from 'electron'
import type { ExportedFile, PrintRequest, SaveAnswer } from '#shared/bridge/bridge.ts'
import { words } from './words.ts'

/** Prints the page as it stands, or keeps it as a PDF. */
export function printer(
  contents: WebContents,
  exportFile: (file: ExportedFile) => Promise<SaveAnswer>,
): (request: PrintRequest) => Promise<SaveAnswer> {
  return (request) =>
    request.to === 'pdf' ? toPdf(contents, request, exportFile) : toPrinter(contents, request)
}

async function toPdf(
  contents: WebContents,
  { paper, landscape, name }: PrintRequest,
  exportFile: (file: ExportedFile) => Promise<SaveAnswer>,
): Promise<SaveAnswer> {
  try {
    const content = await contents.printToPDF({ pageSize: paper, landscape, printBackground: true })
    return await exportFile({ name: `${name}.pdf`, mediaType: 'application/pdf', content })
  } catch (error) {
    return { kind: 'failed', message: words.printFailed(reasonOf(error)) }
  }
}

function toPrinter(contents: WebContents, { paper, landscape, name }: PrintRequest): Promise<SaveAnswer> {
  return new Promise((resolve) => {
    contents.print({ pageSize: paper, landscape, printBackground: true }, (printed, reason) => {
      if (printed) return resolve({ kind: 'saved', name })
      if (/cancel/i.test(reason)) return resolve({ kind: 'cancelled' })
      resolve({ kind: 'failed', message: words.printFailed(reason) })
    })
  })
}

function reasonOf(error: unknown): string {
  return error instanceof Error ? error.message : String(error)
}
