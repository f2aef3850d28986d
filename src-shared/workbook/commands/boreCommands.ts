import type { BoreSection } from '../../bore/section.ts'
import type { StartingBore } from '../../bore/startingBores.ts'
import type { Bore, DesignSection } from '../bore.ts'
import { type Command, coalesced, moved, recorded, withDesign, withOptional } from './command.ts'

/** What a section may have set one at a time. */
export type SectionField =
  | 'lengthMm'
  | 'diameterMm'
  | 'startDiameterMm'
  | 'endDiameterMm'
  | 'flare'
  | 'volumeMm3'

/** Settings of a bore that are not its sections. */
export type BoreSetting = Exclude<keyof Bore, 'sections'>

const settingNames: Readonly<Record<BoreSetting, string>> = {
  waveFronts: 'Wave fronts',
  mouth: 'Bell mouth',
  bellTemperatureC: 'Temperature at bell',
  targets: 'Targets of modes',
  harmonicWeights: 'Weights of harmonics',
}

const fieldNames: Readonly<Record<SectionField, string>> = {
  lengthMm: 'length',
  diameterMm: 'bore',
  startDiameterMm: 'bore at start',
  endDiameterMm: 'bore at end',
  flare: 'flare',
  volumeMm3: 'volume',
}

/** Gives a design a bore, in place of the one it had; `undefined` takes it away. */
export function setBore(designId: string, bore: Bore | undefined): Command {
  return recorded(bore === undefined ? 'Delete bore' : 'Set bore', (workbook) =>
    withDesign(workbook, designId, (design) => withOptional(design, 'bore', bore)),
  )
}

/** Gives a design a starting bore; wave fronts, targets and the like stay as they were. */
export function startBore(designId: string, { sections }: StartingBore): Command {
  return recorded('Start bore', (workbook) =>
    withDesign(workbook, designId, (design) => ({
      ...design,
      bore: { waveFronts: 'spherical', ...design.bore, sections },
    })),
  )
}

/** Sets one of the bore's settings; `undefined` leaves it to its default. */
export function setBoreSetting<K extends BoreSetting>(
  designId: string,
  setting: K,
  value: Bore[K] | undefined,
): Command {
  return coalesced(
    settingNames[setting],
    `${designId} bore ${setting}`,
    withBore(designId, (bore) => withOptional(bore, setting, value)),
  )
}

/** Puts a section in before the one at `index`, or at the end. */
export function addSection(designId: string, index: number, section: DesignSection): Command {
  return recorded(
    `Add ${section.kind}`,
    withSections(designId, (sections) => sections.toSpliced(index, 0, section)),
  )
}

/** Takes a section out. The place of the valves stays: a file's rules ask for one. */
export function removeSection(designId: string, index: number): Command {
  return recorded(
    'Delete section',
    withSections(designId, (sections) => {
      const gone = sections[index]
      return gone === undefined || gone.kind === 'valves' ? sections : sections.toSpliced(index, 1)
    }),
  )
}

/** Moves a section by `by` places, towards the bell when positive. */
export function moveSection(designId: string, index: number, by: number): Command {
  return recorded(
    'Move section',
    withSections(designId, (sections) => moved(sections, index, by)),
  )
}

/** Puts another section in the place of one, of another kind perhaps. */
export function changeSection(designId: string, index: number, section: DesignSection): Command {
  return recorded(
    'Change section',
    withSections(designId, (sections) => (index in sections ? sections.with(index, section) : sections)),
  )
}

/** Sets one value of a section, mm, mm³ or a number; a field that a section of its kind has not is left alone. */
export function setSectionValue(
  designId: string,
  index: number,
  field: SectionField,
  value: number,
): Command {
  return coalesced(
    `Section ${fieldNames[field]}`,
    `${designId} section ${index} ${field}`,
    withSections(designId, (sections) => {
      const section = sections[index]
      if (section === undefined || !(field in section)) return sections
      return sections.with(index, { ...section, [field]: value } as DesignSection)
    }),
  )
}

/** Names a section; an empty name leaves it to its kind. */
export function renameSection(designId: string, index: number, name: string): Command {
  return coalesced(
    'Section name',
    `${designId} section name ${index}`,
    withSections(designId, (sections) => {
      const section = sections[index]
      if (section === undefined) return sections
      return sections.with(index, withOptional(section, 'name', name === '' ? undefined : name))
    }),
  )
}

/**
 * Takes sections that were worked out (a fit, a joint that was moved) into the design, all in one step. They keep the
 * names they came with.
 */
export function takeSections(designId: string, name: string, sections: readonly BoreSection[]): Command {
  return recorded(
    name,
    withSections(designId, () => sections),
  )
}

/** Changes a design's bore; the same workbook when it has none or nothing changed. */
export function withBore(designId: string, change: (bore: Bore) => Bore): Command['apply'] {
  return (workbook) =>
    withDesign(workbook, designId, (design) => {
      if (design.bore === undefined) return design
      const bore = change(design.bore)
      return bore === design.bore ? design : { ...design, bore }
    })
}

/** As `withBore`, for the sections alone. */
export function withSections(
  designId: string,
  change: (sections: readonly DesignSection[]) => readonly DesignSection[],
): Command['apply'] {
  return withBore(designId, (bore) => {
    const sections = change(bore.sections)
    return sections === bore.sections ? bore : { ...bore, sections }
  })
}
