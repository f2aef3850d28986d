/**
 * Runs in the page before any script of it: gives the built preload a `require` as a sandboxed preload has it.
 * Read as text and put into the page, so it must stand alone.
 */
// biome-ignore lint/correctness/noUnusedVariables: called by the text that this file is put into
function pageSide(runPreload) {
  const askMain = globalThis.askMain
  delete globalThis.askMain
  if (globalThis.top !== globalThis) return

  const listeners = new Map()
  Object.defineProperty(globalThis, 'hear', {
    value: (channel, payload) => {
      for (const listener of listeners.get(channel) ?? []) listener({}, ...payload)
    },
  })

  const ipcRenderer = {
    invoke: async (channel, ...payload) => {
      const given = await askMain(channel, structuredClone(payload).map(carried))
      if ('error' in given) throw new Error(given.error)
      return given.answer
    },
    on: (channel, listener) => {
      listeners.set(channel, [...(listeners.get(channel) ?? []), listener])
    },
    off: (channel, listener) => {
      listeners.set(
        channel,
        (listeners.get(channel) ?? []).filter((other) => other !== listener),
      )
    },
  }

  const contextBridge = {
    exposeInMainWorld: (name, exposed) => {
      if (name in globalThis) throw new Error(`The page has a property ${name} already.`)
      Object.defineProperty(globalThis, name, { value: Object.freeze(copied(exposed)), enumerable: true })
    },
  }

  /** Bytes are carried as a list, as the driver carries none. */
  function carried(value) {
    if (value instanceof Uint8Array) return { bytesOfPage: [...value] }
    if (Array.isArray(value)) return value.map(carried)
    if (typeof value !== 'object' || value === null) return value
    return Object.fromEntries(Object.entries(value).map(([key, part]) => [key, carried(part)]))
  }

  /** Functions pass as functions that copy what they are given and what they give, everything else as a copy. */
  function copied(value) {
    if (typeof value === 'function') return (...given) => copied(value(...given.map(copied)))
    if (value instanceof Promise) return value.then(copied)
    if (value instanceof Uint8Array) return structuredClone(value)
    if (Array.isArray(value)) return value.map(copied)
    if (typeof value !== 'object' || value === null) return value
    return Object.fromEntries(Object.entries(value).map(([key, part]) => [key, copied(part)]))
  }

  const require = (name) => {
    if (name === 'electron' || name === 'electron/renderer') return { ipcRenderer, contextBridge }
    throw new Error(`A sandboxed preload cannot load ${name}.`)
  }
  runPreload(require, { exports: {} }, {})
}
