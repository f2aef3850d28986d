import type { Draft, LeftDraft } from '#shared/bridge/bridge.ts'

const prefix = 'ferrule-draft:'

/**
 * Unsaved work in the browser's local storage, a draft for each open tab under an id of its own. A tab holds a lock
 * with its name as long as it lives, so that only what a dead tab left behind is offered elsewhere.
 */
export interface KeptDraft {
  /** `recentId` names the current file among the recent ones. Throws when the browser has no room for it. */
  keep(draft: Draft, recentId: string | null): void
  forget(): void
  /** What dead tabs left behind, newest first. */
  left(): Promise<readonly LeftDraft[]>
  forgetLeft(id: string): void
  /** Names the file of left work among the recent ones; `null` when it has none. */
  recentIdOf(id: string): string | null
}

interface StoredDraft extends Draft {
  readonly recentId: string | null
}

export function keptDraft(): KeptDraft {
  const own = `${prefix}${crypto.randomUUID()}`
  holdLock(own)

  async function left(): Promise<readonly LeftDraft[]> {
    const alive = await livingTabs()
    return draftKeys()
      .filter((key) => key !== own && !alive.has(key))
      .flatMap((key) => asLeft(key, readDraft(key)))
      .toSorted((one, other) => other.keptAt - one.keptAt)
  }

  return {
    keep: (draft, recentId) => localStorage.setItem(own, JSON.stringify({ ...draft, recentId })),
    forget: () => localStorage.removeItem(own),
    left,
    forgetLeft: (id) => localStorage.removeItem(prefix + id),
    recentIdOf: (id) => readDraft(prefix + id)?.recentId ?? null,
  }
}

function asLeft(key: string, stored: StoredDraft | null): readonly LeftDraft[] {
  if (stored === null) return []
  const { name, text, keptAt, fileName, recentId } = stored
  const id = key.slice(prefix.length)
  return [{ id, name, text, keptAt, fileName: recentId === null ? null : fileName }]
}

function holdLock(name: string): void {
  void navigator.locks?.request(name, () => new Promise(() => undefined))
}

async function livingTabs(): Promise<ReadonlySet<string>> {
  const { held = [] } = (await navigator.locks?.query()) ?? {}
  return new Set(held.map((lock) => lock.name ?? ''))
}

function draftKeys(): readonly string[] {
  return Object.keys(localStorage).filter((key) => key.startsWith(prefix))
}

function readDraft(key: string): StoredDraft | null {
  try {
    const found: unknown = JSON.parse(localStorage.getItem(key) ?? 'null')
    return isDraft(found) ? found : null
  } catch {
    return null
  }
}

function isDraft(found: unknown): found is StoredDraft {
  if (typeof found !== 'object' || found === null) return false
  const { name, text, keptAt, fileName, recentId } = found as Partial<Record<keyof StoredDraft, unknown>>
  const isTextOrNull = (value: unknown): boolean => value === null || typeof value === 'string'
  return (
    typeof name === 'string' &&
    typeof text === 'string' &&
    typeof keptAt === 'number' &&
    isTextOrNull(fileName) &&
    isTextOrNull(recentId)
  )
}
