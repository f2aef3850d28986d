import { pathText } from '../failure.ts'
import type { Workbook } from '../workbook.ts'
import type { Difference } from './difference.ts'
import { isEqual } from './isEqual.ts'
import { itemWords, keyWords, shortened } from './placeWords.ts'
import { isPlain, valueWords } from './valueWords.ts'

/** Where a value stands: its path, the same in words, and the key that names it and carries its unit. */
interface Place {
  readonly path: readonly PropertyKey[]
  readonly words: readonly string[]
  readonly key: string
}

/** A value, or that there is none. */
type Found = { readonly value: unknown } | null

/**
 * In what two versions of a workbook differ, in the order of the file. Designs, valves, loops and jobs are
 * matched by their ids, so that one that moved is not taken for another; the move is told once, as an order.
 * Other lists are matched from both ends. The order of keys does not count; unknown keys do. Empty exactly when
 * both hold the same.
 *
 * @example differences(workbook, { ...workbook, name: 'Bass' })[0]?.path // 'name'
 */
export function differences(before: Workbook, after: Workbook): readonly Difference[] {
  return between({ path: [], words: [], key: '' }, { value: before }, { value: after })
}

function between(place: Place, before: Found, after: Found): readonly Difference[] {
  if (before === null || after === null) return [told(place, before, after)]
  if (isEqual(before.value, after.value)) return []
  if (isList(before.value) && isList(after.value)) return betweenLists(place, before.value, after.value)
  if (isRecord(before.value) && isRecord(after.value)) return betweenRecords(place, before.value, after.value)
  return [told(place, before, after)]
}

function told(place: Place, before: Found, after: Found): Difference {
  const [was, is] = [before, after].map((found) => found && valueWords(place.key, found.value))
  const from = firstApart(was ?? '', is ?? '')
  return {
    path: pathText(place.path),
    place: place.words.join(' › '),
    before: was == null ? null : shortened(was, is == null ? 0 : from),
    after: is == null ? null : shortened(is, was == null ? 0 : from),
  }
}

/** The first sign in which two texts differ, so that of two long ones the part is shown that tells them apart. */
function firstApart(one: string, other: string): number {
  const signs = [...other]
  const at = [...one].findIndex((sign, i) => sign !== signs[i])
  return at < 0 ? [...one].length : at
}

type Fields = Readonly<Record<string, unknown>>

function isList(value: unknown): value is readonly unknown[] {
  return Array.isArray(value)
}

function isRecord(value: unknown): value is Fields {
  return typeof value === 'object' && value !== null && !Array.isArray(value)
}

function betweenRecords(place: Place, before: Fields, after: Fields): readonly Difference[] {
  const keys = new Set([...Object.keys(before), ...Object.keys(after)])
  return [...keys].flatMap((key) => between(fieldPlace(place, key), field(before, key), field(after, key)))
}

function field(record: Fields, key: string): Found {
  return Object.hasOwn(record, key) ? { value: record[key] } : null
}

/** A key that is a number, as a harmonic's or a note's, has the unit of the key above it. */
function fieldPlace({ path, words, key: above }: Place, key: string): Place {
  const isNumber = /^\d+$/.test(key)
  return { path: [...path, key], words: [...words, keyWords(key)], key: isNumber ? above : key }
}

function betweenLists(
  place: Place,
  before: readonly unknown[],
  after: readonly unknown[],
): readonly Difference[] {
  if ([...before, ...after].every(isPlain)) return [told(place, { value: before }, { value: after })]
  const idsBefore = idsOf(before)
  const idsAfter = idsOf(after)
  if (idsBefore === null || idsAfter === null) return betweenEnds(place, before, after)
  return [
    ...orderDifference(place, idsBefore, idsAfter),
    ...[...new Set([...idsBefore, ...idsAfter])].flatMap((id) =>
      betweenItems(
        place,
        { list: before, at: idsBefore.indexOf(id) },
        { list: after, at: idsAfter.indexOf(id) },
      ),
    ),
  ]
}

/** The ids of a list whose items all have one of their own; `null` for any other list. */
function idsOf(items: readonly unknown[]): readonly string[] | null {
  const ids = items.flatMap((item) => (isRecord(item) && typeof item.id === 'string' ? [item.id] : []))
  return new Set(ids).size === items.length ? ids : null
}

function orderDifference(
  place: Place,
  before: readonly string[],
  after: readonly string[],
): readonly Difference[] {
  const stayedBefore = before.filter((id) => after.includes(id))
  const stayedAfter = after.filter((id) => before.includes(id))
  if (isEqual(stayedBefore, stayedAfter)) return []
  const words = [...place.words.slice(0, -1), `order of ${place.words.at(-1)}`]
  return [told({ ...place, words }, { value: stayedBefore }, { value: stayedAfter })]
}

interface Item {
  readonly list: readonly unknown[]
  /** Below 0 or past the end when the list has no such item. */
  readonly at: number
}

function betweenItems(place: Place, before: Item, after: Item): readonly Difference[] {
  const [found, other] = [before, after].map(
    ({ list, at }): Found => (at in list ? { value: list[at] } : null),
  )
  const { list, at } = other === null ? before : after
  const itemPlace: Place = {
    path: [...place.path, at],
    words: [...place.words.slice(0, -1), itemWords(place.key, list[at], at)],
    key: place.key,
  }
  return between(itemPlace, found ?? null, other ?? null)
}

/** What stands the same at the beginning and at the end is left out; what lies between is matched in order. */
function betweenEnds(
  place: Place,
  before: readonly unknown[],
  after: readonly unknown[],
): readonly Difference[] {
  const most = Math.min(before.length, after.length)
  let first = 0
  while (first < most && isEqual(before[first], after[first])) first++
  let last = 0
  while (last < most - first && isEqual(before.at(-1 - last), after.at(-1 - last))) last++
  const middle = Math.max(before.length, after.length) - first - last
  const item = (list: readonly unknown[], at: number): Item => ({
    list,
    at: at < list.length - last ? at : -1,
  })
  return Array.from({ length: middle }, (_, i) => first + i).flatMap((at) =>
    betweenItems(place, item(before, at), item(after, at)),
  )
}
