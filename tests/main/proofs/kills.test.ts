import { rm } from 'node:fs/promises'
import { dirname } from 'node:path'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import type { KillOutcome } from '../../proofs/killing.ts'
import { buildChild, killOnce, lossesOf } from '../../proofs/killing.ts'
import { versionIn, versionText } from '../../proofs/version.ts'

const kills = 20

describe('A program killed while it saves', () => {
  let child = ''
  beforeAll(async () => {
    child = await buildChild()
  }, 60_000)
  afterAll(() => rm(dirname(child), { recursive: true, force: true }))

  test('leaves the old file or the new one, whole, and offers what is newer', {
    timeout: 240_000,
  }, async () => {
    const outcomes: KillOutcome[] = []
    for (let kill = 0; kill < kills; kill += 1) outcomes.push(await killOnce(child, Math.random() * 120))
    expect(outcomes.flatMap(lossesOf)).toEqual([])
    // A proof that never interrupted a saving would prove nothing.
    expect(outcomes.some(({ saving, saved }) => saving > saved)).toBe(true)
    expect(outcomes.some(({ leftovers }) => leftovers > 0)).toBe(true)
  })
})

describe('The judge of what a kill left', () => {
  const well = {
    saving: 7,
    saved: 6,
    kept: 7,
    inFile: 6,
    inDraft: 7,
    inPrevious: 5,
    leftovers: 1,
    leftoversSwept: 1,
  }

  test('finds nothing wrong where the old version and the kept one are there', () => {
    expect(lossesOf(well)).toEqual([])
    expect(lossesOf({ ...well, inFile: 7, inDraft: null })).toEqual([])
  })

  test('finds a file in pieces, an older file, lost work and what stays behind', () => {
    expect(lossesOf({ ...well, inFile: null })).not.toEqual([])
    expect(lossesOf({ ...well, inFile: 5 })).not.toEqual([])
    expect(lossesOf({ ...well, inFile: 99 })).not.toEqual([])
    expect(lossesOf({ ...well, inDraft: null })).not.toEqual([])
    expect(lossesOf({ ...well, inPrevious: null })).not.toEqual([])
    expect(lossesOf({ ...well, leftoversSwept: 0 })).not.toEqual([])
  })

  test('takes a version only when every sign of it is there', () => {
    const text = versionText(7)
    expect(versionIn(text)).toBe(7)
    expect(versionIn(text.slice(0, -1))).toBeNull()
    expect(versionIn(text.replace('short', 'shirt'))).toBeNull()
    expect(versionIn('')).toBeNull()
  })
})
