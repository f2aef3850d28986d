import type { Command } from '#shared/workbook/commands/command.ts'
import { fieldWords } from '../words/fields.ts'
import { filesWords } from '../words/files.ts'
import { useFile } from './fileActions.ts'
import { run } from './workbookStore.ts'

/** Carries out a command that no field stands for; when the result would break a rule, a dialog says so. */
export function runOrSay(command: Command): boolean {
  const broken = run(command)
  if (broken === null) return true
  const message = fieldWords.found(broken.found, broken.expected)
  useFile.setState({ trouble: { title: filesWords.notDone(command.name), message } })
  return false
}
