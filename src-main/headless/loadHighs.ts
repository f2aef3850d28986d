import loadRuntime from 'highs'
import { highsProgrammer } from '#shared/solve/highsProgrammer.ts'
import type { LinearProgrammer } from '#shared/solve/linearProgrammer.ts'

let loading: Promise<LinearProgrammer> | undefined
let loaded: LinearProgrammer | undefined

/** The linear programmer for Node, loaded on its first use and kept. */
export function loadHighs(): Promise<LinearProgrammer> {
  loading ??= loadRuntime().then((runtime) => {
    loaded = highsProgrammer(runtime)
    return loaded
  })
  return loading
}

/** The linear programmer once `loadHighs` is done; asking for it before is a programmer's mistake. */
export function loadedHighs(): LinearProgrammer {
  if (loaded === undefined) throw new Error('The linear programmer was asked for before it was loaded.')
  return loaded
}
