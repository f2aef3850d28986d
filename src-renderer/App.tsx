import { type DragEvent, type ReactNode, Suspense, useEffect, useState } from 'react'
import { KeepingNotices } from './keeping/KeepingNotices.tsx'
import { arriving } from './look/arriving.ts'
import { FailureGuard } from './look/FailureGuard.tsx'
import { useFocusKept } from './look/useFocusKept.ts'
import { useMarkAllInFields } from './look/useMarkAllInFields.ts'
import { usePaneKeys } from './look/usePaneKeys.ts'
import { useThemeOnPage } from './look/useTheme.ts'
import { isTableFile, takeTableFile } from './loopsIn/loopsText.ts'
import { StartPage } from './start/StartPage.tsx'
import { takeDropped } from './state/fileActions.ts'
import { useForm } from './state/useForm.ts'
import { useWorkbook } from './state/workbookStore.ts'

// The start page is all that a cold start needs; the rest arrives while it is being read.
const workbench = arriving(() =>
  import('./Workbench.tsx').then(({ Workbench: component }) => ({ default: component })),
)
const dialogs = arriving(() =>
  import('./dialogs/Dialogs.tsx').then(({ Dialogs: component }) => ({ default: component })),
)

/** The window: start page, or strip, line-up, pages and tubing. */
export function App(): ReactNode {
  useThemeOnPage()
  useFocusKept()
  useMarkAllInFields()
  usePaneKeys()
  useEffect(() => {
    const waiting = requestIdleCallback(() => void Promise.all([workbench.load(), dialogs.load()]), {
      timeout: 500,
    })
    return () => cancelIdleCallback(waiting)
  }, [])
  const hasWorkbook = useWorkbook((state) => state.workbook !== null)
  const { dropping, ...drop } = useFileDrop()
  return (
    <div className={dropping ? 'window dropping' : 'window'} {...drop}>
      <FormLink />
      {hasWorkbook ? <KeepingNotices /> : null}
      <FailureGuard>
        <Suspense fallback={null}>{hasWorkbook ? <workbench.component /> : <StartPage />}</Suspense>
      </FailureGuard>
      <FailureGuard>
        <Suspense fallback={null}>
          <dialogs.component />
        </Suspense>
      </FailureGuard>
    </div>
  )
}

/** A part of its own, for it follows every change of the workbook and the rest of the window does not. */
function FormLink(): ReactNode {
  useForm()
  return null
}

/** Opens a workbook dropped on the window, and takes in a table of loops. */
function useFileDrop() {
  const [dropping, setDropping] = useState(false)
  const hasFiles = (event: DragEvent): boolean => event.dataTransfer.types.includes('Files')
  return {
    dropping,
    onDragOver: (event: DragEvent) => {
      if (!hasFiles(event)) return
      event.preventDefault()
      setDropping(true)
    },
    onDragLeave: (event: DragEvent) => {
      if (event.relatedTarget === null) setDropping(false)
    },
    onDrop: (event: DragEvent) => {
      setDropping(false)
      const file = event.dataTransfer.files[0]
      // What a page took for itself is not the window's.
      if (event.defaultPrevented || !hasFiles(event) || file === undefined) return
      event.preventDefault()
      if (isTableFile(file)) void takeTableFile(file)
      else void takeDropped(file)
    },
  }
}
