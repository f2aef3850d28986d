/** The browser's own question before a tab with unsaved work is left. */
export interface UnsavedGuard {
  watch(dirty: boolean): void
}

export function unsavedGuard(): UnsavedGuard {
  const ask = (event: BeforeUnloadEvent): void => event.preventDefault()
  return {
    // Added only while it is needed: a page that always listens is never kept for the Back button.
    watch: (dirty) => {
      if (dirty) window.addEventListener('beforeunload', ask)
      else window.removeEventListener('beforeunload', ask)
    },
  }
}
