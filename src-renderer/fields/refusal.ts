import type { Command } from '#shared/workbook/commands/command.ts'
import { run } from '../state/workbookStore.ts'
import { fieldWords } from '../words/fields.ts'

/** Carries out a command; when the result would break a rule, what was found and expected, for beside the field. */
export function tryRun(command: Command): string | null {
  const broken = run(command)
  return broken === null ? null : fieldWords.found(broken.found, broken.expected)
}
