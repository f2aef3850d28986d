import { readyFerrule, runFerrule } from './run.ts'

const args = process.argv.slice(2)
await readyFerrule(args)
const { code, output, complaint } = runFerrule(args)

// A reader that has seen enough (`| head`) closes the pipe: not our failure.
for (const stream of [process.stdout, process.stderr]) {
  stream.on('error', (error: NodeJS.ErrnoException) => {
    if (error.code !== 'EPIPE') throw error
  })
}
process.stderr.write(complaint)
process.stdout.write(output)
process.exitCode = code
