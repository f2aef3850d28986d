import { type ReactNode, Suspense, useEffect } from 'react'
import { FindDialog } from '../find/FindDialog.tsx'
import { CompareDialog } from '../keeping/CompareDialog.tsx'
import { LeftWorkDialog } from '../keeping/LeftWorkDialog.tsx'
import { arriving } from '../look/arriving.ts'
import { useWorkbook } from '../state/workbookStore.ts'
import { AirDialog } from './AirDialog.tsx'
import { useDialog } from './dialogStore.ts'
import { HelpDialog, loadHelp } from './HelpDialog.tsx'
import { ChangeSystem, NewDesign } from './NewDesign.tsx'
import { TroubleDialog, UnsavedDialog } from './Questions.tsx'
import { SettingsDialog } from './SettingsDialog.tsx'
import { TemperamentDialog } from './TemperamentDialog.tsx'

const loops = arriving(() =>
  import('../loopsIn/LoopsDialog.tsx').then(({ LoopsDialog: dialog }) => ({ default: dialog })),
)
const report = arriving(() =>
  import('../report/ReportDialog.tsx').then(({ ReportDialog: dialog }) => ({ default: dialog })),
)

/** Whichever dialog is open. The larger ones arrive once there is a workbook and nothing else to do. */
export function Dialogs(): ReactNode {
  const open = useDialog((state) => state.open)
  const hasWorkbook = useWorkbook((state) => state.workbook !== null)
  useEffect(() => {
    if (!hasWorkbook) return
    const waiting = requestIdleCallback(() => void Promise.all([loops.load(), report.load(), loadHelp()]))
    return () => cancelIdleCallback(waiting)
  }, [hasWorkbook])
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
        {open === 'loops' ? <loops.component /> : null}
        {open === 'report' ? <report.component /> : null}
      </Suspense>
      <UnsavedDialog />
      <TroubleDialog />
    </>
  )
}
