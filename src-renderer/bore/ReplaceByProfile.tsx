import { type ReactNode, useState } from 'react'
import type { ReadProfile } from '#shared/bore/readProfile.ts'
import type { DesignSection } from '#shared/workbook/bore.ts'
import { replaceByProfile } from '#shared/workbook/commands/boreShapeCommands.ts'
import { Choice } from '../fields/Choice.tsx'
import { boreWords } from '../words/bore.ts'
import { ProfileEntry } from './ProfileEntry.tsx'
import { sectionName } from './sectionNames.ts'
import { TakeProfileButton } from './TakeProfileButton.tsx'

interface ReplaceByProfileProps {
  readonly designId: string
  readonly sections: readonly DesignSection[]
}

/** A measured profile in the place of some sections of a bore, or of all but its cup. */
export function ReplaceByProfile({ designId, sections }: ReplaceByProfileProps): ReactNode {
  return (
    <ProfileEntry>
      {(read) => <ReplaceWhich designId={designId} sections={sections} read={read} />}
    </ProfileEntry>
  )
}

function ReplaceWhich({
  designId,
  sections,
  read,
}: ReplaceByProfileProps & { readonly read: ReadProfile }): ReactNode {
  const [from, setFrom] = useState(sections[0]?.kind === 'cup' ? 1 : 0)
  const [to, setTo] = useState(sections.length - 1)
  const options = sections.map((_, i) => ({
    value: String(i),
    text: `${i + 1}: ${sectionName(sections, i)}`,
  }))
  const last = Math.min(Math.max(from, to), sections.length - 1)
  return (
    <div className="takeProfile">
      <Choice
        label={boreWords.replaceFrom}
        value={String(from)}
        options={options}
        take={(value) => setFrom(Number(value))}
      />
      <Choice
        label={boreWords.replaceTo}
        value={String(last)}
        options={options.slice(from)}
        take={(value) => setTo(Number(value))}
      />
      <TakeProfileButton
        text={boreWords.replaceByProfile}
        command={() => replaceByProfile(designId, from, last - from + 1, read.section)}
      />
    </div>
  )
}
