/** Where a reader of JSON stands between two tokens. Changed as it goes: there is one a text. */
export interface JsonPlace {
  /** Lists and objects that are open, the outermost first. */
  readonly levels: Level[]
  /** What may come next. */
  awaited: 'value' | 'valueOrEnd' | 'key' | 'keyOrEnd' | 'colon' | 'commaOrEnd' | 'nothing'
  /** Values so far. */
  values: number
}

interface Level {
  readonly isList: boolean
  /** Keys of the object so far; `null` before the first. */
  keys: Set<string> | null
  /** The key last read; `null` before the first. */
  key: string | null
  /** Of the list's item last begun, from 0; −1 before the first. */
  index: number
}

/** What became of a token: it belongs, it breaks the text, or it is a key that its object has already. */
export type TokenOutcome = 'taken' | 'broken' | 'twice'

/** The place before the first token. */
export function startOfText(): JsonPlace {
  return { levels: [], awaited: 'value', values: 0 }
}

/**
 * Takes the token between `at` and `end` into the place. A place that is not `taken` is still where the token
 * stood, for the message.
 *
 * @example placeAfter(startOfText(), '[1]', 0, 1) // 'taken'; a value or the end of the list is awaited
 */
export function placeAfter(place: JsonPlace, text: string, at: number, end: number): TokenOutcome {
  const sign = text.charAt(at)
  switch (place.awaited) {
    case 'value':
      return value(place, sign)
    case 'valueOrEnd':
      return sign === ']' ? close(place) : value(place, sign)
    case 'key':
      return key(place, text, at, end)
    case 'keyOrEnd':
      return sign === '}' ? close(place) : key(place, text, at, end)
    case 'colon':
      return sign === ':' ? awaiting(place, 'value') : 'broken'
    case 'commaOrEnd':
      return commaOrEnd(place, sign)
    case 'nothing':
      return 'broken'
  }
}

function awaiting(place: JsonPlace, awaited: JsonPlace['awaited']): 'taken' {
  place.awaited = awaited
  return 'taken'
}

function value(place: JsonPlace, sign: string): TokenOutcome {
  const level = place.levels.at(-1)
  if (level !== undefined) level.index++
  if (sign === '}' || sign === ']' || sign === ',' || sign === ':') return 'broken'
  place.values++
  if (sign !== '[' && sign !== '{') return awaiting(place, level === undefined ? 'nothing' : 'commaOrEnd')
  const isList = sign === '['
  place.levels.push({ isList, keys: null, key: null, index: -1 })
  return awaiting(place, isList ? 'valueOrEnd' : 'keyOrEnd')
}

function key(place: JsonPlace, text: string, at: number, end: number): TokenOutcome {
  const level = place.levels.at(-1)
  if (level === undefined || text.charAt(at) !== '"') return 'broken'
  const bare = text.slice(at + 1, end - 1)
  const name = bare.includes('\\') ? String(JSON.parse(text.slice(at, end))) : bare
  level.key = name
  level.keys ??= new Set()
  if (level.keys.has(name)) return 'twice'
  level.keys.add(name)
  return awaiting(place, 'colon')
}

function commaOrEnd(place: JsonPlace, sign: string): TokenOutcome {
  const isList = place.levels.at(-1)?.isList === true
  if (sign === ',') return awaiting(place, isList ? 'value' : 'key')
  return sign === (isList ? ']' : '}') ? close(place) : 'broken'
}

function close(place: JsonPlace): 'taken' {
  place.levels.pop()
  return awaiting(place, place.levels.length === 0 ? 'nothing' : 'commaOrEnd')
}
