import type { FingeringModes } from '#shared/bore/fingeringModes.ts'
import { type BoreInput, boreInput, refusalInFile } from '#shared/workbook/boreInput.ts'
import type { Workbook } from '#shared/workbook/workbook.ts'
import { describe, highestMode, keyOf } from '../bore/useBore.ts'
import type { DerivedDesign } from '../state/derived.ts'
import { boreWords } from '../words/bore.ts'
import { askBoreWork } from '../worker/boreDesk.ts'

/** What is known of a design's bore: its resonances, or why there are none. */
export type BoreFindings =
  | {
      readonly kind: 'reckoned'
      readonly lengthMm: number
      readonly open: FingeringModes
      /** The fingerings in use, in order of their drop. */
      readonly usual: readonly FingeringModes[]
    }
  | { readonly kind: 'refused'; readonly message: string }

/** The resonances of every design that has a bore, by the design's id. */
export async function boreFindings(
  workbook: Workbook,
  all: readonly DerivedDesign[],
): Promise<ReadonlyMap<string, BoreFindings>> {
  const found = new Map<string, BoreFindings>()
  for (const [index, derived] of all.entries()) {
    const { design, tables } = derived
    const input = boreInput(workbook, { ...design, fingerings: tables.usual })
    if (input !== null) found.set(design.id, await findingsOf(workbook, derived, index, input))
  }
  return found
}

async function findingsOf(
  workbook: Workbook,
  { design }: DerivedDesign,
  index: number,
  { sections, conditions, open, fingerings }: BoreInput,
): Promise<BoreFindings> {
  const bodyKey = keyOf({ sections, conditions })
  const asked = {
    body: { bodyKey, sections, conditions },
    question: { bodyKey, highestMode, open, fingerings: [open, ...fingerings], drawn: [], points: 0 },
  }
  const worked = await askBoreWork('report', asked, describe)
  if (worked === null) return { kind: 'refused', message: boreWords.cancelled }
  if ('failure' in worked) return { kind: 'refused', message: boreWords.failed(worked.failure) }
  const { answer } = worked
  if (!answer.ok) {
    const { path, found, expected } = refusalInFile(
      answer.refusal,
      workbook.air,
      design.bore!,
      `designs[${index}]`,
    )
    return { kind: 'refused', message: boreWords.refused(path, found, expected) }
  }
  const [openModes, ...usual] = answer.value.modes
  return { kind: 'reckoned', lengthMm: answer.value.lengthMm, open: openModes!, usual }
}
