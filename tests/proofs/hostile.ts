import { hostileTrials } from './hostile/trials.ts'

/** Opens and reads many spoilt texts; prints what became of them. Takes how many workbooks, and a seed. */
const [count = 100_000, seed = 1] = process.argv.slice(2).map(Number)
const mostMegabytes = 500

console.log(`${count} workbooks and ${Math.round(0.8 * count)} other texts, seed ${seed}`)
for (const { name, trials, endings, slowestMs } of hostileTrials(count, seed)) {
  console.log(`\n${name}: ${trials}, the slowest ${slowestMs.toFixed(0)} ms`)
  for (const [ending, times] of [...endings].sort(([, a], [, b]) => b - a))
    console.log(`  ${String(times).padStart(7)}  ${ending}`)
}
const peakMegabytes = process.resourceUsage().maxRSS / 1024
console.log(`\nmemory of the whole process at its peak: ${peakMegabytes.toFixed(0)} MB`)
if (peakMegabytes > mostMegabytes) throw new Error(`more than ${mostMegabytes} MB`)
