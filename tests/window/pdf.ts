import { execFileSync, spawnSync } from 'node:child_process'

/** Whether the program that takes words out of a PDF is installed. */
export const canReadPdf = spawnSync('pdftotext', ['-v']).error === undefined

/** Pages of a PDF as Chromium writes them: each page object says of itself that it is one. */
export function pageCount(pdf: Uint8Array): number {
  return (
    Buffer.from(pdf)
      .toString('latin1')
      .match(/\/Type\s*\/Page\b/g)?.length ?? 0
  )
}

/** The words of a PDF, blanks drawn together. */
export function pdfWords(pdf: Uint8Array): string {
  return execFileSync('pdftotext', ['-layout', '-', '-'], { input: pdf, encoding: 'utf8' }).replace(
    /\s+/g,
    ' ',
  )
}
