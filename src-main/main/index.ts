import { join } from 'node:path'
import { app, protocol, session } from 'electron'
import { ownFilesIn } from '../serving/ownFiles.ts'
import { isOwnAddress, isOwnPage } from './addresses.ts'
import { answerFrom, declareScheme, scheme } from './appProtocol.ts'
import type { Start } from './arrivals.ts'
import { filesNamed, filesOfStart } from './arrivals.ts'
import { confinePages, refuseNetwork, refusePermissions } from './lockdown.ts'
import { startProgram } from './program.ts'
import { words } from './words.ts'

app.setName(words.program)
app.enableSandbox()
declareScheme(protocol)
confinePages(app, isOwnPage)

const start: Start = { files: filesNamed(process.argv, !app.isPackaged, process.cwd()) }
if (app.requestSingleInstanceLock(start)) run()
else app.quit()

function run(): void {
  const ready = app.whenReady().then(() => {
    protocol.handle(scheme, answerFrom(ownFilesIn(join(import.meta.dirname, '../renderer'))))
    refusePermissions(session.defaultSession)
    refuseNetwork(session.defaultSession, isOwnAddress)
    return startProgram()
  })

  /** One workbook at a time: of several files the first is opened. */
  async function arrive(files: readonly string[]): Promise<void> {
    const program = await ready
    program.bringForward()
    const [first] = files
    if (first !== undefined) await program.arrive(first)
  }

  app.on('open-file', (event, path) => {
    event.preventDefault()
    void arrive([path])
  })
  app.on('second-instance', (_event, _argv, _folder, data) => void arrive(filesOfStart(data)))
  app.on('window-all-closed', () => app.quit())
  if (start.files.length > 0) void arrive(start.files)
}
