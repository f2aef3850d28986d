import { examples } from '#shared/workbook/examples/examples.ts'
import { writeWorkbook } from '#shared/workbook/writeWorkbook.ts'
import { benchWorkbook } from '../../fixtures/benchWorkbook.ts'
import { exampleText } from '../../fixtures/exampleFiles.ts'
import { type Chance, chanceOf } from '../chance.ts'
import { changedBytes } from './changedBytes.ts'
import { changedWorkbook } from './changedWorkbook.ts'
import { type Ending, loopsRead, openedOrRefused, profileRead, readingsRead, typedRead } from './journeys.ts'
import { loops, profiles, readings, typed } from './soundTexts.ts'

/** A kind of hostile text: how one is made and what is done with it. */
interface Kind {
  readonly name: string
  /** Its share of the count asked for. */
  readonly share: number
  readonly make: (chance: Chance) => string
  readonly take: (text: string) => Ending
}

/** What many trials of one kind came to. */
export interface Tally {
  readonly name: string
  readonly trials: number
  readonly endings: ReadonlyMap<Ending, number>
  readonly slowestMs: number
}

const workbooks = [...examples.map(exampleText), writeWorkbook(benchWorkbook())]
/** As a browser reads a file: what is not UTF-8 is replaced and left for the opening to judge. */
const decoded = (bytes: Uint8Array): string => new TextDecoder().decode(bytes)

const kinds: readonly Kind[] = [
  {
    name: 'workbooks, values changed',
    share: 0.5,
    make: (chance) => changedWorkbook(chance.of(workbooks), chance),
    take: openedOrRefused,
  },
  {
    name: 'workbooks, bytes changed',
    share: 0.5,
    make: (chance) => decoded(changedBytes(chance.of(workbooks), chance)),
    take: openedOrRefused,
  },
  {
    name: 'pasted readings',
    share: 0.2,
    make: (chance) => decoded(changedBytes(chance.of(readings), chance)),
    take: readingsRead,
  },
  {
    name: 'tables of loops',
    share: 0.2,
    make: (chance) => decoded(changedBytes(chance.of(loops), chance)),
    take: loopsRead,
  },
  {
    name: 'measured bores',
    share: 0.2,
    make: (chance) => decoded(changedBytes(chance.of(profiles), chance)),
    take: profileRead,
  },
  {
    name: 'typed lengths and numbers',
    share: 0.2,
    make: (chance) => decoded(changedBytes(chance.of(typed), chance)),
    take: typedRead,
  },
]

/** Longest that one text may take, ms. */
const longestMs = 1000

/**
 * Makes hostile texts of every kind, `count` workbooks and a share of the others, and takes each through the
 * program. Throws at the first that ends as none should, with what is needed to make it again.
 */
export function hostileTrials(count: number, seed: number): readonly Tally[] {
  return kinds.map((kind, i) => {
    const endings = new Map<Ending, number>()
    let slowestMs = 0
    const trials = Math.ceil(kind.share * count)
    for (let trial = 0; trial < trials; trial++) {
      const text = kind.make(chanceOf(seed + i, trial))
      const { ending, ms } = taken(kind, text, `${kind.name}, seed ${seed}, trial ${trial}`)
      endings.set(ending, (endings.get(ending) ?? 0) + 1)
      slowestMs = Math.max(slowestMs, ms)
    }
    return { name: kind.name, trials, endings, slowestMs }
  })
}

function taken(kind: Kind, text: string, called: string): { readonly ending: Ending; readonly ms: number } {
  try {
    const first = timed(kind, text)
    // Another program may have had the core: what is slow is timed once more.
    const ms = first.ms < longestMs / 4 ? first.ms : Math.min(first.ms, timed(kind, text).ms)
    if (ms > longestMs) throw new Error(`it took ${Math.round(ms)} ms`)
    return { ending: first.ending, ms }
  } catch (error) {
    throw new Error(`${called}: ${JSON.stringify(text.slice(0, 2000))}`, { cause: error })
  }
}

function timed(kind: Kind, text: string): { readonly ending: Ending; readonly ms: number } {
  const begun = performance.now()
  const ending = kind.take(text)
  return { ending, ms: performance.now() - begun }
}
