/** What each area of `src-shared` may import besides itself, in the table's order. */
export type AreaTable = ReadonlyMap<string, readonly string[]>

/** Reads the table of areas out of the contributor's guide. */
export function areaTable(guide: string): AreaTable {
  const section = guide.split(/^## /m).find((part) => part.startsWith('Areas of `src-shared`')) ?? ''
  const rows = section.split('\n').filter((line) => /^\|\s*`/.test(line))
  const table = new Map<string, readonly string[]>()
  for (const row of rows) {
    const cells = row.split('|').map((cell) => cell.trim())
    const [area] = namesIn(cells[1] ?? '')
    const allowed = cells.at(-2) === 'all of the above' ? [...table.keys()] : namesIn(cells.at(-2) ?? '')
    if (area !== undefined) table.set(area, allowed)
  }
  return table
}

function namesIn(cell: string): string[] {
  return [...cell.matchAll(/`([^`]+)`/g)].map((match) => match[1]!)
}
