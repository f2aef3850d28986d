import { parseArgs } from 'node:util'
import { type Result, refused } from './outcome.ts'

/** The options a command knows: a `flag` stands alone, a `value` takes the next word. */
export type OptionKinds = Readonly<Record<string, 'flag' | 'value'>>

/** A command line taken apart. */
export interface Options {
  /** Words that are not options: files. */
  readonly files: readonly string[]
  readonly flags: ReadonlySet<string>
  readonly values: ReadonlyMap<string, string>
}

/** Takes a command line apart; refuses an option that is unknown, given twice, or without its value. */
export function readOptions(args: readonly string[], kinds: OptionKinds): Result<Options> {
  const { tokens } = parseArgs({ args: [...args], options: optionsOf(kinds), strict: false, tokens: true })
  const files: string[] = []
  const flags = new Set<string>()
  const values = new Map<string, string>()
  for (const token of tokens) {
    if (token.kind === 'positional') {
      if (token.value === '') return refused('found an empty file name, expected a design file')
      files.push(token.value)
    }
    if (token.kind !== 'option') continue
    const { name, rawName, value } = token
    const kind = Object.hasOwn(kinds, name) ? kinds[name] : undefined
    if (kind === undefined) return refused(`found option ${rawName}, expected ${optionList(kinds)}`)
    if (flags.has(name) || values.has(name)) return refused(`found option ${rawName} twice, expected once`)
    if (kind === 'flag' && value !== undefined) {
      return refused(`${rawName}: found ${value}, expected no value`)
    }
    if (kind === 'value' && value === undefined) return refused(`${rawName}: found nothing, expected a value`)
    if (value === undefined) flags.add(name)
    else values.set(name, value)
  }
  return { ok: true, value: { files, flags, values } }
}

function optionsOf(kinds: OptionKinds): Record<string, { type: 'boolean' | 'string' }> {
  return Object.fromEntries(
    Object.entries(kinds).map(([name, kind]) => [name, { type: kind === 'flag' ? 'boolean' : 'string' }]),
  )
}

function optionList(kinds: OptionKinds): string {
  return Object.keys(kinds)
    .map((name) => `--${name}`)
    .join(', ')
}
