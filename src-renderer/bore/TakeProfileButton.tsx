import { type ReactNode, useState } from 'react'
import type { Command } from '#shared/workbook/commands/command.ts'
import { tryRun } from '../fields/refusal.ts'
import { clearProfileText } from './boreStore.ts'

interface TakeProfileButtonProps {
  readonly text: string
  readonly isMain?: boolean
  /** Takes the profile as it is then. */
  readonly command: () => Command
}

/** Takes a measured profile into the workbook, after which there is nothing more to type of it; or says why it cannot. */
export function TakeProfileButton({ text, isMain = false, command }: TakeProfileButtonProps): ReactNode {
  const [message, setMessage] = useState<string | null>(null)
  return (
    <>
      <button
        type="button"
        className={isMain ? 'main' : undefined}
        onClick={() => {
          const refused = tryRun(command())
          setMessage(refused)
          if (refused === null) clearProfileText()
        }}
      >
        {text}
      </button>
      {message === null ? null : (
        <p className="slip" role="alert">
          {message}
        </p>
      )}
    </>
  )
}
