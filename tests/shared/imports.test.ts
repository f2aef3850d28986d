import { describe, expect, test } from 'vitest'
import { areaTable } from './imports/areaTable.ts'
import { areasMissing, complaints } from './imports/complaints.ts'
import { areaFolders, contributorsGuide, importsOf, sourcesOf } from './imports/sources.ts'

const table = areaTable(contributorsGuide())
const shared = sourcesOf('src-shared')

describe('the areas of src-shared', () => {
  test('are all in the table of the contributor’s guide', () => {
    expect(areaFolders().length).toBeGreaterThan(0)
    expect(areasMissing(areaFolders(), table)).toEqual([])
  })

  test('may import only areas above them in the table, so that there is no circle', () => {
    const areas = [...table.keys()]
    const notAbove = [...table].flatMap(([area, allowed]) =>
      allowed.filter((name) => !areas.slice(0, areas.indexOf(area)).includes(name)),
    )
    expect(areas.length).toBeGreaterThan(0)
    expect(notAbove).toEqual([])
  })

  test('hold every file of src-shared', () => {
    expect(shared.filter(({ path }) => path.split('/').length < 3)).toEqual([])
  })

  test('have no file that stands for a folder', () => {
    expect(shared.filter(({ path }) => /\/index\.tsx?$/.test(path))).toEqual([])
  })
})

describe('imports', () => {
  test.each(['src-shared', 'src-main', 'src-renderer'])('of %s keep the rules', (layer) => {
    const sources = sourcesOf(layer)
    expect(sources.flatMap(importsOf).length).toBeGreaterThan(0)
    expect(sources.flatMap((source) => complaints(source, table))).toEqual([])
  })
})

describe('the walk through the imports', () => {
  const tableOfTwo = new Map([
    ['pitch', []],
    ['tubing', ['pitch']],
  ])
  const found = (path: string, text: string) => complaints({ path, text }, tableOfTwo)

  test('reads the table, with what “all of the above” stands for', () => {
    const guide =
      '## Areas of `src-shared`\n| a | b | c |\n| `x` | one | |\n| `y` | `two` | `x` |\n| `z` | 3 | all of the above |\n## More\n| `w` | | |'
    expect([...areaTable(guide)]).toEqual([
      ['x', []],
      ['y', ['x']],
      ['z', ['x', 'y']],
    ])
  })

  test('misses no form of import', () => {
    const text = [
      "import a from './a.ts'",
      "import type { B } from './b.ts'",
      "import {\n  c,\n  type D,\n} from './c.ts'",
      "export { d } from './d.ts'",
      "export * from './e.ts'",
      "import './f.ts'",
      "const g = await import('./g.ts')",
      "let h: import('./h.ts').H",
      "new Worker(new URL('./i.ts', import.meta.url))",
      "export const notOne = 'from ./j.ts'",
    ].join('\n')
    const names = importsOf({ path: 'x.ts', text }).toSorted()
    expect(names).toEqual([...'abcdefghi'].map((letter) => `./${letter}.ts`))
  })

  test('names an area that the table leaves out', () => {
    expect(areasMissing(['pitch', 'solve'], tableOfTwo)).toEqual(['solve'])
  })

  test('takes what the table allows', () => {
    expect(found('src-shared/tubing/a.ts', "import { b } from '../pitch/b.ts'")).toEqual([])
    expect(found('src-shared/tubing/systems/a.ts', "import { b } from '../b.ts'")).toEqual([])
    expect(found('src-main/a/a.ts', "import { b } from '#shared/pitch/b.ts'\nimport 'node:fs'")).toEqual([])
    expect(found('src-renderer/a.tsx', "import 'react'\nimport './a.css'")).toEqual([])
  })

  test.each([
    ['src-shared/pitch/a.ts', '../tubing/b.ts', 'the table of areas does not allow'],
    ['src-shared/pitch/a.ts', '#shared/tubing/b.ts', 'the table of areas does not allow'],
    ['src-shared/solve/a.ts', '../pitch/b.ts', 'the table of areas does not allow'],
    ['src-shared/pitch/a.ts', 'node:fs', 'not a package for src-shared'],
    ['src-shared/pitch/a.ts', 'fs', 'not a package for src-shared'],
    ['src-shared/pitch/a.ts', 'electron', 'not a package for src-shared'],
    ['src-shared/pitch/a.ts', 'react', 'not a package for src-shared'],
    ['src-shared/pitch/a.ts', '@fontsource/ibm-plex-sans/400.css', 'not a package for src-shared'],
    ['src-main/main/a.ts', '../../src-renderer/b.ts', 'sees itself and src-shared only'],
    ['src-renderer/view/a.ts', '../../src-main/main/b.ts', 'sees itself and src-shared only'],
    ['src-shared/pitch/a.ts', '../../src-main/main/b.ts', 'sees itself and src-shared only'],
    ['src-main/main/a.ts', '../../src-shared/pitch/b.ts', 'write #shared/… across layers'],
    ['src-renderer/a.ts', 'node:path', 'which the window does not have'],
    ['src-renderer/a.ts', 'electron', 'which the window does not have'],
    ['src-main/main/a.ts', './b', 'without the ending'],
  ])('complains when %s imports %s', (path, specifier, complaint) => {
    expect(found(path, `import { b } from '${specifier}'`).join('; ')).toContain(complaint)
  })
})
