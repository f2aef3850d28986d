import type { Figure } from './figure.ts'
import { measureTables } from './tables.ts'
import { measureWindow } from './window.ts'

/** Measures what the program is asked to reach, prints it, and keeps nothing. */
const groups: readonly (readonly [string, () => Promise<readonly Figure[]> | readonly Figure[]])[] = [
  ['Tables', measureTables],
  ['Window', measureWindow],
]

function line({ name, value, unit, target, atLeast }: Figure): string {
  const wanted = target === null ? '' : `${atLeast ? 'at least' : 'at most'} ${target} ${unit}`
  const met = target === null ? '' : (atLeast ? value >= target : value <= target) ? 'met' : 'MISSED'
  return `  ${name.padEnd(58)}${value.toFixed(value < 10 ? 2 : 0).padStart(9)} ${unit.padEnd(4)} ${wanted.padEnd(18)} ${met}`
}

for (const [title, measure] of groups) {
  console.log(title)
  for (const figure of await measure()) console.log(line(figure))
}
