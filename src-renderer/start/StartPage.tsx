import { type ReactNode, useEffect, useState } from 'react'
import type { RecentWorkbook } from '#shared/bridge/bridge.ts'
import { examples } from '#shared/workbook/examples/examples.ts'
import { bridge } from '../bridge/bridge.ts'
import { useDialog } from '../dialogs/dialogStore.ts'
import { LeftWork } from '../keeping/LeftWork.tsx'
import { openByDialog, openRecent } from '../state/fileActions.ts'
import { startWords as words } from '../words/start.ts'
import { FirstSteps } from './FirstSteps.tsx'
import { openExample } from './readExample.ts'

/** What stands when nothing is open: new, open, lately used, examples, and work that a crash left behind. */
export function StartPage(): ReactNode {
  return (
    <main className="start">
      <div className="startSheet">
        <h1>{words.program}</h1>
        <p className="lead">{words.lead}</p>
        <LeftWork />
        <FirstSteps />
        <div className="startColumns">
          <section aria-labelledby="begin">
            <h2 id="begin">{words.begin}</h2>
            <button
              type="button"
              className="main"
              onClick={() => useDialog.setState({ open: 'newWorkbook' })}
            >
              {words.newWorkbook}
            </button>
            <p className="soft">{words.newHint}</p>
            <button type="button" onClick={openByDialog}>
              {words.open}
            </button>
            <p className="soft">{words.openHint}</p>
            <Recent />
          </section>
          <section aria-labelledby="examples">
            <h2 id="examples">{words.examples}</h2>
            <ul className="examples">
              {examples.map((example) => (
                <li key={example.id}>
                  <button type="button" onClick={() => void openExample(example)}>
                    <b>{example.title}</b>
                    <span>{example.description}</span>
                  </button>
                </li>
              ))}
            </ul>
          </section>
        </div>
      </div>
    </main>
  )
}

function Recent(): ReactNode {
  const [recent, setRecent] = useState<readonly RecentWorkbook[]>([])
  useEffect(() => {
    void bridge.recentWorkbooks().then(setRecent)
  }, [])
  if (recent.length === 0) return null
  return (
    <>
      <h2>{words.lately}</h2>
      <ul className="recent">
        {recent.map(({ id, name, place }) => (
          <li key={id}>
            <button type="button" onClick={() => openRecent(id)}>
              <b>{name}</b> <span className="soft">{place}</span>
            </button>
          </li>
        ))}
      </ul>
    </>
  )
}
