/**
 * Edits and saves a workbook without a pause until it is killed, as the desktop form does it: keep the work aside,
 * write the file, forget what was kept. Says each step as it begins or ends, one line each: `kept 7`, `saving 7`,
 * `saved 7`.
 */
import { writeSync } from 'node:fs'
import { join } from 'node:path'
import { draftStoreIn } from '../../src-main/files/draftStore.ts'
import { recentListIn } from '../../src-main/files/recentList.ts'
import { fileDesk } from '../../src-main/main/fileDesk.ts'
import { versionText } from './version.ts'

const [folder = '', first = '1'] = process.argv.slice(2)
const dataFolder = join(folder, 'data')
const path = join(folder, 'work', 'bass.ferrule')

const never = async (): Promise<never> => {
  throw new Error('Nothing should be asked here.')
}
const questions = { whichToOpen: never, whereToSave: never, replaceExisting: never, overChanged: never }
const desk = fileDesk(questions, recentListIn(dataFolder, folder), folder)
const drafts = draftStoreIn(dataFolder)
const say = (step: string, version: number): void => void writeSync(1, `${step} ${version}\n`)

const opened = await desk.openPath(path)
if (opened.kind !== 'opened') throw new Error('The file to save over could not be opened.')
await desk.adopt(opened.ticket)

for (let version = Number(first); ; version += 1) {
  const text = versionText(version)
  await drafts.keep({ name: 'Bass', text, keptAt: version, fileName: 'bass.ferrule' }, path)
  say('kept', version)
  say('saving', version)
  const answer = await desk.save(text, 'Bass')
  if (answer.kind !== 'saved') throw new Error(`Saving ended as ${answer.kind}.`)
  say('saved', version)
  await drafts.forget()
}
