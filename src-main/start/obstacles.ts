/** What the desktop form depends on, gathered once so that the reasons can be told apart. */
export interface Surroundings {
  readonly platform: NodeJS.Platform
  readonly isRoot: boolean
  readonly hasDisplay: boolean
  readonly runtimeIsHere: boolean
  /** As `process.versions.node`. */
  readonly nodeVersion: string
}

export function presentSurroundings(runtimeIsHere: boolean): Surroundings {
  const { DISPLAY, WAYLAND_DISPLAY } = process.env
  return {
    platform: process.platform,
    isRoot: process.getuid?.() === 0,
    hasDisplay: Boolean(DISPLAY) || Boolean(WAYLAND_DISPLAY),
    runtimeIsHere,
    nodeVersion: process.versions.node,
  }
}

/**
 * Why the desktop form cannot run here, as the end of a sentence; `null` when nothing is in the way.
 *
 * As root on Linux the runtime would only start with its sandbox switched off, and that is not ours to do.
 */
export function obstacle(here: Surroundings): string | null {
  if (here.platform === 'linux' && !here.hasDisplay) return 'there is no screen to open a window on'
  if (here.platform === 'linux' && here.isRoot) {
    return 'you are working as root, where the window could only open without its sandbox'
  }
  if (!here.runtimeIsHere && !canFetchRuntime(here.nodeVersion)) {
    return `fetching the window's runtime needs Node 22.12 or later, and this is ${here.nodeVersion}`
  }
  return null
}

function canFetchRuntime(nodeVersion: string): boolean {
  const [major = 0, minor = 0] = nodeVersion.split('.').map(Number)
  return major > 22 || (major === 22 && minor >= 12)
}
