/**
 * What the window may ask of the form it runs in, desktop or browser, and what that form tells the window.
 * The desktop form answers from Electron's main process through the preload; the browser form answers by
 * the browser's own means. The window never handles a path: files are named by tickets.
 */
export interface Bridge {
  readonly form: 'desktop' | 'browser'
  /** Asks for a file and reads it. The file becomes current only when its ticket is adopted. */
  openWorkbook(): Promise<OpenAnswer>
  /** Files opened or saved lately that are still there, newest first. */
  recentWorkbooks(): Promise<readonly RecentWorkbook[]>
  openRecent(id: string): Promise<OpenAnswer>
  clearRecent(): Promise<void>
  /** Makes the file read under `ticket` the current one: its text was accepted. */
  adoptFile(ticket: string): Promise<void>
  /** The window now shows a workbook with no file. */
  releaseFile(): Promise<void>
  /** Writes to the current file; asks for one when there is none. */
  saveWorkbook(text: string, suggestedName: string): Promise<SaveAnswer>
  saveWorkbookAs(text: string, suggestedName: string): Promise<SaveAnswer>
  /** Offers a file for keeping that is not the workbook: a picture, a table, a drawing. */
  exportFile(file: ExportedFile): Promise<SaveAnswer>
  /** Title, dirty mark and the menu's undo and redo. */
  showState(state: WindowState): Promise<void>
  /** Prints the page as it stands; `pdf` asks for a file where the form can write one. */
  print(request: PrintRequest): Promise<SaveAnswer>
  /**
   * Closes the window without a question: the work is kept, or is not wanted. A browser may refuse to close a
   * tab that the person opened; it then only stops asking.
   */
  closeWindow(): Promise<void>
  /**
   * Keeps this window's unsaved work where a crash cannot reach it; `null` forgets it. A clean close forgets it too.
   * Rejects when it could not be kept.
   */
  keepDraft(draft: Draft | null): Promise<void>
  /** Work that crashes left behind, newest first. Each stays until it is forgotten, whatever else is opened. */
  leftDrafts(): Promise<readonly LeftDraft[]>
  /** Reads the file that left work belongs to, as it stands now, so that the two can be compared. */
  openDraftFile(id: string): Promise<OpenAnswer>
  forgetDraft(id: string): Promise<void>
  /** Reads the current file as it stands now. */
  readCurrentFile(): Promise<OpenAnswer>
  /** The current file was changed or taken away by another program. Each change is told once. */
  onFileChanged(listener: (change: FileChange) => void): () => void
  onCommand(listener: (command: MenuCommand) => void): () => void
  /** The window is asked to close: the listener shows the state at once, for what was just done may not be shown yet. */
  onClosing(listener: () => void): () => void
  /**
   * A file arrived by itself: on the command line, from the desktop, by a second start, from the menu's recent
   * files. Files that came before the first listener are kept for it. Nothing is current before it is adopted,
   * so the window can ask about unsaved work first.
   */
  onFile(listener: (answer: OpenAnswer) => void): () => void
}

/** What the menus can ask of the window. */
export const menuCommands = [
  'new',
  'open',
  'save',
  'saveAs',
  'saveThenClose',
  'undo',
  'redo',
  'print',
  'pdf',
  'help',
  'palette',
  'report',
  'settings',
  'startPage',
] as const
/** What a person can choose in the menu. */
export type MenuCommand = (typeof menuCommands)[number]

/** What became of opening a file; `ticket` names the file to the form afterwards, `message` is for people. */
export type OpenAnswer =
  | { readonly kind: 'opened'; readonly ticket: string; readonly name: string; readonly text: string }
  | { readonly kind: 'cancelled' }
  | { readonly kind: 'failed'; readonly message: string }

/** What became of saving, with the name of the file; `message` is for people. */
export type SaveAnswer =
  | { readonly kind: 'saved'; readonly name: string }
  | { readonly kind: 'cancelled' }
  | { readonly kind: 'failed'; readonly message: string }

/** A workbook that was open lately; `id` stands for it when it is to be opened again. */
export interface RecentWorkbook {
  readonly id: string
  readonly name: string
  /** The folder, shortened for show. */
  readonly place: string
}

/** A file that leaves the program, text or bytes; `name` has its ending. */
export interface ExportedFile {
  readonly name: string
  readonly mediaType: string
  readonly content: string | Uint8Array
}

/** What is to be printed, on which paper; `name` is that of the job or of the file. */
export interface PrintRequest {
  readonly to: 'printer' | 'pdf'
  readonly paper: 'A4' | 'Letter'
  readonly landscape: boolean
  readonly name: string
}

/** What the title and the menu have to know of the window. */
export interface WindowState {
  readonly name: string
  readonly dirty: boolean
  /** Name of the step that undo would take back; `null` when there is none. */
  readonly undo: string | null
  readonly redo: string | null
  readonly hasWorkbook: boolean
}

/** Unsaved work as it is kept against a crash; `text` is the workbook as a file has it. */
export interface Draft {
  /** The workbook's own name. */
  readonly name: string
  readonly text: string
  /** Milliseconds since 1970. */
  readonly keptAt: number
  /** Name of the file that the work belongs to; `null` when it was never saved. */
  readonly fileName: string | null
}

/** A draft that a crash left behind. Its `fileName` is `null` too when this form cannot read the file again. */
export interface LeftDraft extends Draft {
  readonly id: string
}

/** What another program did to the current file. */
export type FileChange = 'changed' | 'gone'
