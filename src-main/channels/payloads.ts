import * as z from 'zod'
import type { Bridge } from '#shared/bridge/bridge.ts'
import type { Question } from './channels.ts'

/** A name shown in titles, menus and dialogs. */
const name = z.string().max(1000)
const stepName = z.string().max(200).nullable()
const id = z.string().max(100)
/** In UTF-16 units: above any workbook or picture that is meant, below what would exhaust the memory. */
const text = z.string().max(64 * 1024 * 1024)
const bytes = z.instanceof(Uint8Array).refine((found) => found.byteLength <= 64 * 1024 * 1024)

const exportedFile = z.strictObject({
  name,
  mediaType: z.string().max(100),
  content: z.union([text, bytes]),
})

const windowState = z.strictObject({
  name,
  dirty: z.boolean(),
  undo: stepName,
  redo: stepName,
  hasWorkbook: z.boolean(),
})

const printRequest = z.strictObject({
  to: z.enum(['printer', 'pdf']),
  paper: z.enum(['A4', 'Letter']),
  landscape: z.boolean(),
  name,
})

/** A draft as it comes from the window. */
export const draftShape = z.strictObject({ name, text, keptAt: z.number(), fileName: name.nullable() })

/** What each question may carry; anything else is refused before the question is looked at. */
export const payloads: { readonly [Q in Question]: z.ZodType<Readonly<Parameters<Bridge[Q]>>> } = {
  openWorkbook: z.tuple([]),
  recentWorkbooks: z.tuple([]),
  openRecent: z.tuple([id]),
  clearRecent: z.tuple([]),
  adoptFile: z.tuple([id]),
  releaseFile: z.tuple([]),
  saveWorkbook: z.tuple([text, name]),
  saveWorkbookAs: z.tuple([text, name]),
  exportFile: z.tuple([exportedFile]),
  showState: z.tuple([windowState]),
  print: z.tuple([printRequest]),
  closeWindow: z.tuple([]),
  keepDraft: z.tuple([draftShape.nullable()]),
  leftDrafts: z.tuple([]),
  openDraftFile: z.tuple([id]),
  forgetDraft: z.tuple([id]),
  readCurrentFile: z.tuple([]),
}
