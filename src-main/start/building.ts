import { spawnSync } from 'node:child_process'
import { existsSync, readdirSync, statSync } from 'node:fs'
import { join } from 'node:path'

const sources = ['src-main', 'src-renderer', 'src-shared', 'electron.vite.config.ts', 'package-lock.json']
const products = ['out/main/index.js', 'out/preload/index.cjs', 'out/renderer/index.html']

/** Whether something built is missing, or older than a source. */
export function isStale(root: string): boolean {
  const built = products.map((product) => join(root, product))
  if (!built.every((path) => existsSync(path))) return true
  const oldestProductMs = Math.min(...built.map((path) => statSync(path).mtimeMs))
  return sources.some((source) => newestMs(join(root, source)) > oldestProductMs)
}

function newestMs(path: string): number {
  const stats = statSync(path, { throwIfNoEntry: false })
  if (stats === undefined) return 0
  if (!stats.isDirectory()) return stats.mtimeMs
  return Math.max(stats.mtimeMs, ...readdirSync(path).map((name) => newestMs(join(path, name))))
}

/** Builds the program, its complaints shown as they come; answers whether it was built. */
export function build(root: string): boolean {
  const command = join(root, 'node_modules/electron-vite/bin/electron-vite.js')
  const { status } = spawnSync(process.execPath, [command, 'build', '--logLevel', 'warn'], {
    cwd: root,
    stdio: 'inherit',
  })
  return status === 0
}
