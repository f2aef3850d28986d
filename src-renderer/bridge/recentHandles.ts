/** A file opened or saved lately, with the browser's handle to it. */
export interface RecentHandle {
  readonly id: string
  readonly name: string
  readonly usedAt: number
  readonly handle: FileSystemFileHandle
}

const database = 'ferrule'
const store = 'recent'
const longest = 10

/** Newest first; empty where the browser keeps no such thing. */
export async function recentHandles(): Promise<readonly RecentHandle[]> {
  const kept = await inStore<RecentHandle[]>('readonly', (files) => files.getAll())
  return (kept ?? []).toSorted((one, other) => other.usedAt - one.usedAt)
}

/** Puts a file in front of the list, once, and answers its id there. */
export async function rememberHandle(handle: FileSystemFileHandle): Promise<string> {
  const known = await recentHandles()
  const matches = await Promise.all(known.map((file) => file.handle.isSameEntry(handle).catch(() => false)))
  const id = known[matches.indexOf(true)]?.id ?? crypto.randomUUID()
  const others = known.filter((file) => file.id !== id)
  for (const file of others.slice(longest - 1)) await forgetHandle(file.id)
  await inStore('readwrite', (files) => files.put({ id, name: handle.name, usedAt: Date.now(), handle }))
  return id
}

export async function forgetHandle(id: string): Promise<void> {
  await inStore('readwrite', (files) => files.delete(id))
}

export async function forgetHandles(): Promise<void> {
  await inStore('readwrite', (files) => files.clear())
}

/** `null` where the browser has no database for us, as in some private windows. */
async function inStore<Result>(
  mode: IDBTransactionMode,
  act: (files: IDBObjectStore) => IDBRequest,
): Promise<Result | null> {
  try {
    const opening = indexedDB.open(database, 1)
    opening.onupgradeneeded = () => opening.result.createObjectStore(store, { keyPath: 'id' })
    const opened = await done<IDBDatabase>(opening)
    return await done<Result>(act(opened.transaction(store, mode).objectStore(store))).finally(() =>
      opened.close(),
    )
  } catch {
    return null
  }
}

function done<Result>(request: IDBRequest): Promise<Result> {
  return new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result as Result)
    request.onerror = () => reject(request.error)
  })
}
