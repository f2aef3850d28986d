import type { MenuCommand } from '#shared/bridge/bridge.ts'
import type { BenchList } from '#shared/workbook/bench.ts'
import { useBench } from '../bench/benchStore.ts'
import { startNewJob } from '../bench/newJobActions.ts'
import { keysOf } from '../bridge/keysOf.ts'
import { useDialog } from '../dialogs/dialogStore.ts'
import { openHelp } from '../help/helpStore.ts'
import { stopListening } from '../listen/listenActions.ts'
import { useListen } from '../listen/listenStore.ts'
import { pages } from '../pages/pages.ts'
import { useSettings } from '../state/settings.ts'
import { commands } from '../state/useForm.ts'
import { useView } from '../state/viewStore.ts'
import { useWorkbook } from '../state/workbookStore.ts'
import { findWords as words } from '../words/find.ts'
import type { Item } from './item.ts'

type CommandName = keyof typeof words.commands

function command(name: CommandName, act: () => void, keys?: string): Item {
  return { kind: 'command', name: words.commands[name], act, keys }
}

function menuItem(name: MenuCommand & CommandName): Item {
  return command(name, commands[name], keysOf(name))
}

const always: readonly Item[] = [
  ...(['new', 'open', 'help'] as const).map(menuItem),
  command('settings', commands.settings),
  command('firstSteps', () => openHelp('steps')),
  command('signsAndKeys', () => openHelp('keys')),
  command('words', () => openHelp('words')),
  command('formulas', () => openHelp('formulas')),
  command('millimetres', () => useSettings.setState({ unit: 'mm' })),
  command('inches', () => useSettings.setState({ unit: 'in' })),
  command('flats', () => useSettings.setState({ spelling: 'flats' })),
  command('sharps', () => useSettings.setState({ spelling: 'sharps' })),
  command('light', () => useSettings.setState({ theme: 'light' })),
  command('dark', () => useSettings.setState({ theme: 'dark' })),
  command('system', () => useSettings.setState({ theme: 'system' })),
]

const withWorkbook: readonly Item[] = [
  ...(['save', 'saveAs', 'undo', 'redo', 'print', 'pdf'] as const).map(menuItem),
  command('start', commands.startPage),
  command('air', () => useDialog.setState({ open: 'air' })),
  command('newDesign', () => useDialog.setState({ open: 'newDesign' })),
]

const withDesign: readonly Item[] = [
  command('changeSystem', () => useDialog.setState({ open: 'changeSystem' })),
  command('listen', () => useListen.setState({ open: true })),
  command('stop', stopListening),
  command('byFingering', () => useView.setState({ page: 'curves', by: 'fingering' })),
  command('byNote', () => useView.setState({ page: 'curves', by: 'note' })),
  ...(['slides', 'readings', 'pitchChanges'] as const).map((list) => command(list, () => newJob(list))),
  command('onePiece', () => {
    useView.setState({ page: 'bench' })
    useBench.setState({ part: 'onePiece' })
  }),
]

function newJob(list: BenchList): void {
  useView.setState({ page: 'bench' })
  startNewJob(list)
}

/** Every command that can be given now. */
export function commandItems(): readonly Item[] {
  const { workbook } = useWorkbook.getState()
  if (workbook === null) return always
  return workbook.designs.length === 0
    ? [...withWorkbook, ...always]
    : [...withWorkbook, ...withDesign, ...always]
}

/** The pages of the window, while there is something to show on them. */
export function pageItems(): readonly Item[] {
  const designs = useWorkbook.getState().workbook?.designs ?? []
  if (designs.length === 0) return []
  return pages.map(({ id, name }) => ({ kind: 'page', name, act: () => useView.setState({ page: id }) }))
}
