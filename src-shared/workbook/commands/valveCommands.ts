import type { Gate, Loop } from '../../valves/loop.ts'
import type { Valve } from '../../valves/valve.ts'
import type { Design } from '../workbook.ts'
import { withReadingsOf } from './benchCommands.ts'
import { type Command, coalesced, moved, recorded, withDesign, withOptional } from './command.ts'

/** Adds a valve, and a loop of its own when one is given. */
export function addValve(designId: string, valve: Valve, loop?: Loop): Command {
  return recorded('Add valve', (workbook) =>
    withDesign(workbook, designId, (design) => ({
      ...design,
      valves: [...design.valves, valve],
      loops: loop === undefined ? design.loops : [...design.loops, loop],
    })),
  )
}

/** Sets a valve's nominal drop, semitones. */
export function setValveDrop(designId: string, valveId: string, semitones: number): Command {
  return coalesced(`Valve ${valveId} drop`, `${designId} drop ${valveId}`, (workbook) =>
    withDesign(workbook, designId, (design) => ({
      ...design,
      valves: design.valves.map((valve) => (valve.id === valveId ? { ...valve, semitones } : valve)),
    })),
  )
}

/** Renames a valve wherever it is named: gates, fingerings, choices, readings on the bench. */
export function renameValve(designId: string, valveId: string, name: string): Command {
  const renamed = (ids: readonly string[]) => ids.map((id) => (id === valveId ? name : id))
  return coalesced('Valve name', `${designId} valve name`, (workbook) =>
    withReadingsOf(
      withDesign(workbook, designId, (design) => ({
        ...withValveIds(design, renamed),
        valves: design.valves.map((valve) => (valve.id === valveId ? { ...valve, id: name } : valve)),
      })),
      designId,
      (reading) => ({ ...reading, pressed: renamed(reading.pressed) }),
    ),
  )
}

/** Moves a valve `by` places; fingerings are named in the new order. */
export function moveValve(designId: string, valveId: string, by: number): Command {
  return recorded('Move valve', (workbook) =>
    withDesign(workbook, designId, (design) => {
      const at = design.valves.findIndex(({ id }) => id === valveId)
      const valves = moved(design.valves, at, by)
      return valves === design.valves ? design : { ...design, valves }
    }),
  )
}

/**
 * Takes a valve out as if it were tied up: loops that it alone or with others switches in go, gates that want it
 * released no longer ask, and fingerings and choices that press it go.
 */
export function removeValve(designId: string, valveId: string): Command {
  return recorded('Delete valve', (workbook) =>
    withDesign(workbook, designId, (design) => {
      const without = withValveIds(withoutPresses(design, valveId), (ids) =>
        ids.filter((id) => id !== valveId),
      )
      return { ...without, valves: design.valves.filter(({ id }) => id !== valveId) }
    }),
  )
}

function withoutPresses(design: Design, valveId: string): Design {
  const presses = ({ pressed }: { readonly pressed: readonly string[] }): boolean => pressed.includes(valveId)
  const fingerings =
    design.fingerings === undefined || design.fingerings === 'all'
      ? design.fingerings
      : design.fingerings.filter((fingering) => !presses(fingering))
  const chosen = Object.entries(design.chosen ?? {}).filter(([, choice]) => !presses(choice))
  const kept = withOptional(design, 'chosen', chosen.length === 0 ? undefined : Object.fromEntries(chosen))
  return withOptional(
    { ...kept, loops: design.loops.filter((loop) => !presses(loop)) },
    'fingerings',
    fingerings,
  )
}

/** The design with every list of valve names in it changed. */
function withValveIds(design: Design, change: (ids: readonly string[]) => readonly string[]): Design {
  const loops = design.loops.map((loop) => {
    const next = { ...loop, pressed: change(loop.pressed) }
    return loop.released === undefined ? next : { ...next, released: change(loop.released) }
  })
  const chosen = Object.entries(design.chosen ?? {}).map(
    ([midi, choice]) => [midi, { ...choice, pressed: change(choice.pressed) }] as const,
  )
  const fingerings =
    design.fingerings === undefined || design.fingerings === 'all'
      ? design.fingerings
      : design.fingerings.map((fingering) => ({ ...fingering, pressed: change(fingering.pressed) }))
  const kept = withOptional({ ...design, loops }, 'fingerings', fingerings)
  return chosen.length === 0 ? kept : { ...kept, chosen: Object.fromEntries(chosen) }
}

