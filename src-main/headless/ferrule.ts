import { runFerrule } from './run.ts'

const { code, output, complaint } = runFerrule(process.argv.slice(2))

// A reader that has seen enough (`| head`) closes the pipe: not our failure.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code !== 'EPIPE') throw error
})
process.stderr.write(complaint)
process.stdout.write(output)
process.exitCode = code
