import type { Draft } from '#shared/bridge/bridge.ts'

const prefix = 'ferrule-draft:'

/**
 * Unsaved work in the browser's local storage, a draft for each open tab. A tab holds a lock with its name as
 * long as it lives, so that only what a dead tab left behind is offered elsewhere.
 */
export interface KeptDraft {
  /** Throws when the browser has no room for it. */
  keep(draft: Draft): void
  forget(): void
  left(): Promise<Draft | null>
}

export function keptDraft(): KeptDraft {
  const own = `${prefix}${crypto.randomUUID()}`
  holdLock(own)

  async function left(): Promise<Draft | null> {
    const alive = await livingTabs()
    const found = draftKeys()
      .filter((key) => key === own || !alive.has(key))
      .map((key) => ({ key, draft: readDraft(key) }))
      .toSorted((one, other) => (other.draft?.keptAt ?? 0) - (one.draft?.keptAt ?? 0))
    const newest = found[0]
    if (newest?.draft == null) return null
    // From here on it is this tab's to keep over or to forget.
    localStorage.setItem(own, JSON.stringify(newest.draft))
    if (newest.key !== own) localStorage.removeItem(newest.key)
    return newest.draft
  }

  return {
    keep: (draft) => localStorage.setItem(own, JSON.stringify(draft)),
    forget: () => localStorage.removeItem(own),
    left,
  }
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

function readDraft(key: string): Draft | null {
  try {
    const found: unknown = JSON.parse(localStorage.getItem(key) ?? 'null')
    return isDraft(found) ? found : null
  } catch {
    return null
  }
}

function isDraft(found: unknown): found is Draft {
  if (typeof found !== 'object' || found === null) return false
  const { name, text, keptAt } = found as Partial<Record<keyof Draft, unknown>>
  return typeof name === 'string' && typeof text === 'string' && typeof keptAt === 'number'
}
