import type { Chance } from '../chance.ts'
import { hostileNames, hostileValues, withSpeltNumbers } from './hostileValues.ts'

/** A list or an object of a parsed file, and one of its keys. */
interface Place {
  readonly holder: Record<PropertyKey, unknown>
  readonly key: PropertyKey
}

/** The text of a workbook with a few of its values changed, knowing what lists, objects and names are. */
export function changedWorkbook(text: string, chance: Chance): string {
  const root = { file: JSON.parse(text) as unknown }
  for (let left = 1 + chance.below(4); left > 0; left--) {
    const places = placesIn(root)
    if (places.length > 0) chance.of(changes)(chance.of(places), chance, places)
  }
  const written = withSpeltNumbers(JSON.stringify(root.file) ?? '')
  return chance.share() < 0.1 ? withKeyTwice(written, chance) : written
}

type Change = (place: Place, chance: Chance, places: readonly Place[]) => void

const changes: readonly Change[] = [
  ({ holder, key }, chance) => set(holder, key, chance.of(hostileValues)),
  ({ holder, key }, chance) => {
    const value = holder[key]
    set(holder, key, typeof value === 'number' ? value * chance.of([-1, 0, 1e-9, 0.5, 2, 1e3, 1e12]) : value)
  },
  ({ holder, key }) => {
    if (Array.isArray(holder)) holder.splice(Number(key), 1)
    else delete holder[key]
  },
  ({ holder, key }, chance) => {
    if (!Array.isArray(holder)) set(holder, chance.of(hostileNames), holder[key])
  },
  ({ holder, key }, chance) => {
    const value = holder[key]
    if (Array.isArray(value)) value.push(chance.of(hostileValues))
    else if (value !== null && typeof value === 'object')
      set(value, chance.of(hostileNames), chance.of(hostileValues))
  },
  // Ids come twice by this one: an item of a list stands again.
  ({ holder, key }, chance) => {
    if (Array.isArray(holder))
      holder.push(...Array(chance.of([1, 1, 2, 2, 12, 12, 12, 201])).fill(holder[Number(key)]))
  },
  ({ holder, key }, chance, places) => {
    const other = chance.of(places)
    set(holder, key, structuredClone(other.holder[other.key]))
  },
  ({ holder, key }, chance) => set(holder, key, nested(chance.of([3, 60, 64, 70, 500]), chance)),
  ({ holder, key }, chance, places) => {
    const strings = places.filter((place) => typeof place.holder[place.key] === 'string')
    const other = chance.of(strings.length === 0 ? [{ holder, key }] : strings)
    set(other.holder, other.key, chance.of(hostileNames))
  },
]

/** Sets a key of its own, whatever its name. */
function set(holder: object, key: PropertyKey, value: unknown): void {
  Object.defineProperty(holder, key, { value, enumerable: true, configurable: true, writable: true })
}

function nested(levels: number, chance: Chance): unknown {
  const inList = chance.share() < 0.5
  let value: unknown = 1
  for (let level = 0; level < levels; level++) value = inList ? [value] : { a: value }
  return value
}

/** Every place in a value, found without recursion. */
function placesIn(root: object): readonly Place[] {
  const places: Place[] = []
  const open: object[] = [root]
  for (let value = open.pop(); value !== undefined; value = open.pop()) {
    const holder = value as Record<PropertyKey, unknown>
    for (const key of Object.keys(holder).slice(0, 1000)) {
      places.push({ holder, key: Array.isArray(holder) ? Number(key) : key })
      const inner = holder[key]
      if (inner !== null && typeof inner === 'object') open.push(inner)
    }
  }
  return places
}

/** The text with one of its keys, and a value, put before it once more. */
function withKeyTwice(text: string, chance: Chance): string {
  const keys = [...text.matchAll(/"\w+":/g)]
  const key = keys[chance.below(Math.max(1, keys.length))]
  if (key === undefined) return text
  return `${text.slice(0, key.index)}${key[0]}1,${text.slice(key.index)}`
}
