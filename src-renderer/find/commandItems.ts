import type { MenuCommand } from '#shared/bridge/bridge.ts'
import { type BenchList, benchLists } from '#shared/workbook/bench.ts'
import { useBench } from '../bench/benchStore.ts'
import { startNewJob } from '../bench/newJobActions.ts'
import { keysOf } from '../bridge/keysOf.ts'
import { useDialog } from '../dialogs/dialogStore.ts'
import { openHelp } from '../help/helpStore.ts'
import { stopListening } from '../listen/listenActions.ts'
import { useListen } from '../listen/listenStore.ts'
import { pages } from '../pages/pages.ts'
import { type PicturePart, usePictures } from '../pictures/picturesStore.ts'
import { useSettings } from '../state/settings.ts'
import { commands, sheetIsReady } from '../state/useForm.ts'
import { useView } from '../state/viewStore.ts'
import { useWorkbook } from '../state/workbookStore.ts'
import { findWords as words } from '../words/find.ts'
import { partWords } from '../words/pictures.ts'
import type { Item } from './item.ts'

type CommandName = keyof typeof words.commands

function command(name: CommandName, act: () => void, keys?: string): Item {
  const alsoCalled = words.commandsAlso[name]
  return { kind: 'command', name: words.commands[name], act, keys, ...(alsoCalled && { alsoCalled }) }
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
  ...(['save', 'saveAs', 'undo', 'redo'] as const).map(menuItem),
  command('start', commands.startPage),
  command('air', () => useDialog.setState({ open: 'air' })),
  command('newDesign', () => useDialog.setState({ open: 'newDesign' })),
]

const withDesign: readonly Item[] = [
  command('changeSystem', () => useDialog.setState({ open: 'changeSystem' })),
  command('listen', openListen),
  command('stop', stopListening),
  command('byFingering', () => useView.setState({ page: 'curves', by: 'fingering' })),
  command('byNote', () => useView.setState({ page: 'curves', by: 'note' })),
  ...benchLists.map((list) => command(list, () => newJob(list))),
  command('onePiece', () => {
    useView.setState({ page: 'bench' })
    useBench.setState({ part: 'onePiece' })
  }),
]

/** Beside the tubing, which not every page has. */
function openListen(): void {
  const { page } = useView.getState()
  if (page === 'bench' || page === 'pictures' || page === 'compare') useView.setState({ page: 'curves' })
  useListen.setState({ open: true })
}

function newJob(list: BenchList): void {
  useView.setState({ page: 'bench' })
  startNewJob(list)
}

/** Every command that can be given now. */
export function commandItems(): readonly Item[] {
  const { workbook } = useWorkbook.getState()
  if (workbook === null) return always
  return workbook.designs.length === 0
    ? [...withWorkbook, ...printItems(), ...always]
    : [...withWorkbook, ...printItems(), ...withDesign, ...always]
}

/** Where a job's sheet is ready, the keys of printing print it, and the report has none. */
function printItems(): readonly Item[] {
  if (!sheetIsReady()) return [menuItem('print'), menuItem('pdf')]
  return [
    command('printSheet', commands.print, keysOf('print')),
    command('sheetPdf', commands.pdf, keysOf('pdf')),
    command('print', commands.report),
  ]
}

/** The pages of the window and the pictures, while there is something to show on them. */
export function pageItems(): readonly Item[] {
  const designs = useWorkbook.getState().workbook?.designs ?? []
  if (designs.length === 0) return []
  return [
    ...pages.map(({ id, name }): Item => ({ kind: 'page', name, act: () => useView.setState({ page: id }) })),
    ...pictureParts.map(
      (part): Item => ({
        kind: 'picture',
        name: partWords[part].name,
        weight: 0.1,
        act: () => {
          useView.setState({ page: 'pictures' })
          usePictures.setState({ part })
        },
      }),
    ),
  ]
}

const pictureParts = Object.keys(partWords) as PicturePart[]
