import type { ReactNode } from 'react'
import { onMac } from '../bridge/keyCommands.ts'
import { Dialog } from './Dialog.tsx'
import { closeDialog } from './dialogStore.ts'

const main = onMac ? '⌘' : 'Ctrl+'

const keys: readonly (readonly [string, string])[] = [
  [`${main}S, ${main}Shift+S`, 'save, save as'],
  [`${main}O`, 'open'],
  [`${main}Z, ${main}Shift+Z`, 'undo, redo'],
  ['← → ↑ ↓ in a chart', 'read the values; Enter shows the account'],
  ['← → on a loop’s bow', 'half a millimetre of tube; with Shift 5 mm, Page keys 10 mm'],
  ['↑ ↓ in a field', 'a step up or down; with Shift ten'],
  ['Alt+↑ ↓ on a design', 'move it in the line-up; F2 renames, Del deletes'],
  ['1 to 9, 0 beside the air', 'press a valve or let it up; 0 lets all of them up'],
  ['C on a fingering', 'choose it for its note'],
]

/** The signs and keys of the window. */
export function HelpDialog(): ReactNode {
  return (
    <Dialog title="Signs and keys" onClose={closeDialog}>
      <p>
        Cents are positive when a note is <b>sharp</b>. <b>Tube</b> is length along the centre line;{' '}
        <b>out</b> is how far a slide is moved, and each millimetre out adds two of tube. What you typed is
        bold, what follows from it is light.
      </p>
      <p>
        A field takes <code>2*62.5 + pi*19</code>, <code>2 ft 9 in</code>, <code>1 3/16 in</code>,{' '}
        <code>12,5 mm</code>.
      </p>
      <dl className="keys">
        {keys.map(([key, what]) => (
          <div key={key}>
            <dt>{key}</dt>
            <dd>{what}</dd>
          </div>
        ))}
      </dl>
      <div className="buttons">
        <button type="button" className="main" onClick={closeDialog}>
          Close
        </button>
      </div>
    </Dialog>
  )
}
