import { type ComponentType, lazy } from 'react'

interface Module<Props> {
  readonly default: ComponentType<Props>
}

/** A component whose code arrives when it is asked for. */
export interface Arriving<Props = object> {
  readonly component: ComponentType<Props>
  /** Fetches the code ahead of its being shown. */
  readonly load: () => Promise<Module<Props>>
}

/**
 * A component that is fetched when it is first shown, or ahead of that. What was fetched ahead is shown at once: a
 * promise, even a kept one, would leave its place empty for the third of a second for which React holds back what
 * replaces an empty place.
 */
export function arriving<Props = object>(fetch: () => Promise<Module<Props>>): Arriving<Props> {
  let here: Module<Props> | undefined
  const load = async (): Promise<Module<Props>> => {
    here ??= await fetch()
    return here
  }
  // What a lazy component takes is what its module's own does; React's type for it says so in other words.
  const component = lazy(() => (here === undefined ? load() : atOnce(here))) as ComponentType<Props>
  return { component, load }
}

/** As a promise of the module, but one that gives it without waiting. */
function atOnce<Props>(module: Module<Props>): Promise<Module<Props>> {
  // biome-ignore lint/suspicious/noThenProperty: all that React's lazy asks of a promise
  return { then: (take: (module: Module<Props>) => void) => take(module) } as Promise<Module<Props>>
}
