import type { ReactNode } from 'react'
import { type FormulaEntry, formulaEntry } from '../words/formulas.ts'
import { glossaryWord } from '../words/glossary.ts'
import { helpWords } from '../words/help.ts'
import { FormulaText } from './FormulaText.tsx'
import { openHelp } from './helpStore.ts'
import './help.css'

interface ExplanationProps {
  /** Of a word of the glossary or of a formula. */
  readonly id: string
  readonly onLeave: () => void
}

/** A word in a few lines, and the formulas that reckon it, each with its source. */
export function Explanation({ id, onLeave }: ExplanationProps): ReactNode {
  const word = glossaryWord(id)
  const entries = (word === undefined ? [id] : (word.formulas ?? [])).flatMap(
    (each) => formulaEntry(each) ?? [],
  )
  const toHelp = (): void => {
    onLeave()
    // The popover gives the focus back first.
    setTimeout(() => openHelp(word === undefined ? 'formulas' : 'words', id))
  }
  return (
    <>
      {word === undefined ? null : (
        <p>
          <b>{word.word}.</b> {word.meaning}
        </p>
      )}
      {entries.map((entry) => (
        <Formula key={entry.id} entry={entry} />
      ))}
      <button type="button" className="quiet" onClick={toHelp}>
        {helpWords.allWords}
      </button>
    </>
  )
}

/** A formula, what it means, and its source. */
export function Formula({ entry }: { readonly entry: FormulaEntry }): ReactNode {
  return (
    <div className="formula">
      <p className="formulaText">
        <FormulaText formula={entry.formula} />
      </p>
      <p>{entry.meaning}</p>
      <p className="soft">
        {helpWords.source} {entry.source}
      </p>
    </div>
  )
}
