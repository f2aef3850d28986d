import type { Temperament } from '../../pitch/temperament.ts'
import type { Tuning } from '../../tuning/instrument.ts'
import { freshId } from '../newWorkbook.ts'
import type { Design, Workbook, WorkbookAir } from '../workbook.ts'
import { type Command, coalesced, moved, recorded, withDesign, withOptional } from './command.ts'

/** Names the workbook. */
export function renameWorkbook(name: string): Command {
  return coalesced('Workbook name', 'workbook name', (workbook) => ({ ...workbook, name }))
}

/** Sets the workbook's notes. */
export function setNotes(notes: string): Command {
  return coalesced('Notes', 'notes', (workbook) =>
    withOptional(workbook, 'notes', notes === '' ? undefined : notes),
  )
}

/** Sets the reference pitch, Hz. */
export function setA4(a4Hz: number): Command {
  return coalesced('Reference pitch', 'a4', (workbook) => ({
    ...workbook,
    reference: { ...workbook.reference, a4Hz },
  }))
}

/** Sets the temperament of the targets. */
export function setTemperament(temperament: Temperament): Command {
  return recorded('Temperament', (workbook) => ({
    ...workbook,
    reference: {
      ...workbook.reference,
      temperament: withUnknownKeys(temperament, workbook.reference.temperament),
    },
  }))
}

const airNames: Readonly<Record<keyof WorkbookAir, string>> = {
  temperatureC: 'Air temperature',
  relativeHumidity: 'Humidity',
  co2Fraction: 'Carbon dioxide',
  pressurePa: 'Air pressure',
  playingTemperatureC: 'Playing temperature',
}

/** Sets one value of the air; `undefined` for a playing temperature that is the design's own. */
export function setAir(field: keyof WorkbookAir, value: number | undefined): Command {
  return coalesced(airNames[field], `air ${field}`, (workbook) => ({
    ...workbook,
    air: withOptional(workbook.air, field, value),
  }))
}

/** Sets how the main slide stands, for every design alike, so that they are compared alike. */
export function setTuning(tuning: Tuning): Command {
  return recorded('Tuning note', (workbook) => ({
    ...workbook,
    designs: workbook.designs.map((design) => ({
      ...design,
      tuning: withUnknownKeys(tuning, design.tuning),
    })),
  }))
}

/** What replaces a value of its own kind keeps the keys of other programs. */
function withUnknownKeys<T extends { readonly kind: string }>(next: T, present: T | undefined): T {
  return present?.kind === next.kind ? { ...present, ...next } : next
}

/** Adds a design after the others. */
export function addDesign(design: Design): Command {
  return recorded('Add design', (workbook) => ({ ...workbook, designs: [...workbook.designs, design] }))
}

/** Puts a copy of a design behind it, under a new id. */
export function duplicateDesign(designId: string, copyId: string): Command {
  return recorded('Duplicate design', (workbook) => {
    const at = workbook.designs.findIndex(({ id }) => id === designId)
    const design = workbook.designs[at]
    if (design === undefined) return workbook
    const taken = new Set(workbook.designs.map(({ name }) => name))
    const copy = { ...design, id: copyId, name: copyName(design.name, taken) }
    return { ...workbook, designs: workbook.designs.toSpliced(at + 1, 0, copy) }
  })
}

/** `Plain, copy`, then `Plain, copy 2` and so on, of a copy too. */
function copyName(name: string, taken: ReadonlySet<string>): string {
  const stem = `${name.replace(copyEnding, '')}, copy`
  let copy = stem
  for (let number = 2; taken.has(copy); number++) copy = `${stem} ${number}`
  return copy
}

/** What the name of a copy ends in. */
export const copyEnding = /, copy(?: \d+)?$/

/** An id for a copy of a design. */
export function copyIdOf(workbook: Workbook, designId: string): string {
  return freshId(
    designId,
    workbook.designs.map(({ id }) => id),
  )
}

/** Names a design. */
export function renameDesign(designId: string, name: string): Command {
  return coalesced('Design name', `design name ${designId}`, (workbook) =>
    withDesign(workbook, designId, (design) => ({ ...design, name })),
  )
}

/** Moves a design `by` places down the line-up; negative moves it up. */
export function moveDesign(designId: string, by: number): Command {
  return recorded('Move design', (workbook) => {
    const at = workbook.designs.findIndex(({ id }) => id === designId)
    const designs = moved(workbook.designs, at, by)
    return designs === workbook.designs ? workbook : { ...workbook, designs }
  })
}

/** Takes a design out. */
export function removeDesign(designId: string): Command {
  return recorded('Delete design', (workbook) => ({
    ...workbook,
    designs: workbook.designs.filter(({ id }) => id !== designId),
  }))
}
