import { type ComponentType, lazy, type ReactNode, Suspense } from 'react'
import { onMac } from '../bridge/keyCommands.ts'
import { Segments } from '../fields/Choice.tsx'
import { type HelpPart, useHelp } from '../help/helpStore.ts'
import { helpWords } from '../words/help.ts'
import { Dialog } from './Dialog.tsx'
import { closeDialog } from './dialogStore.ts'

const main = onMac ? '⌘' : 'Ctrl+'

const keys: readonly (readonly [string, string])[] = [
  [`${main}K`, 'find anything: fields, designs, notes, commands, words'],
  [`${main}S, ${main}Shift+S`, 'save, save as'],
  [`${main}O`, 'open'],
  [`${main}Z, ${main}Shift+Z`, 'undo, redo'],
  ['← → ↑ ↓ in a chart', 'read the values; Enter shows the account'],
  ['← → on a loop’s bow', 'half a millimetre of tube; with Shift 5 mm, Page keys 10 mm'],
  ['↑ ↓ in a field', 'a step up or down; with Shift ten'],
  ['Alt+↑ ↓ on a design', 'move it in the line-up; F2 renames, Del deletes'],
  ['1 to 9, 0 beside the air', 'press a valve or let it up; 0 lets all of them up'],
  ['C, L on a fingering', 'choose it for its note, listen to it'],
  ['Esc', 'silence, whatever sounds'],
]

const loadParts = () => import('../help/HelpParts.tsx')
const parts: Readonly<Record<HelpPart, ComponentType>> = {
  keys: SignsAndKeys,
  steps: lazy(() => loadParts().then(({ Steps }) => ({ default: Steps }))),
  words: lazy(() => loadParts().then(({ Words }) => ({ default: Words }))),
  formulas: lazy(() => loadParts().then(({ Formulas }) => ({ default: Formulas }))),
}

const partOptions = (Object.keys(helpWords.parts) as HelpPart[]).map((value) => ({
  value,
  text: helpWords.parts[value],
}))

/** First steps, signs and keys, the words of the trade, the formulas with their sources. */
export function HelpDialog(): ReactNode {
  const part = useHelp((state) => state.part)
  const Part = parts[part]
  return (
    <Dialog title={helpWords.title} onClose={closeDialog} wide>
      <Segments
        label={helpWords.partsLabel}
        labelHidden
        value={part}
        options={partOptions}
        take={(value) => useHelp.setState({ part: value, at: null })}
      />
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: it is longer than its place, and scrolled by keys */}
      <section className="helpPart" aria-label={helpWords.parts[part]} tabIndex={0}>
        <Suspense fallback={null}>
          <Part />
        </Suspense>
      </section>
      <div className="buttons">
        <button type="button" className="main" onClick={closeDialog}>
          {helpWords.close}
        </button>
      </div>
    </Dialog>
  )
}

function SignsAndKeys(): ReactNode {
  return (
    <>
      <p>{helpWords.signs}</p>
      <p>{helpWords.typed}</p>
      <dl className="keys">
        {keys.map(([key, what]) => (
          <div key={key}>
            <dt>{key}</dt>
            <dd>{what}</dd>
          </div>
        ))}
      </dl>
    </>
  )
}
