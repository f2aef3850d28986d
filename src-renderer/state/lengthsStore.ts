import { create } from 'zustand'
import type { LengthObjective, LoopFreedom } from '#shared/solve/lengthProblem.ts'
import { forgetWithWorkbook } from './perWorkbook.ts'

/** Whose errors are made least: those of the length model, or those of the bore's resonances. */
export type LengthsAim = 'lengths' | 'resonances'

/** What is chosen on the Lengths page. It lies outside the workbook and begins anew with another one. */
export interface LengthsState {
  /** A design without a bore is found by lengths, whatever is chosen. */
  readonly aim: LengthsAim
  readonly objective: LengthObjective
  readonly openFree: boolean
  /** Ends of the open route's change, mm of tube, when it is free. */
  readonly openEnds: { readonly lowestMm?: number; readonly highestMm?: number }
  /** By fingering name, for every design alike; one that is not named counts once. */
  readonly weights: ReadonlyMap<string, number>
  /** By design and loop; one that is not named is free. */
  readonly freedoms: ReadonlyMap<string, ReadonlyMap<string, LoopFreedom>>
  /** Slides moved while playing, by design: loop ids, and `mainSlideId`. */
  readonly moved: ReadonlyMap<string, ReadonlySet<string>>
  /** An error that the moved slides reach counts as none. */
  readonly reachCounts: boolean
  /** The proposal was left: it is not shown until something is chosen anew. */
  readonly left: boolean
  /** Place on the trade curve that is proposed instead of the objective's own end. */
  readonly walkedTo: number | null
  readonly doubt: DoubtChoices
}

export interface DoubtChoices {
  readonly shown: 'none' | 'worstCase' | 'rootSumSquare'
  /** ± mm of tube. */
  readonly bodyMm: number
  /** Of every loop that has none of its own. */
  readonly loopMm: number
  /** By design and loop. */
  readonly ownMm: ReadonlyMap<string, ReadonlyMap<string, number>>
  /** Coldest and warmest air it is played with, °C; the design's own when `null`. */
  readonly coldestC: number | null
  readonly warmestC: number | null
  /** How far off a reading may be that the lengths come from; 0 for none. */
  readonly readingErrorCents: number
  readonly withinCents: number
}

/** Stands for the main slide among loop ids, which are never empty. */
export const mainSlideId = ''

const fresh: LengthsState = {
  aim: 'lengths',
  objective: 'rms',
  openFree: false,
  openEnds: {},
  weights: new Map(),
  freedoms: new Map(),
  moved: new Map(),
  reachCounts: false,
  left: false,
  walkedTo: null,
  doubt: {
    shown: 'none',
    bodyMm: 2,
    loopMm: 0.5,
    ownMm: new Map(),
    coldestC: null,
    warmestC: null,
    readingErrorCents: 0,
    withinCents: 20,
  },
}

export const useLengths = create<LengthsState>()(() => fresh)

forgetWithWorkbook(() => useLengths.setState(fresh))

/** Changes what is asked: a proposal that was left, or walked away from, is of the past then. */
export function choose(change: Partial<LengthsState>): void {
  useLengths.setState({ ...change, left: false, walkedTo: null })
}

/** Gives a fingering a weight; 1 is what it has anyway. */
export function weigh(fingering: string, weight: number): void {
  choose({ weights: withEntry(useLengths.getState().weights, fingering, weight === 1 ? undefined : weight) })
}

/** Says what may become of a loop. */
export function setFreedom(designId: string, loopId: string, freedom: LoopFreedom): void {
  const { freedoms } = useLengths.getState()
  const own = withEntry(freedoms.get(designId) ?? new Map(), loopId, freedom)
  choose({ freedoms: withEntry(freedoms, designId, own) })
}

/** Says whether a slide is moved while playing. */
export function setMoved(designId: string, slideId: string, isMoved: boolean): void {
  const { moved, reachCounts } = useLengths.getState()
  const own = new Set(moved.get(designId))
  if (isMoved) own.add(slideId)
  else own.delete(slideId)
  const change = { moved: withEntry(moved, designId, own) }
  if (reachCounts) choose(change)
  else useLengths.setState(change)
}

/** Changes a choice about doubt, which changes no proposal. */
export function setDoubt(change: Partial<DoubtChoices>): void {
  useLengths.setState(({ doubt }) => ({ doubt: { ...doubt, ...change } }))
}

/** The map with an entry set, or taken out when the value is `undefined`. */
export function withEntry<Key, Value>(
  map: ReadonlyMap<Key, Value>,
  key: Key,
  value: Value | undefined,
): ReadonlyMap<Key, Value> {
  const next = new Map(map)
  if (value === undefined) next.delete(key)
  else next.set(key, value)
  return next
}
