import { type ReactNode, useEffect, useRef } from 'react'
import { FirstStepList } from '../start/FirstStepList.tsx'
import { formulaEntry, formulas } from '../words/formulas.ts'
import { glossary } from '../words/glossary.ts'
import { helpWords } from '../words/help.ts'
import { Formula } from './Explanation.tsx'
import { FormulaText } from './FormulaText.tsx'
import { useHelp } from './helpStore.ts'
import './help.css'

/** Brings the entry that the help was opened for into sight. */
function useEntryInSight() {
  const list = useRef<HTMLDListElement>(null)
  useEffect(() => {
    list.current?.querySelector('.on')?.scrollIntoView({ block: 'center' })
  }, [])
  return list
}

/** The words of the trade by their alphabet, each with its formulas. */
export function Words(): ReactNode {
  const at = useHelp((state) => state.at)
  const list = useEntryInSight()
  return (
    <dl className="helpList helpWords" ref={list}>
      {glossary.map(({ id, word, meaning, formulas: own = [] }) => (
        <div key={id} className={id === at ? 'on' : undefined}>
          <dt>{word}</dt>
          <dd>{meaning}</dd>
          {own.flatMap((formula) => {
            const entry = formulaEntry(formula)
            return entry === undefined
              ? []
              : [
                  <dd key={formula}>
                    <FormulaText formula={entry.formula} />
                  </dd>,
                ]
          })}
        </div>
      ))}
    </dl>
  )
}

/** Every formula with its meaning and source. */
export function Formulas(): ReactNode {
  const at = useHelp((state) => state.at)
  const list = useEntryInSight()
  return (
    <dl className="helpList" ref={list}>
      {formulas.map((entry) => (
        <div key={entry.id} className={entry.id === at ? 'on' : undefined}>
          <dt>{entry.title}</dt>
          <dd>
            <Formula entry={entry} />
          </dd>
        </div>
      ))}
    </dl>
  )
}

/** The tasks of a first run, whenever they are wanted again. */
export function Steps(): ReactNode {
  return (
    <>
      <p>{helpWords.stepsLead}</p>
      <FirstStepList />
    </>
  )
}
