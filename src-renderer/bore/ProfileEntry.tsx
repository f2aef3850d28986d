import { type DragEvent, type ReactNode, useDeferredValue, useId, useMemo, useState } from 'react'
import { sectionLengthMm } from '#shared/bore/checkBore.ts'
import { type ReadProfile, readProfile } from '#shared/bore/readProfile.ts'
import { lengthText } from '#shared/quantity/figures.ts'
import { mostBytes } from '#shared/workbook/fileLimit.ts'
import { decodeUtf8 } from '../bridge/decodeUtf8.ts'
import { Segments } from '../fields/Choice.tsx'
import { FileButton } from '../fields/FileButton.tsx'
import { useSettings } from '../state/settings.ts'
import { boreWords } from '../words/bore.ts'
import { useProfileText } from './boreStore.ts'

interface ProfileEntryProps {
  /** What can be done with a profile that was read. */
  readonly children: (read: ReadProfile) => ReactNode
}

/** A field with a longer text than this is slow to lay out: the text is held beside it, characters. */
const mostShown = 60_000

const setText = (text: string): void => useProfileText.setState({ text })

/** A place to paste, open or drop a measured profile; says how it was understood, or which line was not. */
export function ProfileEntry({ children }: ProfileEntryProps): ReactNode {
  const { text, readIn: unit } = useProfileText()
  const [trouble, setTrouble] = useState<string | null>(null)
  const id = useId()
  const isLong = text.length > mostShown
  const settled = useDeferredValue(text)
  const result = useMemo(
    () => (settled.trim() === '' ? null : readProfile(settled, unit === 'auto' ? undefined : unit)),
    [settled, unit],
  )
  const take = (file: File): void => {
    void textOf(file).then((answer) => {
      setTrouble('message' in answer ? answer.message : null)
      if ('text' in answer) setText(answer.text)
    })
  }
  const message = trouble ?? (result === null || result.ok ? null : refusalWords(result.refusal))
  return (
    <div className="profileEntry" {...fileDrop(take)}>
      <p className="soft">{boreWords.profileText}</p>
      <label htmlFor={id}>{boreWords.profileLabel}</label>
      <textarea
        id={id}
        rows={6}
        spellCheck={false}
        value={isLong ? '' : text}
        placeholder={isLong ? boreWords.heldAside(text.length) : undefined}
        onPaste={(event) => {
          const pasted = event.clipboardData.getData('text/plain')
          if (pasted.length <= mostShown) return
          event.preventDefault()
          setTrouble(null)
          setText(pasted)
        }}
        aria-invalid={message !== null}
        aria-describedby={message === null ? undefined : `${id}-message`}
        onChange={(event) => {
          setTrouble(null)
          setText(event.target.value)
        }}
      />
      <div className="profileTools">
        <FileButton text={boreWords.openFile} take={take} />
        <Segments
          label={boreWords.profileUnit}
          value={unit}
          options={[
            { value: 'auto', text: boreWords.profileUnits.auto },
            { value: 'mm', text: boreWords.profileUnits.mm },
            { value: 'in', text: boreWords.profileUnits.in },
          ]}
          take={(next) => useProfileText.setState({ readIn: next })}
        />
      </div>
      {message === null ? null : (
        <p className="slip" role="alert" id={`${id}-message`}>
          {message}
        </p>
      )}
      {message !== null || result === null || !result.ok ? null : (
        <>
          <Understood read={result.value} />
          {children(result.value)}
        </>
      )}
    </div>
  )
}

function refusalWords(refusal: { readonly path: string; readonly found: string; readonly expected: string }) {
  const found = refusal.found.length > 60 ? `${refusal.found.slice(0, 60)}…` : refusal.found
  return boreWords.profileRefused(refusal.path, found, refusal.expected)
}

function Understood({ read }: { readonly read: ReadProfile }): ReactNode {
  const unit = useSettings((settings) => settings.unit)
  const { section, separator, headerLines, radii } = read
  const widestMm = section.points.reduce((most, [, diameter]) => Math.max(most, diameter), 0)
  return (
    <p role="status">
      {boreWords.profileRead(
        section.points.length,
        lengthText(sectionLengthMm(section), unit),
        lengthText(widestMm, unit),
        read.unit,
        separator,
        headerLines,
        radii,
      )}
    </p>
  )
}

/** Takes a file that is dropped; workbooks are left to the window. */
function fileDrop(take: (file: File) => void) {
  return {
    onDrop: (event: DragEvent): void => {
      const file = event.dataTransfer.files[0]
      if (file === undefined || /\.(ferrule|json)$/i.test(file.name)) return
      event.preventDefault()
      take(file)
    },
  }
}

async function textOf(file: File): Promise<{ readonly text: string } | { readonly message: string }> {
  if (file.size > mostBytes) return { message: boreWords.fileTooLarge(file.name) }
  const content = await file.arrayBuffer().catch(() => null)
  const text = content === null ? null : decodeUtf8(content)
  return text === null ? { message: boreWords.fileNotRead(file.name) } : { text }
}
