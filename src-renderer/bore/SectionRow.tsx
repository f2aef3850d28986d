import { memo, type ReactNode } from 'react'
import { sectionLengthMm } from '#shared/bore/checkBore.ts'
import type { DesignSection } from '#shared/workbook/bore.ts'
import {
  addSection,
  changeSection,
  moveSection,
  removeSection,
  renameSection,
  type SectionField,
  setSectionValue,
} from '#shared/workbook/commands/boreCommands.ts'
import { type Action, Actions } from '../fields/Actions.tsx'
import { Choice } from '../fields/Choice.tsx'
import { LengthField, lengthFigure } from '../fields/LengthField.tsx'
import { NumberField } from '../fields/NumberField.tsx'
import { tryRun } from '../fields/refusal.ts'
import { TextField } from '../fields/TextField.tsx'
import { runOrSay } from '../state/runOrSay.ts'
import { useSettings } from '../state/settings.ts'
import { boreWords } from '../words/bore.ts'
import { useBoreView } from './boreStore.ts'
import { type AddedKind, addedKinds, changedKind, newSection } from './newSection.ts'

interface SectionRowProps {
  readonly designId: string
  readonly section: DesignSection
  readonly index: number
  readonly last: number
  /** Says why something about the list was refused, or takes that back. */
  readonly refuse: (message: string | null) => void
}

/** One section: its kind and name, its dimensions, and what can be done with it. */
export const SectionRow = memo(function SectionRow(props: SectionRowProps): ReactNode {
  const { designId, section, index } = props
  const on = useBoreView((state) => state.section === index)
  const set = (field: SectionField) => (value: number) =>
    tryRun(setSectionValue(designId, index, field, value))
  const number = index + 1
  return (
    <tr className={on ? 'on' : undefined} onFocus={() => useBoreView.setState({ section: index })}>
      <th scope="row">
        <KindAndName {...props} />
      </th>
      <td>
        {'lengthMm' in section ? (
          <LengthField
            label={boreWords.lengthOf(number)}
            labelHidden
            lengthMm={section.lengthMm}
            stepMm={0.5}
            width={6}
            take={set('lengthMm')}
          />
        ) : section.kind === 'profile' ? (
          <ProfileLength section={section} />
        ) : null}
      </td>
      <td>
        {'diameterMm' in section ? (
          <Diameter label={boreWords.diameterOf(number)} mm={section.diameterMm} take={set('diameterMm')} />
        ) : 'startDiameterMm' in section ? (
          <Diameter
            label={boreWords.startOf(number)}
            mm={section.startDiameterMm}
            take={set('startDiameterMm')}
          />
        ) : null}
      </td>
      <td>
        {'endDiameterMm' in section ? (
          <Diameter label={boreWords.endOf(number)} mm={section.endDiameterMm} take={set('endDiameterMm')} />
        ) : null}
      </td>
      <td className="further">
        <Further section={section} number={number} set={set} />
      </td>
      <td>
        <Actions label={boreWords.whatOf(number)} items={actionsOf(props)} />
      </td>
    </tr>
  )
})

function KindAndName({ designId, section, index }: SectionRowProps): ReactNode {
  const number = index + 1
  const options = [
    ...(section.kind === 'profile' ? [{ value: section.kind as string, text: boreWords.profileKind }] : []),
    ...addedKinds.map((kind) => ({ value: kind as string, text: boreWords.kinds[kind] })),
  ]
  return (
    <div className="kindAndName">
      <span className="soft">{number}</span>
      {section.kind === 'valves' ? (
        <b className="kind">{boreWords.kinds.valves}</b>
      ) : (
        <Choice
          label={boreWords.kindOf(number)}
          labelHidden
          value={section.kind}
          options={options}
          take={(kind) => runOrSay(changeSection(designId, index, changedKind(section, kind as AddedKind)))}
        />
      )}
      <TextField
        label={boreWords.nameOf(number)}
        labelHidden
        value={section.name ?? ''}
        placeholder={boreWords.name}
        take={(name) => tryRun(renameSection(designId, index, name))}
      />
    </div>
  )
}

interface DiameterProps {
  readonly label: string
  readonly mm: number
  readonly take: (mm: number) => string | null
}

function Diameter({ label, mm, take }: DiameterProps): ReactNode {
  return <LengthField label={label} labelHidden lengthMm={mm} digits={2} stepMm={0.1} width={6} take={take} />
}

function ProfileLength({ section }: { readonly section: DesignSection }): ReactNode {
  const unit = useSettings((settings) => settings.unit)
  return lengthFigure(sectionLengthMm(section), unit)
}

interface FurtherProps {
  readonly section: DesignSection
  readonly number: number
  readonly set: (field: SectionField) => (value: number) => string | null
}

function Further({ section, number, set }: FurtherProps): ReactNode {
  if (section.kind === 'profile') return boreWords.pointsOf(section.points.length)
  if (section.kind === 'cup')
    return (
      <NumberField
        label={boreWords.volumeOf(number)}
        labelHidden
        value={section.volumeMm3}
        digits={Number.isInteger(section.volumeMm3) ? 0 : 1}
        atLeast={0}
        units={['mm³', 'mm3']}
        unit={boreWords.volumeUnit}
        by={10}
        width={6}
        take={set('volumeMm3')}
      />
    )
  if (section.kind !== 'bell') return null
  return (
    <span className="flare">
      <i>{boreWords.flare}</i>
      <NumberField
        label={boreWords.flareOf(number)}
        labelHidden
        value={section.flare}
        digits={3}
        by={0.01}
        width={5}
        take={set('flare')}
      />
    </span>
  )
}

function actionsOf({ designId, section, index, last, refuse }: SectionRowProps): readonly Action[] {
  return [
    {
      text: boreWords.up,
      off: index === 0,
      act: () => refuse(tryRun(moveSection(designId, index, -1))),
    },
    {
      text: boreWords.down,
      off: index === last,
      act: () => refuse(tryRun(moveSection(designId, index, 1))),
    },
    ...addedKinds.map((kind) => ({
      text: boreWords.addAfter(boreWords.kinds[kind]),
      act: () => refuse(tryRun(addSection(designId, index + 1, newSection(kind, section)))),
    })),
    {
      text: boreWords.remove,
      off: section.kind === 'valves',
      act: () => refuse(tryRun(removeSection(designId, index))),
    },
  ]
}
