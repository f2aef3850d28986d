import { type ComponentType, type ReactNode, Suspense } from 'react'
import { onMac } from '../bridge/keyCommands.ts'
import { Segments } from '../fields/Choice.tsx'
import { type HelpPart, useHelp } from '../help/helpStore.ts'
import { arriving } from '../look/arriving.ts'
import { helpKeys, helpWords } from '../words/help.ts'
import { Dialog } from './Dialog.tsx'
import { closeDialog } from './dialogStore.ts'

const keys = helpKeys(onMac ? '⌘' : 'Ctrl+')

const loadParts = () => import('../help/HelpParts.tsx')
const arrivingParts = {
  steps: arriving(() => loadParts().then(({ Steps }) => ({ default: Steps }))),
  words: arriving(() => loadParts().then(({ Words }) => ({ default: Words }))),
  formulas: arriving(() => loadParts().then(({ Formulas }) => ({ default: Formulas }))),
}
const parts: Readonly<Record<HelpPart, ComponentType>> = {
  keys: SignsAndKeys,
  steps: arrivingParts.steps.component,
  words: arrivingParts.words.component,
  formulas: arrivingParts.formulas.component,
}

/** Fetches the help's parts ahead of their being shown. */
export async function loadHelp(): Promise<void> {
  await Promise.all(Object.values(arrivingParts).map(({ load }) => load()))
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
