import { foundText, pathText } from '../failure.ts'
import { type JsonPlace, placeAfter, startOfText } from './jsonPlace.ts'
import { spaceEnd, tokenEnd } from './tokenEnd.ts'

/** Deepest nesting that is read; a workbook needs fewer than ten levels. */
export const deepestNesting = 64
/** Most values that are read: more than 300 000 measured points, few enough for any memory. */
export const mostValues = 1_000_000
/** Most keys of one object that are read. */
export const mostKeys = 10_000

/** What keeps a text from being read: where, what was found there, and what was expected. */
export interface JsonProblem {
  readonly path: string
  readonly found: string
  readonly expected: string
}

const wanted = 'a design file in JSON'
/** Levels of a path that are named where a text is nested too deeply. */
const namedLevels = 3

/**
 * Looks through a text before it is parsed, without recursion: broken JSON, a key that stands twice in an object
 * (a reader keeps one of them and loses the other), lists and objects nested too deeply, more values than should
 * be held. `JSON.parse` takes every text that has no problem.
 *
 * @example jsonProblem('{"a":[1,}') // { path: 'a[1]', found: '"}" in line 1, column 9', … }
 */
export function jsonProblem(text: string): JsonProblem | null {
  const place = startOfText()
  let at = spaceEnd(text, 0)
  if (at === text.length) return { path: '', found: 'nothing in it', expected: wanted }
  while (at < text.length) {
    const end = tokenEnd(text, at)
    const outcome = end < 0 ? 'broken' : placeAfter(place, text, at, end)
    if (outcome === 'broken') return brokenAt(text, at, place)
    const problem = outcome === 'twice' ? twice(place) : tooMuch(place)
    if (problem !== null) return problem
    at = spaceEnd(text, end)
  }
  return place.awaited === 'nothing' ? null : brokenAt(text, at, place)
}

function brokenAt(text: string, at: number, place: JsonPlace): JsonProblem {
  const sign = String.fromCodePoint(text.codePointAt(at) ?? 0)
  const found = at >= text.length ? 'the end too soon' : `${foundText(sign)} in ${whereText(text, at)}`
  return { path: pathOf(place), found, expected: wanted }
}

function whereText(text: string, at: number): string {
  let [lines, lineStart] = [1, 0]
  for (let end = text.indexOf('\n'); end >= 0 && end < at; end = text.indexOf('\n', end + 1)) {
    lines++
    lineStart = end + 1
  }
  return `line ${lines}, column ${at - lineStart + 1}`
}

function twice(place: JsonPlace): JsonProblem {
  return { path: pathOf(place), found: 'the same key again', expected: 'each key once in an object' }
}

function tooMuch(place: JsonPlace): JsonProblem | null {
  if (place.levels.length > deepestNesting) {
    const found = 'lists or objects nested too deeply'
    return { path: pathOf(place, namedLevels), found, expected: `at most ${deepestNesting} levels` }
  }
  if (place.values > mostValues)
    return { path: pathOf(place), found: 'more and more values', expected: `at most ${mostValues} in a file` }
  if ((place.levels.at(-1)?.keys?.size ?? 0) <= mostKeys) return null
  return { path: pathOf(place), found: 'more and more keys', expected: `at most ${mostKeys} in an object` }
}

function pathOf({ levels }: JsonPlace, most = levels.length): string {
  const parts = levels.slice(0, most).map(({ isList, index, key }) => {
    if (!isList) return key
    return index < 0 ? null : index
  })
  return pathText(parts.filter((part) => part !== null))
}
