import type { ReactNode } from 'react'
import { Segments } from '../fields/Choice.tsx'
import { useSettings } from '../state/settings.ts'
import { Dialog } from './Dialog.tsx'
import { DoneButton } from './DoneButton.tsx'
import { closeDialog } from './dialogStore.ts'

/** What a person sets once: unit, spelling, theme. */
export function SettingsDialog(): ReactNode {
  const { unit, spelling, theme } = useSettings()
  return (
    <Dialog title="Settings" onClose={closeDialog}>
      <div className="settings">
        <Segments
          label="Lengths in"
          value={unit}
          options={[
            { value: 'mm', text: 'millimetres' },
            { value: 'in', text: 'inches' },
          ]}
          take={(value) => useSettings.setState({ unit: value })}
        />
        <Segments
          label="Black keys as"
          value={spelling}
          options={[
            { value: 'flats', text: 'flats' },
            { value: 'sharps', text: 'sharps' },
          ]}
          take={(value) => useSettings.setState({ spelling: value })}
        />
        <Segments
          label="Theme"
          value={theme}
          options={[
            { value: 'system', text: 'as the system' },
            { value: 'light', text: 'light' },
            { value: 'dark', text: 'dark' },
          ]}
          take={(value) => useSettings.setState({ theme: value })}
        />
      </div>
      <DoneButton />
    </Dialog>
  )
}
