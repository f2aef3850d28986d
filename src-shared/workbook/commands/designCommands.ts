import type { ChosenFingering } from '../../tuning/instrument.ts'
import type { Fingering } from '../../valves/fingering.ts'
import type { SlidePosition } from '../../valves/loop.ts'
import type { SystemParts } from '../../valves/systems/parts.ts'
import { systems } from '../../valves/systems/systems.ts'
import type { InstrumentData } from '../workbook.ts'
import { type Command, coalesced, recorded, withDesign, withOptional } from './command.ts'
import { copyEnding } from './workbookCommands.ts'

const instrumentNames: Readonly<Record<keyof InstrumentData, string>> = {
  fundamentalHz: 'Fundamental',
  boreLengthMm: 'Bore length',
  boreDiameterMm: 'Bore at the valves',
  transposition: 'Transposition',
  harmonics: 'Compass',
  harmonicOffsetsCents: 'Harmonic offsets',
}

/** Sets one value of the open instrument; `undefined` leaves an optional one out. */
export function setInstrument<K extends keyof InstrumentData>(
  designId: string,
  field: K,
  value: InstrumentData[K] | undefined,
): Command {
  return coalesced(instrumentNames[field], `${designId} ${field}`, (workbook) =>
    withDesign(workbook, designId, (design) => ({
      ...design,
      instrument: withOptional(design.instrument, field, value),
    })),
  )
}

/** Sets the measured offset of one harmonic, cents; 0 takes it out. */
export function setHarmonicOffset(designId: string, harmonic: number, cents: number): Command {
  return coalesced('Harmonic offset', `${designId} offset ${harmonic}`, (workbook) =>
    withDesign(workbook, designId, (design) => {
      const { [harmonic]: _present, ...others } = design.instrument.harmonicOffsetsCents ?? {}
      const offsets = cents === 0 ? others : { ...others, [harmonic]: cents }
      const value = Object.keys(offsets).length === 0 ? undefined : offsets
      return { ...design, instrument: withOptional(design.instrument, 'harmonicOffsetsCents', value) }
    }),
  )
}

/** Sets the main slide's position; `undefined` takes it out. */
export function setMainSlidePosition(designId: string, slide: SlidePosition | undefined): Command {
  return coalesced('Main slide', `${designId} main slide`, (workbook) =>
    withDesign(workbook, designId, (design) =>
      withOptional(design, 'mainSlide', slide && { ...design.mainSlide, ...slide }),
    ),
  )
}

/**
 * Moves the main slide, mm out. Its travel goes along while it is no more than that, as where it was never typed; a
 * travel that was typed stays, and a slide that is farther out than it reaches is a slip to be told.
 */
export function moveMainSlide(designId: string, outMm: number): Command {
  return coalesced('Main slide', `${designId} main slide`, (workbook) =>
    withDesign(workbook, designId, (design) => {
      const { outMm: presentMm, travelMm } = design.mainSlide ?? { outMm: 0, travelMm: 0 }
      const reachMm = travelMm === presentMm ? Math.max(travelMm, outMm) : travelMm
      return { ...design, mainSlide: { ...design.mainSlide, outMm, travelMm: reachMm } }
    }),
  )
}

/** Sets which fingerings the design uses: every combination, or a list. */
export function setFingerings(designId: string, fingerings: 'all' | readonly Fingering[]): Command {
  return recorded('Fingerings in use', (workbook) =>
    withDesign(workbook, designId, (design) => ({ ...design, fingerings })),
  )
}

/** Keeps a player's choice for a note; `null` goes back to the usual fingering. */
export function chooseFingering(designId: string, midi: number, choice: ChosenFingering | null): Command {
  return recorded(choice === null ? 'Usual fingering' : 'Choose fingering', (workbook) =>
    withDesign(workbook, designId, (design) => {
      const { [midi]: _present, ...others } = design.chosen ?? {}
      const chosen = choice === null ? others : { ...others, [midi]: choice }
      return withOptional(design, 'chosen', Object.keys(chosen).length === 0 ? undefined : chosen)
    }),
  )
}

/**
 * Replaces valves, loops and fingerings by a system's; choices that name other valves go with them. A design that
 * was called after a system is called after the new one; a name of its own it keeps.
 */
export function replaceSystem(designId: string, systemName: string, parts: SystemParts): Command {
  return recorded(`Make ${systemName.toLowerCase()}`, (workbook) =>
    withDesign(workbook, designId, (design) => {
      const known = new Set(parts.valves.map(({ id }) => id))
      const kept = Object.entries(design.chosen ?? {}).filter(([, { pressed }]) =>
        pressed.every((id) => known.has(id)),
      )
      const chosen = kept.length === 0 ? undefined : Object.fromEntries(kept)
      const ownName = design.name.replace(copyEnding, '')
      const calledAfterOne = systems.some(({ name }) => name === ownName)
      const name = calledAfterOne ? systemName : design.name
      return withOptional({ ...design, name, ...parts }, 'chosen', chosen)
    }),
  )
}
