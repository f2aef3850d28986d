import { lazy, type ReactNode, Suspense } from 'react'
import { FindDialog } from '../find/FindDialog.tsx'
import { CompareDialog } from '../keeping/CompareDialog.tsx'
import { LeftWorkDialog } from '../keeping/LeftWorkDialog.tsx'
import { AirDialog } from './AirDialog.tsx'
import { useDialog } from './dialogStore.ts'
import { HelpDialog } from './HelpDialog.tsx'
import { ChangeSystem, NewDesign } from './NewDesign.tsx'
import { TroubleDialog, UnsavedDialog } from './Questions.tsx'
import { SettingsDialog } from './SettingsDialog.tsx'
import { TemperamentDialog } from './TemperamentDialog.tsx'

const LoopsDialog = lazy(() =>
  import('../loopsIn/LoopsDialog.tsx').then(({ LoopsDialog: dialog }) => ({ default: dialog })),
)
const ReportDialog = lazy(() =>
  import('../report/ReportDialog.tsx').then(({ ReportDialog: dialog }) => ({ default: dialog })),
)

/** Whichever dialog is open. */
export function Dialogs(): ReactNode {
  const open = useDialog((state) => state.open)
  return (
    <>
      {open === 'newWorkbook' ? <NewDesign inNewWorkbook /> : null}
      {open === 'newDesign' ? <NewDesign inNewWorkbook={false} /> : null}
      {open === 'changeSystem' ? <ChangeSystem /> : null}
      {open === 'air' ? <AirDialog /> : null}
      {open === 'temperament' ? <TemperamentDialog /> : null}
      {open === 'settings' ? <SettingsDialog /> : null}
      {open === 'help' ? <HelpDialog /> : null}
      {open === 'find' ? <FindDialog /> : null}
      {open === 'leftWork' ? <LeftWorkDialog /> : null}
      <CompareDialog />
      <Suspense fallback={null}>
        {open === 'loops' ? <LoopsDialog /> : null}
        {open === 'report' ? <ReportDialog /> : null}
      </Suspense>
      <UnsavedDialog />
      <TroubleDialog />
    </>
  )
}
