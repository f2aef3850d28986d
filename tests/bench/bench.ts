import { benchBore } from './bore.ts'
import type { Figure } from './figure.ts'
import { measureSolve } from './solve.ts'
import { measureTables } from './tables.ts'
import { measureWindow } from './window.ts'

/** Measures what the program is asked to reach, prints it, and keeps nothing. Titles after the command narrow it. */
const groups: readonly (readonly [string, () => Promise<readonly Figure[]> | readonly Figure[]])[] = [
  ['Tables', measureTables],
  ['Lengths found', measureSolve],
  ['Bore', benchBore],
  ['Window', measureWindow],
]

function line({ name, value, unit, target, atLeast }: Figure): string {
  const wanted = target === null ? '' : `${atLeast ? 'at least' : 'at most'} ${target} ${unit}`
  const met = target === null ? '' : (atLeast ? value >= target : value <= target) ? 'met' : 'MISSED'
  return `  ${name.padEnd(58)}${value.toFixed(value < 10 ? 2 : 0).padStart(9)} ${unit.padEnd(4)} ${wanted.padEnd(18)} ${met}`
}

const asked = process.argv.slice(2)
for (const [title, measure] of groups) {
  if (asked.length > 0 && !asked.includes(title)) continue
  console.log(title)
  for (const figure of await measure()) console.log(line(figure))
}
