import { memo, type ReactNode, useState } from 'react'
import { boreLengthMm } from '#shared/bore/checkBore.ts'
import { lengthText } from '#shared/quantity/figures.ts'
import type { DesignSection } from '#shared/workbook/bore.ts'
import { addSection, setBore } from '#shared/workbook/commands/boreCommands.ts'
import { Actions } from '../fields/Actions.tsx'
import { Fold } from '../fields/Fold.tsx'
import { tryRun } from '../fields/refusal.ts'
import { useSettings } from '../state/settings.ts'
import { run } from '../state/workbookStore.ts'
import { sectionsTable } from '../tables/boreTables.ts'
import { TableOut } from '../tables/TableOut.tsx'
import { boreWords } from '../words/bore.ts'
import { boreTitles } from '../words/tableHeadings.ts'
import { addedKinds, newSection } from './newSection.ts'
import { ReplaceByProfile } from './ReplaceByProfile.tsx'
import { SectionRow } from './SectionRow.tsx'

interface SectionListProps {
  readonly designId: string
  readonly designName: string
  readonly sections: readonly DesignSection[]
}

/** The bore's sections from the lips to the bell, each with its dimensions. */
export const SectionList = memo(function SectionList(props: SectionListProps): ReactNode {
  const { designId, designName, sections } = props
  const unit = useSettings((settings) => settings.unit)
  const [message, setMessage] = useState<string | null>(null)
  return (
    <div className="boreSections">
      <div className="tableScroll">
        <table className="figures sectionTable">
          <caption>{boreWords.sections}</caption>
          <thead>
            <tr>
              <th scope="col">{boreWords.section}</th>
              <th scope="col">
                {boreWords.length}, {unit}
              </th>
              <th scope="col">
                {boreWords.diameter}, {unit}
              </th>
              <th scope="col">{boreWords.atEnd}</th>
              <th scope="col">{boreWords.further}</th>
              <th scope="col">
                <span className="unseen">{boreWords.actions}</span>
              </th>
            </tr>
          </thead>
          <tbody>
            {sections.map((section, index) => (
              <SectionRow
                // biome-ignore lint/suspicious/noArrayIndexKey: a section is known by its place
                key={index}
                designId={designId}
                section={section}
                index={index}
                last={sections.length - 1}
                refuse={setMessage}
              />
            ))}
          </tbody>
        </table>
      </div>
      {message === null ? null : (
        <p className="slip" role="alert">
          {message}
        </p>
      )}
      <div className="sectionsFoot">
        <p className="soft">{boreWords.total(lengthText(boreLengthMm(sections), unit))}</p>
        <TableOut
          name={boreTitles.sections(designName)}
          table={() => sectionsTable(designName, sections, unit)}
        />
      </div>
      <p className="rowButtons">
        <Actions
          label={boreWords.addSection}
          text={boreWords.addSection}
          items={addedKinds.map((kind) => ({
            text: boreWords.kinds[kind],
            act: () =>
              setMessage(tryRun(addSection(designId, sections.length, newSection(kind, sections.at(-1))))),
          }))}
        />
        <button type="button" className="quiet" onClick={() => run(setBore(designId, undefined))}>
          {boreWords.deleteBore}
        </button>
      </p>
      <Fold title={boreWords.measuredHere} hint={boreWords.measuredHint}>
        {() => <ReplaceByProfile designId={designId} sections={sections} />}
      </Fold>
    </div>
  )
})
