import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'

/** A file: its path from the root of the project with `/` between folders, and its text. */
export interface Source {
  readonly path: string
  readonly text: string
}

const root = join(import.meta.dirname, '../../..')

/** Every TypeScript file of a layer. */
export function sourcesOf(layer: string): readonly Source[] {
  return filesOf(layer, /\.tsx?$/)
}

/** The files of a layer whose names match. */
export function filesOf(layer: string, names: RegExp): readonly Source[] {
  return readdirSync(join(root, layer), { recursive: true, encoding: 'utf8' })
    .filter((name) => names.test(name))
    .map((name) => ({
      path: `${layer}/${name.replaceAll('\\', '/')}`,
      text: readFileSync(join(root, layer, name), 'utf8'),
    }))
}

/** The folders of `src-shared`. */
export function areaFolders(): readonly string[] {
  return readdirSync(join(root, 'src-shared'), { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .map((entry) => entry.name)
}

export function contributorsGuide(): string {
  return readFileSync(join(root, 'DEVELOPERS.md'), 'utf8')
}

const statement = /^[ \t]*(?:import|export)\b(?:[^'"`;]*?\bfrom)?\s*['"]([^'"\n]+)['"]/gm
const call = /\b(?:import|require)\(\s*['"`]([^'"`\n]+)['"`]/g
const worker = /\bnew (?:Shared)?Worker\(\s*new URL\(\s*['"`](\.[^'"`\n]+)['"`]\s*,\s*import\.meta\.url/g

/** What a file imports, as written: statements, calls and the addresses of workers. */
export function importsOf({ text }: Source): readonly string[] {
  return [statement, call, worker].flatMap((form) => [...text.matchAll(form)].map((match) => match[1]!))
}
