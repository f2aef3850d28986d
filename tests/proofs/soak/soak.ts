import { isDeepStrictEqual } from 'node:util'
import { examples } from '#shared/workbook/examples/examples.ts'
import type { Workbook } from '#shared/workbook/workbook.ts'
import { redo, run, showWorkbook, undo, useWorkbook } from '../../../src-renderer/state/workbookStore.ts'
import { exampleWorkbook } from '../../fixtures/exampleFiles.ts'
import { type Chance, chanceOf } from '../chance.ts'
import { boreMoves } from './boreMoves.ts'
import { designMoves, type Move } from './designMoves.ts'
import { Draw } from './draw.ts'
import { mostSteps, Shadow } from './shadow.ts'
import { workbookMoves } from './workbookMoves.ts'

/** Every command that there is, with drawn arguments. */
export const moves: Readonly<Record<string, Move>> = { ...designMoves, ...boreMoves, ...workbookMoves }

/** What a soak came to. */
export interface SoakTally {
  readonly taken: number
  readonly refused: number
  /** Commands that left everything as it was. */
  readonly idle: number
  readonly undone: number
  readonly redone: number
  /** Commands that were taken at least once. */
  readonly kinds: ReadonlySet<string>
}

/** Designs, and jobs in a list of the bench, above which the soak takes some out: it is to be long, not large. */
const mostAtOnce = 6

/**
 * Carries out so many random commands through the window's own store, with undo and redo between them. Every
 * `every` commands the workbook is compared with its replay, and `checkpoint` is called. Throws where they differ.
 */
export function soak(
  count: number,
  seed: number,
  every: number,
  checkpoint: (done: number) => void,
): SoakTally {
  const start = exampleWorkbook(examples[0]!)
  showWorkbook(start)
  const shadow = new Shadow(start)
  const tally = { taken: 0, refused: 0, idle: 0, undone: 0, redone: 0, kinds: new Set<string>() }
  for (let done = 1; done <= count; done++) {
    const chance = chanceOf(seed, done)
    step(chance, shadow, tally)
    if (chance.share() < 0.08) {
      tally.undone += back(chance, shadow)
      if (chance.share() < 0.6) tally.redone += forward(chance, shadow)
    }
    if (done % every !== 0 && done !== count) continue
    compare(shadow, `after ${done} commands, seed ${seed}`)
    checkpoint(done)
  }
  toTheEnds(shadow)
  return tally
}

function workbook(): Workbook {
  const { workbook: present } = useWorkbook.getState()
  if (present === null) throw new Error('no workbook is open')
  return present
}

function step(
  chance: Chance,
  shadow: Shadow,
  tally: { taken: number; refused: number; idle: number; kinds: Set<string> },
): void {
  const present = workbook()
  const name = nextMove(chance, present)
  const command = moves[name]!(new Draw(chance, present))
  const history = useWorkbook.temporal.getState()
  const lastPast = history.pastStates.at(-1)
  const broken = run(command)
  if (workbook() === present) {
    if (broken === null) tally.idle++
    else tally.refused++
    return
  }
  if (broken !== null) throw new Error(`${name} was refused and changed the workbook`)
  shadow.take(command, useWorkbook.temporal.getState().pastStates.at(-1) === lastPast)
  tally.taken++
  tally.kinds.add(name)
}

function nextMove(chance: Chance, { designs, bench }: Workbook): string {
  if (designs.length > mostAtOnce) return 'removeDesign'
  const jobs = [bench?.slides, bench?.readings, bench?.pitchChanges].map((list) => list?.length ?? 0)
  if (Math.max(...jobs) > mostAtOnce) return 'removeJob'
  return chance.of(Object.keys(moves))
}

function back(chance: Chance, shadow: Shadow): number {
  const times = Math.min(chance.of([1, 1, 2, 5, 20]), shadow.depth().undo)
  for (let i = 0; i < times; i++) {
    undo()
    shadow.undo()
  }
  return times
}

function forward(chance: Chance, shadow: Shadow): number {
  const times = Math.min(chance.of([1, 2, 5, 20]), shadow.depth().redo)
  for (let i = 0; i < times; i++) {
    redo()
    shadow.redo()
  }
  return times
}

function compare(shadow: Shadow, when: string): void {
  if (!isDeepStrictEqual(workbook(), shadow.replayed()))
    throw new Error(`${when}: the workbook is not its replay`)
  const { pastStates, futureStates } = useWorkbook.temporal.getState()
  const { undo: past, redo: future } = shadow.depth()
  if (pastStates.length !== past || futureStates.length !== future || past > mostSteps)
    throw new Error(
      `${when}: ${pastStates.length} and ${futureStates.length} steps kept, ${past} and ${future} made`,
    )
}

/** All the way back, and all the way again. */
function toTheEnds(shadow: Shadow): void {
  const last = workbook()
  const { undo: past, redo: future } = shadow.depth()
  for (let i = 0; i < past; i++) {
    undo()
    shadow.undo()
  }
  compare(shadow, 'all undone')
  for (let i = 0; i < past; i++) {
    redo()
    shadow.redo()
  }
  compare(shadow, 'all done again')
  if (workbook() !== last) throw new Error(`done again, it is another workbook (${future} steps were undone)`)
}
