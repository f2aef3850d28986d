import { type ReactNode, useState } from 'react'
import { boreLengthMm } from '#shared/bore/checkBore.ts'
import type { ReadProfile } from '#shared/bore/readProfile.ts'
import { type StartingBore, startingBores } from '#shared/bore/startingBores.ts'
import { lengthText } from '#shared/quantity/figures.ts'
import { startBore } from '#shared/workbook/commands/boreCommands.ts'
import { LengthField } from '../fields/LengthField.tsx'
import type { DerivedDesign } from '../state/derived.ts'
import { useSettings } from '../state/settings.ts'
import { run } from '../state/workbookStore.ts'
import { boreWords } from '../words/bore.ts'
import { drawnBore } from './drawingScale.ts'
import { ProfileEntry } from './ProfileEntry.tsx'
import { setMeasuredBore, usualValvesMm } from './profileBore.ts'
import { TakeProfileButton } from './TakeProfileButton.tsx'

/** Stands where a design has no bore: bores to start from, and a place for a measured one. */
export function EmptyBore({ derived }: { readonly derived: DerivedDesign }): ReactNode {
  const { id, name } = derived.design
  return (
    <div className="emptyBore">
      <div className="caption">
        <h1>{boreWords.emptyTitle}</h1>
        <span className="soft captionOf">{boreWords.ofDesign(name)}</span>
      </div>
      <p>{boreWords.emptyText}</p>
      <h2>{boreWords.startFrom}</h2>
      <p className="soft">{boreWords.startText}</p>
      <div className="startingBores">
        {startingBores.map((bore) => (
          <Starting key={bore.id} bore={bore} take={() => run(startBore(id, bore))} />
        ))}
      </div>
      <h2>{boreWords.measured}</h2>
      <ProfileEntry>{(read) => <TakeProfile designId={id} read={read} />}</ProfileEntry>
    </div>
  )
}

const drawingPx = 230
const lowestShareOfLow = boreLengthMm(startingBores.at(-1)?.sections ?? [])

function Starting({ bore, take }: { readonly bore: StartingBore; readonly take: () => void }): ReactNode {
  const unit = useSettings((settings) => settings.unit)
  const lengthMm = boreLengthMm(bore.sections)
  // All three at one scale, so that they can be told by their size.
  const width = 32 + (drawingPx - 32) * Math.min(1, lengthMm / lowestShareOfLow)
  const drawn = drawnBore(bore.sections, width, false)
  const half = drawn.mouthHalfPx + 2
  return (
    <button type="button" className="startingBore" onClick={take}>
      <svg
        width={drawingPx}
        height="34"
        viewBox={`0 ${drawn.axisPx - 17} ${drawingPx} 34`}
        aria-hidden="true"
      >
        <path className="centre" d={`M0 ${drawn.axisPx}H${width}`} />
        <path className="wall" d={drawn.upper} />
        <path className="wall" d={drawn.lower} />
        <path className="centre" d={`M${width - 14} ${drawn.axisPx - half}v${2 * half}`} />
      </svg>
      <b>{boreWords.startingBores[bore.id]}</b>
      <span className="soft">{boreWords.startLength(lengthText(lengthMm, unit, 0))}</span>
    </button>
  )
}

function TakeProfile({
  designId,
  read: { section },
}: {
  readonly designId: string
  readonly read: ReadProfile
}): ReactNode {
  const [typedMm, setTypedMm] = useState<number | null>(null)
  const valvesMm = typedMm ?? usualValvesMm(section)
  return (
    <div className="takeProfile">
      <LengthField
        label={boreWords.valvesAt}
        derived={typedMm === null}
        lengthMm={valvesMm}
        stepMm={1}
        take={(mm) => {
          setTypedMm(mm)
          return null
        }}
      />
      <TakeProfileButton
        isMain
        text={boreWords.takeProfile}
        command={() => setMeasuredBore(designId, section, valvesMm)}
      />
    </div>
  )
}
