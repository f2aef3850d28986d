import { contextBridge, ipcRenderer } from 'electron'
import type { Bridge, FileChange, MenuCommand, OpenAnswer } from '#shared/bridge/bridge.ts'
import type { Notice, Question } from '../channels/channels.ts'
import { noticeChannel, questionChannel } from '../channels/channels.ts'

function ask<Q extends Question>(question: Q, ...payload: Parameters<Bridge[Q]>): ReturnType<Bridge[Q]> {
  return ipcRenderer.invoke(questionChannel(question), ...payload) as ReturnType<Bridge[Q]>
}

function hear<Said>(notice: Notice, listener: (said: Said) => void): () => void {
  const heard = (_event: unknown, said: Said): void => listener(said)
  ipcRenderer.on(noticeChannel(notice), heard)
  return () => void ipcRenderer.off(noticeChannel(notice), heard)
}

/** Files can come before the page has a listener; they wait here for it. */
const waiting: OpenAnswer[] = []
const fileListeners = new Set<(answer: OpenAnswer) => void>()
hear<OpenAnswer>('file', (answer) => {
  if (fileListeners.size === 0) waiting.push(answer)
  for (const listener of fileListeners) listener(answer)
})

function onFile(listener: (answer: OpenAnswer) => void): () => void {
  fileListeners.add(listener)
  for (const answer of waiting.splice(0)) listener(answer)
  return () => void fileListeners.delete(listener)
}

const bridge: Bridge = {
  form: 'desktop',
  openWorkbook: () => ask('openWorkbook'),
  recentWorkbooks: () => ask('recentWorkbooks'),
  openRecent: (id) => ask('openRecent', id),
  clearRecent: () => ask('clearRecent'),
  adoptFile: (ticket) => ask('adoptFile', ticket),
  releaseFile: () => ask('releaseFile'),
  saveWorkbook: (text, suggestedName) => ask('saveWorkbook', text, suggestedName),
  saveWorkbookAs: (text, suggestedName) => ask('saveWorkbookAs', text, suggestedName),
  exportFile: (file) => ask('exportFile', file),
  showState: (state) => ask('showState', state),
  print: (request) => ask('print', request),
  closeWindow: () => ask('closeWindow'),
  keepDraft: (draft) => ask('keepDraft', draft),
  leftDrafts: () => ask('leftDrafts'),
  openDraftFile: (id) => ask('openDraftFile', id),
  forgetDraft: (id) => ask('forgetDraft', id),
  readCurrentFile: () => ask('readCurrentFile'),
  onFileChanged: (listener) => hear<FileChange>('fileChanged', listener),
  onCommand: (listener) => hear<MenuCommand>('command', listener),
  onClosing: (listener) => hear<void>('closing', listener),
  onFile,
}

contextBridge.exposeInMainWorld('ferrule', bridge)
