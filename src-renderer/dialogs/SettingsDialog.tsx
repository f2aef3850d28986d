import type { ReactNode } from 'react'
import { Segments } from '../fields/Choice.tsx'
import { useSettings } from '../state/settings.ts'
import { settingsWords as words } from '../words/dialogs.ts'
import { Dialog } from './Dialog.tsx'
import { DoneButton } from './DoneButton.tsx'
import { closeDialog } from './dialogStore.ts'

/** What a person sets once: unit, spelling, theme. */
export function SettingsDialog(): ReactNode {
  const { unit, spelling, theme } = useSettings()
  return (
    <Dialog title={words.title} onClose={closeDialog}>
      <div className="settings">
        <Segments
          label={words.unit}
          value={unit}
          options={[
            { value: 'mm', text: words.units.mm },
            { value: 'in', text: words.units.in },
          ]}
          take={(value) => useSettings.setState({ unit: value })}
        />
        <Segments
          label={words.spelling}
          value={spelling}
          options={[
            { value: 'flats', text: words.spellings.flats },
            { value: 'sharps', text: words.spellings.sharps },
          ]}
          take={(value) => useSettings.setState({ spelling: value })}
        />
        <Segments
          label={words.theme}
          value={theme}
          options={[
            { value: 'system', text: words.themes.system },
            { value: 'light', text: words.themes.light },
            { value: 'dark', text: words.themes.dark },
          ]}
          take={(value) => useSettings.setState({ theme: value })}
        />
      </div>
      <DoneButton />
    </Dialog>
  )
}
