import { execFileSync, spawnSync } from 'node:child_process'
import { browserTest } from '../desktop/harness/browserForm.ts'

/** A test of the words of a PDF, reported as skipped where they cannot be taken out. */
export const pdfWordsTest = browserTest.skipIf(spawnSync('pdftotext', ['-v']).error !== undefined)

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
