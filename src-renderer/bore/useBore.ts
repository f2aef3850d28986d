import type { Remote } from 'comlink'
import { useMemo, useRef } from 'react'
import type { BoreFingering } from '#shared/bore/fingeringModes.ts'
import type { BoreRefusal, BoreResult } from '#shared/bore/refusal.ts'
import type { BoreSection } from '#shared/bore/section.ts'
import type { NamedFingering } from '#shared/valves/fingerings.ts'
import { type BoreInput, boreInput, refusalInFile } from '#shared/workbook/boreInput.ts'
import type { DerivedDesign } from '../state/derived.ts'
import { useWorkbook } from '../state/workbookStore.ts'
import type { BoreAnswer, BoreBody, BoreQuestion } from '../worker/boreAnswer.ts'
import { askWithBody, givenUp, useBoreWork } from '../worker/boreDesk.ts'
import type { BoreWork } from '../worker/boreWorker.ts'
import { type BoreView, useBoreView } from './boreStore.ts'

/** A fingering laid over others, with its place among them, which gives its look. */
export interface ShownFingering extends BoreFingering {
  readonly series: number
}

/** A design's bore, what is asked about it and what is known. */
export interface BoreOnShow {
  readonly input: BoreInput
  readonly bodyKey: string
  /** The fingerings that are listed, in order of their drop. */
  readonly listed: readonly BoreFingering[]
  /** Fingerings left out because they are too many. */
  readonly leftOut: number
  /** Names of those laid over each other. */
  readonly shown: readonly string[]
  /** The latest answer that there is; `null` before the first. */
  readonly answer: BoreAnswer | null
  readonly refusal: BoreRefusal | null
  /** `null` unless the work failed or was given up. */
  readonly failure: 'givenUp' | string | null
  /** Whether the latest question is not answered yet. */
  readonly waiting: boolean
}

export const highestMode = 16
const points = 1600
const mostListed = 256

/** A bore and what is asked about it. */
export interface Asked {
  readonly body: BoreBody
  readonly question: BoreQuestion
}

/** Asks the worker about a bore with its loops. */
export const describe = (
  worker: Remote<BoreWork>,
  { body, question }: Asked,
): Promise<BoreResult<BoreAnswer>> => askWithBody(worker, body, async () => worker.describe(question))

/** Keeps everything about a design's bore up to date; the newest edit wins. `again` asks once more. */
export function useBore(derived: DerivedDesign, again: number): BoreOnShow | null {
  const air = useWorkbook((state) => state.workbook?.air)
  const { design } = derived
  const index = useWorkbook((state) => state.workbook?.designs.findIndex(({ id }) => id === design.id) ?? 0)
  const view = useBoreView()
  const { fingerings, leftOut } = useMemo(() => listedOf(derived, view.which), [derived, view.which])
  const input = useMemo(
    () => (air === undefined ? null : boreInput({ air }, { ...design, fingerings })),
    [air, design, fingerings],
  )
  const bodyKey = input === null ? '' : keyOf(input)
  const listed = input?.fingerings ?? noFingerings
  const shown = useMemo(() => shownOf(view, design.id, listed), [view, design.id, listed])
  const drawn = useSame(view.picture === 'impedance' ? shown : noNames)
  // biome-ignore lint/correctness/useExhaustiveDependencies: `again` only makes another object of the same question
  const question = useMemo(
    () => (input === null ? null : askedOf(input, bodyKey, listed, drawn)),
    [input, bodyKey, listed, drawn, again],
  )
  const worked = useBoreWork('picture', question, describe)
  const latest = useRef<{ readonly designId: string; readonly answer: BoreAnswer } | null>(null)
  if (input === null) return null
  const result = worked !== null && 'answer' in worked ? worked.answer : null
  if (result?.ok) latest.current = { designId: design.id, answer: result.value }
  const inFile = (refusal: BoreRefusal): BoreRefusal =>
    air === undefined || design.bore === undefined
      ? refusal
      : refusalInFile(refusal, air, design.bore, `designs[${index}]`)
  const failure = worked !== null && 'failure' in worked ? worked.failure : null
  return {
    input,
    bodyKey,
    listed,
    leftOut,
    shown,
    answer: latest.current?.designId === design.id ? latest.current.answer : null,
    refusal: result === null || result.ok ? null : inFile(result.refusal),
    failure: failure === givenUp ? 'givenUp' : failure,
    waiting: worked?.question !== question,
  }
}

const noNames: readonly string[] = []
const noFingerings: readonly BoreFingering[] = []

/** The list as it was before when it holds the same names. */
function useSame(names: readonly string[]): readonly string[] {
  const kept = useRef(names)
  if (kept.current.join('\n') !== names.join('\n')) kept.current = names
  return kept.current
}

const numbers = new WeakMap<readonly BoreSection[], number>()
let latestNumber = 0

/** Stands for a bore: values are immutable, so the same list of sections is the same bore. */
export function keyOf({ sections, conditions }: Pick<BoreInput, 'sections' | 'conditions'>): string {
  const number = numbers.get(sections) ?? ++latestNumber
  numbers.set(sections, number)
  return `${number} ${JSON.stringify(conditions)}`
}

/** The fingerings to list, in order of their drop: no more of them are unpacked than are shown. */
function listedOf(
  { tables }: DerivedDesign,
  which: BoreView['which'],
): { readonly fingerings: readonly NamedFingering[]; readonly leftOut: number } {
  const wanted = which === 'all' ? tables.fingerings : tables.usual
  const kept = wanted.slice(0, mostListed)
  return {
    fingerings: kept.toSorted((a, b) => a.semitones - b.semitones),
    leftOut: wanted.length - kept.length,
  }
}

function shownOf(view: BoreView, designId: string, listed: readonly BoreFingering[]): readonly string[] {
  const names = new Set(listed.map(({ fingering }) => fingering))
  const chosen = (view.shown.get(designId) ?? []).filter((name) => names.has(name))
  if (chosen.length > 0) return chosen
  const ends = [listed[0], listed.at(-1)].flatMap((each) => (each === undefined ? [] : [each.fingering]))
  return [...new Set(ends)]
}

function askedOf(
  { sections, conditions, open }: BoreInput,
  bodyKey: string,
  fingerings: readonly BoreFingering[],
  drawn: readonly string[],
): Asked {
  return {
    body: { bodyKey, sections, conditions },
    question: { bodyKey, highestMode, open, fingerings, drawn, points },
  }
}
