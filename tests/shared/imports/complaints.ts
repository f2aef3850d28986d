import { builtinModules } from 'node:module'
import { posix } from 'node:path'
import type { AreaTable } from './areaTable.ts'
import { importsOf, type Source } from './sources.ts'

/** Packages that need neither a DOM nor Node nor Electron, and so may stand in `src-shared`. */
const packagesOfShared = ['highs', 'mathjs', 'papaparse', 'zod']

interface Import {
  readonly from: string
  /** As written. */
  readonly specifier: string
  /** The file it names, from the root of the project; `undefined` for a package. */
  readonly file: string | undefined
}

/** What is wrong with the imports of a file, one sentence each. */
export function complaints(source: Source, table: AreaTable): readonly string[] {
  return importsOf(source)
    .map((specifier) => ({ from: source.path, specifier, file: fileOf(source.path, specifier) }))
    .flatMap((found) => rules.filter((rule) => rule.isBroken(found, table)).map((rule) => rule.text(found)))
}

/** The areas that the table leaves out. */
export function areasMissing(folders: readonly string[], table: AreaTable): readonly string[] {
  return folders.filter((folder) => !table.has(folder))
}

interface Rule {
  readonly isBroken: (found: Import, table: AreaTable) => boolean
  readonly text: (found: Import) => string
}

const rules: readonly Rule[] = [
  {
    isBroken: ({ from, file }, table) =>
      file !== undefined && !isAllowedArea(areaOf(from), areaOf(file), table),
    text: ({ from, file }) => `${from} imports ${file}, which the table of areas does not allow`,
  },
  {
    isBroken: ({ from, file }) => file !== undefined && !isAllowedLayer(layerOf(from), layerOf(file)),
    text: ({ from, file }) => `${from} imports ${file}: a layer sees itself and src-shared only`,
  },
  {
    isBroken: ({ from, specifier, file }) =>
      file !== undefined && layerOf(from) !== layerOf(file) && !specifier.startsWith('#shared/'),
    text: ({ from, specifier }) => `${from} imports ${specifier}: write #shared/… across layers`,
  },
  {
    isBroken: ({ specifier, file }) => file !== undefined && !/\.\w+(\?\w+)?$/.test(specifier),
    text: ({ from, specifier }) => `${from} imports ${specifier} without the ending of the file`,
  },
  {
    isBroken: ({ from, specifier, file }) =>
      file === undefined &&
      layerOf(from) === 'src-shared' &&
      !packagesOfShared.includes(packageOf(specifier)),
    text: ({ from, specifier }) => `${from} imports ${specifier}, which is not a package for src-shared`,
  },
  {
    isBroken: ({ from, specifier, file }) =>
      file === undefined && layerOf(from) === 'src-renderer' && isNodeOrElectron(specifier),
    text: ({ from, specifier }) => `${from} imports ${specifier}, which the window does not have`,
  },
]

function isAllowedArea(from: string | undefined, to: string | undefined, table: AreaTable): boolean {
  return from === undefined || to === undefined || from === to || (table.get(from)?.includes(to) ?? false)
}

function isAllowedLayer(from: string, to: string): boolean {
  return to === from || to === 'src-shared'
}

function isNodeOrElectron(specifier: string): boolean {
  const name = packageOf(specifier)
  return name.startsWith('node:') || name === 'electron' || builtinModules.includes(name)
}

function fileOf(from: string, specifier: string): string | undefined {
  if (specifier.startsWith('#shared/')) return `src-shared/${specifier.slice('#shared/'.length)}`
  return specifier.startsWith('.') ? posix.join(posix.dirname(from), specifier) : undefined
}

function layerOf(path: string): string {
  return path.split('/')[0]!
}

/** The folder of `src-shared` that a file is in; `undefined` in another layer. */
function areaOf(path: string): string | undefined {
  const [layer, area] = path.split('/')
  return layer === 'src-shared' ? area : undefined
}

function packageOf(specifier: string): string {
  const [scope, name] = specifier.split('/')
  return specifier.startsWith('@') ? `${scope}/${name}` : scope!
}
