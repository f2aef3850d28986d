import loadRuntime from 'highs'
import { highsProgrammer } from '#shared/solve/highsProgrammer.ts'
import type { LinearProgrammer } from '#shared/solve/linearProgrammer.ts'

let loaded: Promise<LinearProgrammer> | undefined

/** The linear programmer for Node, loaded on its first use and kept. */
export function loadHighs(): Promise<LinearProgrammer> {
  loaded ??= loadRuntime().then(highsProgrammer)
  return loaded
}
