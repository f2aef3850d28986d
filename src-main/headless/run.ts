import { bench } from './bench/bench.ts'
import { bore } from './bore/bore.ts'
import { lengths } from './lengths/lengths.ts'
import type { Command, Outcome } from './outcome.ts'
import { shownLine } from './shown.ts'
import { tables } from './tables/tables.ts'

/** Every command by its name. A new command is a file and a line here. */
const commands: ReadonlyMap<string, Command> = new Map([
  ['tables', tables],
  ['lengths', lengths],
  ['bench', bench],
  ['bore', bore],
])

export interface Run {
  /** Exit code: 0, or 2 when the input was refused. */
  readonly code: 0 | 2
  /** For standard output. */
  readonly output: string
  /** For standard error: the reason, or the remarks. */
  readonly complaint: string
}

/** Loads what the command in some arguments needs; to be awaited before `runFerrule`. */
export async function readyFerrule([name]: readonly string[]): Promise<void> {
  await commands.get(name ?? '')?.ready?.()
}

/** Runs `ferrule` with its arguments, touching neither stream. */
export function runFerrule([name, ...args]: readonly string[]): Run {
  if (isHelp(name)) return done(usage())
  if (name === undefined) return refusal('no command given', usage())
  const command = commands.get(name)
  if (command === undefined) {
    return refusal(`found command ${name}, expected ${[...commands.keys()].join(', ')}`, usage())
  }
  if (beforeFiles(args).some(isHelp)) return done(usage([command]))
  const outcome = outcomeOf(command, args)
  if (outcome.kind === 'refused') return refusal(outcome.reason)
  const complaint = outcome.remarks.map((remark) => `${shownLine(remark)}\n`).join('')
  return { code: 0, output: outcome.output, complaint }
}

/** Runs a command; an answer longer than a text can be is refused like any other input that asks for too much. */
function outcomeOf(command: Command, args: readonly string[]): Outcome {
  try {
    return command.run(args)
  } catch (error) {
    if (!(error instanceof RangeError && error.message === 'Invalid string length')) throw error
    const reason = 'found more figures than one text can hold, expected fewer designs, valves or harmonics'
    return { kind: 'refused', reason }
  }
}

/** The words up to a lone `--`: what follows it are files, whatever they are called. */
function beforeFiles(args: readonly string[]): readonly string[] {
  const end = args.indexOf('--')
  return end < 0 ? args : args.slice(0, end)
}

function isHelp(word: string | undefined): boolean {
  return word === '--help' || word === '-h'
}

function done(output: string): Run {
  return { code: 0, output, complaint: '' }
}

function refusal(reason: string, more = ''): Run {
  return { code: 2, output: '', complaint: `ferrule: ${shownLine(reason)}\n${more}` }
}

function usage(of: readonly Command[] = [...commands.values()]): string {
  const lines = of.map((command) => `  ferrule ${command.usage}\n`)
  return `Usage:\n${lines.join('')}`
}
