import type { BoreDimension, FreeDimension } from '#shared/bore/fitBore.ts'
import type { BoreSection } from '#shared/bore/section.ts'

/** A dimension that a fit may be allowed to change, with its bounds. */
export interface Freedom extends FreeDimension {
  readonly key: string
  readonly presentValue: number
}

const lengthBounds = [0.25, 3] as const
const otherBounds = [0.5, 2] as const

/** Every length, flare and volume of a bore, in its order. A length of 0 has nothing to be changed by. */
export function freedomsOf(sections: readonly BoreSection[]): readonly Freedom[] {
  return sections.flatMap((section, index) => {
    const found: Freedom[] = []
    const add = (dimension: BoreDimension, value: number, [least, most]: readonly [number, number]) => {
      if (value > 0)
        found.push({
          key: `${index} ${dimension}`,
          section: index,
          dimension,
          presentValue: value,
          lowest: least * value,
          highest: most * value,
        })
    }
    if (section.kind === 'cup') add('volumeMm3', section.volumeMm3, otherBounds)
    if ('lengthMm' in section) add('lengthMm', section.lengthMm, lengthBounds)
    if (section.kind === 'bell') add('flare', section.flare, otherBounds)
    return found
  })
}

/** What a dimension is now, among all that may be free; `undefined` where it is none of them. */
export function valueNow(
  all: readonly Freedom[],
  { section, dimension }: Pick<Freedom, 'section' | 'dimension'>,
): number | undefined {
  return all.find((each) => each.section === section && each.dimension === dimension)?.presentValue
}

/** The body's length, which a maker would change first: the longest plain tube behind the valves, else of all. */
export function bodyLengthKey(sections: readonly BoreSection[]): string | null {
  const valvesAt = sections.findIndex(({ kind }) => kind === 'valves')
  const plain = sections.flatMap((section, index) =>
    section.kind === 'cylinder' || section.kind === 'cone' ? [{ index, lengthMm: section.lengthMm }] : [],
  )
  const behind = plain.filter(({ index }) => index > valvesAt)
  const longest = (behind.length > 0 ? behind : plain).toSorted((a, b) => b.lengthMm - a.lengthMm)[0]
  return longest === undefined ? null : `${longest.index} lengthMm`
}
