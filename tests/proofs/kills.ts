/**
 * Kills a saving program at random moments and looks what is left: `npm run proof:kills -- 500`. Prints figures, and
 * ends with 1 when anything was lost.
 */
import { rm } from 'node:fs/promises'
import { dirname } from 'node:path'
import type { KillOutcome } from './killing.ts'
import { buildChild, killOnce, lossesOf } from './killing.ts'

/** Longer than some rounds of saving take, so that kills fall on every step of one. */
const longestMs = 150

const kills = Number(process.argv[2] ?? '500')
if (!Number.isInteger(kills) || kills < 1) throw new Error('How many kills? A whole number above 0.')

const child = await buildChild()
const outcomes: KillOutcome[] = []
for (let kill = 0; kill < kills; kill += 1) {
  const outcome = await killOnce(child, Math.random() * longestMs)
  outcomes.push(outcome)
  for (const loss of lossesOf(outcome)) console.log(`kill ${kill + 1}: ${loss}: ${JSON.stringify(outcome)}`)
}
await rm(dirname(child), { recursive: true, force: true })

const count = (by: (outcome: KillOutcome) => boolean): number => outcomes.filter(by).length
const duringSaving = (outcome: KillOutcome): boolean => outcome.saving > outcome.saved
const lost = count((outcome) => lossesOf(outcome).length > 0)
const rows: readonly (readonly [string, number])[] = [
  ['kills', kills],
  ['  while the file was being saved', count(duringSaving)],
  ['    the file held the old version', count((o) => duringSaving(o) && o.inFile === o.saving - 1)],
  ['    the file held the new version', count((o) => duringSaving(o) && o.inFile === o.saving)],
  ['  while the work was kept aside or forgotten', count((o) => !duringSaving(o))],
  ['whole file', count(({ inFile }) => inFile !== null)],
  ['whole previous version', count(({ inPrevious }) => inPrevious !== null)],
  ['newer work only in what recovery offers', count((o) => (o.inDraft ?? 0) > (o.inFile ?? 0))],
  ['temporary files left', outcomes.reduce((sum, { leftovers }) => sum + leftovers, 0)],
  ['temporary files swept', outcomes.reduce((sum, { leftoversSwept }) => sum + leftoversSwept, 0)],
  ['kills that lost anything', lost],
]
for (const [what, figure] of rows) console.log(`${what.padEnd(48)}${String(figure).padStart(6)}`)
process.exitCode = lost === 0 ? 0 : 1
