import { measureBenchJobs } from './benchJobs.ts'
import { benchBore } from './bore.ts'
import type { Figure } from './figure.ts'
import { measureFiles } from './files.ts'
import { referenceMs } from './reference.ts'
import { measureSolve } from './solve.ts'
import { measureSoundedLengths } from './soundedLengths.ts'
import { measureTables } from './tables.ts'
import { measureWindow } from './window.ts'

/** Measures what the program is asked to reach, prints it in one table, and keeps nothing. Titles narrow it. */
const groups: readonly (readonly [string, () => Promise<readonly Figure[]> | readonly Figure[]])[] = [
  ['Tables', measureTables],
  ['Lengths found', measureSolve],
  ['Bench', measureBenchJobs],
  ['Bore', benchBore],
  ['Files', measureFiles],
  ['Lengths for resonances', measureSoundedLengths],
  ['Window', measureWindow],
]

const columns = [
  { heading: '', width: 22 },
  { heading: 'figure', width: 58 },
  { heading: 'value', width: -9 },
  { heading: '', width: 5 },
  { heading: 'ratio', width: -9 },
  { heading: 'wanted', width: 18 },
  { heading: '', width: 6 },
] as const

function printed(cells: readonly string[]): void {
  const padded = columns.map(({ width }, i) => {
    const cell = cells[i] ?? ''
    return width < 0 ? cell.padStart(-width) : cell.padEnd(width)
  })
  console.log(padded.join(' ').trimEnd())
}

function ratioText(ratio: number): string {
  return ratio < 100 ? ratio.toPrecision(3) : ratio.toFixed(0)
}

function row(
  title: string,
  { name, value, unit, target, atLeast }: Figure,
  reference: number,
): readonly string[] {
  const wanted = target === null ? '' : `${atLeast ? 'at least' : 'at most'} ${target} ${unit}`
  const met = target === null ? '' : (atLeast ? value >= target : value <= target) ? 'met' : 'MISSED'
  const ratio = unit === 'ms' ? ratioText(value / reference) : ''
  return [title, name, value.toFixed(value < 10 ? 2 : 0), unit, ratio, wanted, met]
}

const asked = process.argv.slice(2)
console.log('ratio: over the time of ten million steps of plain arithmetic, measured before each group\n')
printed(columns.map(({ heading }) => heading))
for (const [title, measure] of groups) {
  if (asked.length > 0 && !asked.includes(title)) continue
  const reference = referenceMs()
  printed(row(title, { name: 'the reference itself', value: reference, unit: 'ms', target: null }, reference))
  for (const figure of await measure()) printed(row(title, figure, reference))
}
