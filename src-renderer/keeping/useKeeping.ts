import { useEffect } from 'react'
import { writeWorkbook } from '#shared/workbook/writeWorkbook.ts'
import { bridge } from '../bridge/bridge.ts'
import { isDirty, useDirty, useFile } from '../state/fileActions.ts'
import { useWorkbook } from '../state/workbookStore.ts'
import { takeChange } from './changedFile.ts'
import { draftKeeper } from './draftKeeper.ts'
import { loadLeft, useRecovery } from './recovery.ts'

const keeper = draftKeeper(() => {
  const { workbook } = useWorkbook.getState()
  const { fileName } = useFile.getState()
  const draft =
    workbook !== null && isDirty()
      ? { name: workbook.name, text: writeWorkbook(workbook), keptAt: Date.now(), fileName }
      : null
  bridge.keepDraft(draft).then(
    () => useRecovery.setState({ cannotKeep: false }),
    () => useRecovery.setState({ cannotKeep: true }),
  )
})

/** Keeps unsaved work aside, asks for what was left behind, and hears when the file is changed elsewhere. */
export function useKeeping(): void {
  const workbook = useWorkbook((state) => state.workbook)
  const dirty = useDirty()
  // biome-ignore lint/correctness/useExhaustiveDependencies: a change of either is what has to be kept
  useEffect(() => keeper.changed(), [workbook, dirty])
  useEffect(() => void loadLeft(), [])
  useEffect(() => bridge.onFileChanged((change) => void takeChange(change)), [])
  useEffect(() => {
    // A browser may end a page that is out of sight without another word.
    const hide = (): void => {
      if (document.visibilityState === 'hidden') keeper.now()
    }
    document.addEventListener('visibilitychange', hide)
    return () => document.removeEventListener('visibilitychange', hide)
  }, [])
}