/** Changes one loop. */
function withLoop(designId: string, loopId: string, change: (loop: Loop) => Loop): Command['apply'] {
  return (workbook) =>
    withDesign(workbook, designId, (design) => ({
      ...design,
      loops: design.loops.map((loop) => (loop.id === loopId ? change(loop) : loop)),
    }))
}

/** What a loop is called in a step's name. */
function calledLoop(loop: Loop): string {
  const name = loop.name ?? loop.id
  return `${name.charAt(0).toUpperCase()}${name.slice(1)}`
}

/** Adds a loop after the others. */
export function addLoop(designId: string, loop: Loop): Command {
  return recorded('Add loop', (workbook) =>
    withDesign(workbook, designId, (design) => ({ ...design, loops: [...design.loops, loop] })),
  )
}

/** Takes a loop out. */
export function removeLoop(designId: string, loop: Loop): Command {
  return recorded(`Delete ${loop.name ?? loop.id}`, (workbook) =>
    withDesign(workbook, designId, (design) => ({
      ...design,
      loops: design.loops.filter(({ id }) => id !== loop.id),
    })),
  )
}

/** Sets a loop's length, mm of tube. */
export function setLoopLength(designId: string, loop: Loop, lengthMm: number): Command {
  return coalesced(
    `${calledLoop(loop)} loop length`,
    `${designId} length ${loop.id}`,
    withLoop(designId, loop.id, (present) => ({ ...present, lengthMm })),
  )
}

/** Names a loop; an empty name leaves its id. */
export function renameLoop(designId: string, loop: Loop, name: string): Command {
  return coalesced(
    'Loop name',
    `${designId} loop name ${loop.id}`,
    withLoop(designId, loop.id, (present) => withOptional(present, 'name', name === '' ? undefined : name)),
  )
}

/** Sets which valves must be down and which up for a loop to lie in the route. */
export function setGate(designId: string, loop: Loop, gate: Gate): Command {
  const released = gate.released === undefined || gate.released.length === 0 ? undefined : gate.released
  return recorded(
    `${calledLoop(loop)} gate`,
    withLoop(designId, loop.id, (present) =>
      withOptional({ ...present, pressed: gate.pressed }, 'released', released),
    ),
  )
}

/** Sets a loop's bore, mm; `undefined` leaves it to the bore at the valves. */
export function setLoopDiameter(designId: string, loop: Loop, diameterMm: number | undefined): Command {
  return coalesced(
    `${calledLoop(loop)} bore`,
    `${designId} bore ${loop.id}`,
    withLoop(designId, loop.id, (present) => withOptional(present, 'diameterMm', diameterMm)),
  )
}

/** Sets the centre-line radius of a loop's bow, mm; `undefined` leaves the loop straight for the acoustic bore. */
export function setLoopBendRadius(designId: string, loop: Loop, bendRadiusMm: number | undefined): Command {
  return coalesced(
    `${calledLoop(loop)} bow radius`,
    `${designId} bow radius ${loop.id}`,
    withLoop(designId, loop.id, (present) => withOptional(present, 'bendRadiusMm', bendRadiusMm)),
  )
}

/**
 * Moves a valve slide, mm out (not tube): the loop grows by twice the movement. The travel is kept.
 */
export function moveLoopSlide(designId: string, loop: Loop, outMm: number): Command {
  return coalesced(
    `${calledLoop(loop)} slide`,
    `${designId} slide ${loop.id}`,
    withLoop(designId, loop.id, (present) => {
      const slide = present.slide ?? { outMm: 0, travelMm: 0 }
      const lengthMm = present.lengthMm + 2 * (outMm - slide.outMm)
      return { ...present, lengthMm, slide: { ...slide, outMm } }
    }),
  )
}

/** Sets a valve slide's farthest movement out, mm. */
export function setLoopTravel(designId: string, loop: Loop, travelMm: number): Command {
  return coalesced(
    `${calledLoop(loop)} travel`,
    `${designId} travel ${loop.id}`,
    withLoop(designId, loop.id, (present) => ({
      ...present,
      slide: { ...present.slide, outMm: present.slide?.outMm ?? 0, travelMm },
    })),
  )
}
