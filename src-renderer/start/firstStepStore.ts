import { create } from 'zustand'
import { persist } from 'zustand/middleware'
import type { FirstStep } from '../words/start.ts'

/** The task that a person was led to, while its few words still stand above the page. */
export const useGuide = create<{ readonly step: FirstStep | null }>()(() => ({ step: null }))

/** Whether the three tasks were put away from the start page for good. */
export const useFirstRun = create<{ readonly putAway: boolean }>()(
  persist((): { putAway: boolean } => ({ putAway: false }), { name: 'ferrule first run' }),
)
