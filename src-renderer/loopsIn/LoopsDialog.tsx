import { type ReactNode, useId, useMemo, useState } from 'react'
import { type LoopsTaken, strangers, takeLoops } from '#shared/workbook/commands/takeLoops.ts'
import { type LoopRefusal, readLoops } from '#shared/workbook/loopRows/readLoops.ts'
import type { Design } from '#shared/workbook/workbook.ts'
import { Dialog } from '../dialogs/Dialog.tsx'
import { closeDialog } from '../dialogs/dialogStore.ts'
import { Segments } from '../fields/Choice.tsx'
import { FileButton } from '../fields/FileButton.tsx'
import { tryRun } from '../fields/refusal.ts'
import '../look/out.css'
import { useSelectedDesign } from '../state/derived.ts'
import { useSettings } from '../state/settings.ts'
import { loopsInWords as words } from '../words/loopsIn.ts'
import { LoopsPreview } from './LoopsPreview.tsx'
import { readTableFile, useLoopsText } from './loopsText.ts'

/** Takes a table of loops into the selected design: pasted, or from a file; seen before it is taken. */
export function LoopsDialog(): ReactNode {
  const design = useSelectedDesign()?.design
  return design === undefined ? null : <LoopsInto design={design} />
}

function LoopsInto({ design }: { readonly design: Design }): ReactNode {
  const [text, setText] = useState(useLoopsText.getState().text)
  const [taken, setTaken] = useState<LoopsTaken>('added')
  const [trouble, setTrouble] = useState<string | null>(null)
  const unit = useSettings((settings) => settings.unit)
  const read = useMemo(() => {
    const found = readLoops(text, { valveIds: design.valves.map(({ id }) => id), unit })
    return { ...found, refusals: [...found.refusals, ...strangers(design, found.rows)] }
  }, [text, design, unit])
  const { rows, refusals, unread } = read
  const refusedLines = new Set(refusals.map(({ line }) => line))
  const accepted = rows.filter(({ line }) => !refusedLines.has(line))
  const isEmpty = text.trim() === ''
  const isSound = !isEmpty && refusals.length === 0
  const take = (): void => {
    const refused = tryRun(takeLoops(design.id, rows, taken))
    setTrouble(refused)
    if (refused === null) closeDialog()
  }
  const change = (next: string): void => {
    setText(next)
    setTrouble(null)
  }
  return (
    <Dialog title={words.title(design.name)} onClose={closeDialog} wide>
      <p className="soft help">{words.help}</p>
      <TextIn text={text} isRefused={!isEmpty && refusals.length > 0} take={change} />
      {isEmpty ? null : <Refusals refusals={refusals} />}
      {unread.length === 0 ? null : <p className="soft">{words.unread(unread)}</p>}
      {accepted.length === 0 ? null : <LoopsPreview rows={accepted} design={design} isWhole={isSound} />}
      {trouble === null ? null : (
        <p className="slip" role="alert">
          {trouble}
        </p>
      )}
      <div className="loopsInTake">
        <Segments
          label={words.others}
          value={taken}
          options={[
            { value: 'added', text: words.stay },
            { value: 'replaced', text: words.go },
          ]}
          take={setTaken}
        />
      </div>
      <div className="buttons">
        <button type="button" className="main" disabled={!isSound} onClick={take}>
          {words.take(isSound ? rows.length : 0)}
        </button>
        <button type="button" onClick={closeDialog}>
          {words.cancel}
        </button>
        {isEmpty || isSound ? null : <span className="soft">{words.mendFirst(refusedLines.size)}</span>}
      </div>
    </Dialog>
  )
}

interface TextInProps {
  readonly text: string
  readonly isRefused: boolean
  readonly take: (text: string) => void
}

/** A place to paste, and a file to take the text from. */
function TextIn({ text, isRefused, take }: TextInProps): ReactNode {
  const id = useId()
  const choose = async (file: File): Promise<void> => {
    const found = await readTableFile(file)
    if (found !== null) take(found)
  }
  return (
    <div className="loopsInText">
      <label htmlFor={id}>{words.paste}</label>
      <textarea
        id={id}
        rows={7}
        spellCheck={false}
        value={text}
        placeholder={words.example}
        aria-invalid={isRefused}
        onChange={(event) => take(event.target.value)}
      />
      <FileButton text={words.file} take={(file) => void choose(file)} />
    </div>
  )
}

/** No more refusals are listed one by one. */
const mostListed = 8

function Refusals({ refusals }: { readonly refusals: readonly LoopRefusal[] }): ReactNode {
  if (refusals.length === 0) return null
  const left = refusals.length - mostListed
  return (
    <div className="slip" role="alert">
      <b>{words.refusedTitle(refusals.length)}</b>
      <ul>
        {refusals.slice(0, mostListed).map((refusal) => (
          <li key={`${refusal.line} ${refusal.column}`}>{words.refused(refusal)}</li>
        ))}
        {left > 0 ? <li>{words.andMore(left)}</li> : null}
      </ul>
    </div>
  )
}
