import { type ComponentType, lazy } from 'react'

interface Module {
  readonly default: ComponentType
}

/** A component whose code arrives when it is asked for. */
export interface Arriving {
  readonly component: ComponentType
  /** Fetches the code ahead of its being shown. */
  readonly load: () => Promise<Module>
}

/**
 * A component that is fetched when it is first shown, or ahead of that. What was fetched ahead is shown at once: a
 * promise, even a kept one, would leave its place empty for the third of a second for which React holds back what
 * replaces an empty place.
 */
export function arriving(fetch: () => Promise<Module>): Arriving {
  let here: Module | undefined
  const load = async (): Promise<Module> => {
    here ??= await fetch()
    return here
  }
  return { component: lazy(() => (here === undefined ? load() : atOnce(here))), load }
}

/** As a promise of the module, but one that gives it without waiting. */
function atOnce(module: Module): Promise<Module> {
  // biome-ignore lint/suspicious/noThenProperty: all that React's lazy asks of a promise
  return { then: (take: (module: Module) => void) => take(module) } as Promise<Module>
}
