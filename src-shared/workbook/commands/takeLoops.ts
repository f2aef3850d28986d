import type { Loop } from '../../valves/loop.ts'
import type { LoopRefusal, LoopRow } from '../loopRows/readLoops.ts'
import type { Design } from '../workbook.ts'
import { type Command, recorded, withDesign, withOptional } from './command.ts'

/** What becomes of the loops that the table does not name. */
export type LoopsTaken = 'added' | 'replaced'

/**
 * Lines without valves whose loop the design does not have: nothing would say where it lies.
 *
 * @example strangers(design, [{ line: 2, name: 'fifth', lengthMm: 300 }])[0]?.line // 2
 */
export function strangers(design: Design, rows: readonly LoopRow[]): readonly LoopRefusal[] {
  const known = design.loops.map(({ id, name }) => name ?? id).join(', ')
  const expected = known === '' ? 'its valves' : `its valves, or one of ${known}`
  return rows
    .filter((row) => row.pressed === undefined && meantLoop(design.loops, row) === undefined)
    .map(({ line, name }) => ({ line, column: 'name', found: name, expected }))
}

/**
 * Takes a table of loops into a design as one step. A loop that the design has under that name (or id) keeps its
 * id, its slide and what the table does not say; others are new. `replaced` takes out every loop that the table
 * does not name. Lines must have passed {@link strangers}; one that has not is left out.
 *
 * @example takeLoops('plain', rows, 'added').name // 'Take 3 loops'
 */
export function takeLoops(designId: string, rows: readonly LoopRow[], taken: LoopsTaken): Command {
  const name = rows.length === 1 ? 'Take a loop' : `Take ${rows.length} loops`
  return recorded(name, (workbook) =>
    withDesign(workbook, designId, (design) => ({ ...design, loops: loopsWith(design.loops, rows, taken) })),
  )
}

function loopsWith(loops: readonly Loop[], rows: readonly LoopRow[], taken: LoopsTaken): readonly Loop[] {
  const changed = new Map<string, Loop>()
  const added: Loop[] = []
  const ids = new Set(loops.map(({ id }) => id))
  const inOrder = rows.flatMap((row) => {
    const before = meantLoop(loops, row)
    if (before === undefined && row.pressed === undefined) return []
    const id = before?.id ?? freshId(ids, row)
    const loop = loopOf(before ?? { id, name: row.name, lengthMm: 0, pressed: [] }, row)
    if (before === undefined) added.push(loop)
    else changed.set(id, loop)
    return [loop]
  })
  if (taken === 'replaced') return inOrder
  return [...loops.map((loop) => changed.get(loop.id) ?? loop), ...added]
}

/**
 * The loop that a line means: the one of that name, else of that id.
 *
 * @example meantLoop(design.loops, row)?.lengthMm
 */
export function meantLoop(loops: readonly Loop[], { name }: LoopRow): Loop | undefined {
  return loops.find((loop) => loop.name === name) ?? loops.find(({ id }) => id === name)
}

function loopOf(before: Loop, { lengthMm, diameterMm, pressed, released }: LoopRow): Loop {
  const sized = withOptional({ ...before, lengthMm }, 'diameterMm', diameterMm ?? before.diameterMm)
  return pressed === undefined ? sized : withOptional({ ...sized, pressed }, 'released', released)
}

function freshId(taken: Set<string>, { name, pressed = [] }: LoopRow): string {
  const wanted = pressed.length === 1 ? `L${pressed[0]}` : name.slice(0, 50)
  let id = wanted
  for (let number = 2; taken.has(id); number++) id = `${wanted} ${number}`
  taken.add(id)
  return id
}
