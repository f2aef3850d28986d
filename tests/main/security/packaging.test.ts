import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'

const read = (path: string): string => readFileSync(new URL(`../../../${path}`, import.meta.url), 'utf8')
const manifest = JSON.parse(read('package.json'))
const lock = JSON.parse(read('package-lock.json'))
const { build } = manifest

describe('The packaging configuration', () => {
  test('sets every fuse, each to the side that gives less away', () => {
    expect(build.electronFuses).toEqual({
      runAsNode: false,
      enableCookieEncryption: true,
      enableNodeOptionsEnvironmentVariable: false,
      enableNodeCliInspectArguments: false,
      enableEmbeddedAsarIntegrityValidation: true,
      onlyLoadAppFromAsar: true,
      loadBrowserProcessSpecificV8Snapshot: false,
      grantFileProtocolExtraPrivileges: false,
    })
  })

  test('packs an archive, without which the last fuses would protect nothing', () => {
    expect(build.asar).toBe(true)
  })

  test('packs what was built and nothing else', () => {
    expect(build.files).toEqual(['out/**/*', 'package.json', '!**/node_modules/**'])
    expect(manifest.main).toMatch(/^out\//)
    expect(manifest.dependencies).toBeUndefined()
  })

  test('is there for three platforms, with the ending of a workbook', () => {
    expect(build.mac.target).toEqual(['dmg', 'zip'])
    expect(build.mac.hardenedRuntime).toBe(true)
    expect(build.win.target).toEqual(['nsis'])
    expect(build.linux.target).toEqual(['AppImage', 'tar.gz'])
    expect(build.fileAssociations).toMatchObject([{ ext: 'ferrule' }])
  })

  test('publishes nothing by itself', () => {
    expect(build.publish).toBeNull()
  })
})

describe('Electron', () => {
  /** No version older than the one that the program was last tried with. */
  const oldest = 45

  test('is a current version, named exactly and the same in the lock', () => {
    const version: string = manifest.devDependencies.electron
    expect(version).toMatch(/^\d+\.\d+\.\d+$/)
    expect(Number(version.split('.')[0])).toBeGreaterThanOrEqual(oldest)
    expect(lock.packages['node_modules/electron'].version).toBe(version)
  })
})
