import { setFlagsFromString } from 'node:v8'
import { runInNewContext } from 'node:vm'
import { moves, soak } from './soak/soak.ts'

/** Many random commands with undo and redo through the window's store. Takes how many, and a seed. */
const [count = 20_000, seed = 1] = process.argv.slice(2).map(Number)
const checkpoints = 20
/** Growth of the heap from the second quarter to the last that counts as none: the workbook is not always as large. */
const mostGrowth = { megabytes: 3, share: 0.1 }

setFlagsFromString('--expose-gc')
const collectGarbage = runInNewContext('gc') as () => void

function heapMegabytes(): number {
  collectGarbage()
  collectGarbage()
  return process.memoryUsage().heapUsed / 1024 ** 2
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length
}

const heaps: number[] = []
const tally = soak(count, seed, Math.ceil(count / checkpoints), (done) => {
  heaps.push(heapMegabytes())
  console.log(
    `${String(done).padStart(7)} commands  heap ${heaps.at(-1)!.toFixed(1)} MB  equal to its replay`,
  )
})
const quarter = Math.floor(heaps.length / 4)
const [early, late] = [mean(heaps.slice(quarter, 2 * quarter)), mean(heaps.slice(-quarter))]
console.log(
  `${tally.kinds.size} of ${Object.keys(moves).length} commands taken, ${tally.taken} times; ${tally.refused} refused, ${tally.idle} changed nothing`,
)
console.log(`${tally.undone} steps undone, ${tally.redone} done again`)
console.log(`heap in the second quarter ${early.toFixed(1)} MB, in the last ${late.toFixed(1)} MB`)
if (late - early > Math.max(mostGrowth.megabytes, mostGrowth.share * early)) throw new Error('memory grows')
if (tally.kinds.size < Object.keys(moves).length) throw new Error('some commands were never taken')
