import { type InCompany, inCompany } from '#shared/tuning/inCompany.ts'
import type { NamedFingering } from '#shared/valves/fingerings.ts'
import { loopNamed } from '#shared/valves/loop.ts'
import { routing } from '#shared/valves/route.ts'
import type { DerivedDesign } from '../../state/derived.ts'
import { firstPressed } from '../picturesStore.ts'

/** Fingerings to choose from: beyond this many, only the usual ones. */
const mostChoices = 64

/** Fingerings of two valves or more: those in use, or the usual ones where they are too many to choose from. */
export function companyFingerings({ tables }: DerivedDesign): readonly NamedFingering[] {
  const several = (each: NamedFingering): boolean => each.pressed.length > 1
  const all = tables.fingerings.filter(several)
  return all.length > mostChoices ? tables.usual.filter(several) : all
}

/** A fingering taken apart, its further loops by their names. */
export function apartOf(
  { design, tables }: DerivedDesign,
  { pressed, semitones }: NamedFingering,
): InCompany {
  const { openMm, inTuneOpenMm } = tables.mainSlide
  const system = routing(openMm, design.valves, design.loops)
  const apart = inCompany(inTuneOpenMm, system, design.valves, pressed, semitones)
  return { ...apart, further: apart.further.map((id) => loopNamed(design.loops, id)) }
}

/** The fingering to take apart: that of the valves pressed, else the one to begin with, else any. */
export function companyFingering(
  { design, tables }: DerivedDesign,
  choices: readonly NamedFingering[],
  pressed: readonly string[],
): NamedFingering | undefined {
  const first = firstPressed(design.valves, tables)
  return (
    choices.find(({ name }) => name === pressed.join('-')) ??
    choices.find(({ name }) => name === first.join('-')) ??
    choices[0]
  )
}
