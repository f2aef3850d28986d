import type { ReactNode } from 'react'
import { firstSteps } from '../words/start.ts'
import { takeFirstStep } from './takeFirstStep.ts'

/** Three plain tasks, one for each kind of user. */
export function FirstStepList(): ReactNode {
  return (
    <ul className="firstSteps">
      {firstSteps.map(({ id, title, lead }) => (
        <li key={id}>
          <button type="button" onClick={() => takeFirstStep(id)}>
            <b>{title}</b>
            <span>{lead}</span>
          </button>
        </li>
      ))}
    </ul>
  )
}
