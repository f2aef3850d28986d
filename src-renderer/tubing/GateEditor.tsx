import type { ReactNode } from 'react'
import { gateWords } from '#shared/valves/gate.ts'
import type { Gate, Loop } from '#shared/valves/loop.ts'
import type { Valve } from '#shared/valves/valve.ts'
import { Mark } from '../help/Mark.tsx'
import { gateEditorWords as words } from '../words/tubing.ts'

interface GateEditorProps {
  readonly loop: Loop
  readonly valves: readonly Valve[]
  readonly take: (gate: Gate) => void
}

type Want = 'down' | 'either' | 'up'

const wants: readonly Want[] = ['down', 'either', 'up']

/** What each valve must do for the air to run through the loop: down, up, or either. */
export function GateEditor({ loop, valves, take }: GateEditorProps): ReactNode {
  const change = (valveId: string, want: Want): void => {
    const pressed = valves.map(({ id }) => id).filter((id) => wanted(loop, id, valveId, want) === 'down')
    const released = valves.map(({ id }) => id).filter((id) => wanted(loop, id, valveId, want) === 'up')
    take({ pressed, released })
  }
  return (
    <fieldset className="gateEditor">
      <legend>
        {words.runsWith} <b>{gateWords(loop)}</b>{' '}
        <Mark id={loop.pressed.length > 1 ? 'compensating' : 'gate'} />
      </legend>
      {valves.map(({ id }) => (
        <div key={id} className="gateValve" role="radiogroup" aria-label={words.valve(id)}>
          <span className="valveName">{id}</span>
          {wants.map((want) => (
            <label key={want} className={wantOf(loop, id) === want ? `want on ${want}` : 'want'}>
              <input
                type="radio"
                className="unseen"
                name={`gate ${loop.id} ${id}`}
                checked={wantOf(loop, id) === want}
                onChange={() => change(id, want)}
              />
              {words.wants[want]}
            </label>
          ))}
        </div>
      ))}
    </fieldset>
  )
}

function wantOf(loop: Gate, valveId: string): Want {
  if (loop.pressed.includes(valveId)) return 'down'
  return loop.released?.includes(valveId) ? 'up' : 'either'
}

function wanted(loop: Gate, valveId: string, changedId: string, want: Want): Want {
  return valveId === changedId ? want : wantOf(loop, valveId)
}
