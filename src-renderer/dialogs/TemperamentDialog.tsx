import type { ReactNode } from 'react'
import { noteName } from '#shared/pitch/noteName.ts'
import { setTemperament } from '#shared/workbook/commands/workbookCommands.ts'
import { NumberField } from '../fields/NumberField.tsx'
import { tryRun } from '../fields/refusal.ts'
import { useSettings } from '../state/settings.ts'
import { useWorkbook } from '../state/workbookStore.ts'
import { temperamentWords as words } from '../words/dialogs.ts'
import { Dialog } from './Dialog.tsx'
import { DoneButton } from './DoneButton.tsx'
import { closeDialog } from './dialogStore.ts'

/** Twelve cents values, each the distance of a note from equal temperament. */
export function TemperamentDialog(): ReactNode {
  const temperament = useWorkbook((state) => state.workbook?.reference.temperament)
  const spelling = useSettings((settings) => settings.spelling)
  if (temperament?.kind !== 'custom') return null
  return (
    <Dialog title={words.title} onClose={closeDialog}>
      <p className="soft help">{words.text}</p>
      <div className="fields twelve">
        {temperament.cents.map((cents, i) => {
          const name = noteName(60 + i, spelling).replace('4', '')
          return (
            <NumberField
              key={name}
              label={name}
              value={cents}
              digits={2}
              units={['cents']}
              unit="cents"
              by={1}
              take={(value) =>
                tryRun(setTemperament({ kind: 'custom', cents: temperament.cents.with(i, value) }))
              }
            />
          )
        })}
      </div>
      <DoneButton />
    </Dialog>
  )
}
